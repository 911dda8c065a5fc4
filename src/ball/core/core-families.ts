import { USUAL_LOBES } from '../../base/constants.js';
import { diagonal, mulMat, turnAboutZ } from '../../math/mat3.js';
import { cos, sin } from '../../math/sin-cos.js';
import type { CoreFamily } from '../../records/schemas/core-families.js';
import type { Part, UnitShape } from '../solid/part.js';
import type { Lobes } from './published.js';

/*
 * Starting shapes of the core families, in the core's frame C (z through the pin, x toward the marker), before
 * `solveCore` gives them their size, proportions and density. Everything else about a family stands in
 * `records/schemas/core-families.ts`.
 */

/** How many numbers in [0, 1) define a starting shape. */
export const SHAPE_DIMENSIONS = 7;

/** Radius of the main part before `solveCore` scales it, m. */
const MAIN_RADIUS = 0.045;

/**
 * The starting shape that belongs to a family and a point of the unit cube. Its parts touch but do not overlap.
 *
 * @param u      `SHAPE_DIMENSIONS` numbers in [0, 1); each moves one trait of the shape
 * @param lobes  used for a lobed core only
 */
export function startingShape(
  family: CoreFamily,
  u: readonly number[],
  lobes: Lobes = { count: USUAL_LOBES, fromMarker: 0 },
): readonly Part[] {
  const between: Between = (i, low, high) => low + (high - low) * u[i];
  return SHAPES[family](between, lobes).map((part) => enlarge(part, MAIN_RADIUS));
}

type Between = (i: number, low: number, high: number) => number;

/** Excess density of the main part before `solveCore` scales it, kg/m³; the other parts' are relative to it. */
const MAIN_EXCESS = 1500;

/** Parts of each family's core, in units of its main part's radius. */
const SHAPES: Record<CoreFamily, (between: Between, lobes: Lobes) => Part[]> = {
  /** Bodies of revolution stacked along the pin's axis: a foot, a flange, a head. */
  plain: (between) => {
    const flange = between(2, 0.02, 0.35); // half heights
    const foot = between(0, 0.3, 0.8);
    const head = between(1, 0.3, 0.8);
    const stacked = (low: number, half: number, radius: number, top: number, excess: number): Part => ({
      shape: { kind: 'cone', top },
      A: diagonal([radius, radius, half]),
      c: [0, 0, low + half],
      excess: MAIN_EXCESS * excess,
    });
    const upright = stacked(0, foot, 1, between(3, 0.55, 0.95), 1);
    const turnedOver: Part = { ...upright, A: diagonal([1, -1, -foot]), c: [0, 0, -flange - foot] };
    return [
      turnedOver,
      stacked(-flange, flange, between(6, 1, 1.3), 1, between(5, 0.5, 1)),
      stacked(flange, head, 1, between(4, 0.45, 0.95), 1),
    ];
  },

  /** A trunk with equal noses, evenly spread: with three of them or more its lateral moments are equal. */
  lobed: (between, { count, fromMarker }) => {
    const radial = between(2, 0.3, 0.55);
    const nose = (i: number): Part => {
      const a = (2 * Math.PI * i) / count - fromMarker;
      return {
        shape: { kind: between(6, 0, 1) < 0.4 ? 'ball' : 'box' },
        A: mulMat(turnAboutZ(a), diagonal([radial, between(3, 0.27, 0.42), between(4, 0.4, 0.75)])),
        c: [(1 + radial) * cos(a), (1 + radial) * sin(a), 0],
        excess: MAIN_EXCESS * between(5, 0.8, 1.1),
      };
    };
    return [trunk(between), ...Array.from({ length: count }, (_, i) => nose(i))];
  },

  /** A trunk with a block on either side along y, which makes the marker's axis the high-RG axis. */
  asymmetric: (between) => {
    const deep = between(2, 0.2, 0.45);
    const block = (side: 1 | -1): Part => ({
      shape: { kind: between(6, 0, 1) < 0.4 ? 'ball' : 'box' },
      A: diagonal([between(3, 0.4, 0.8), deep, between(4, 0.4, 0.9)]),
      c: [0, side * (1 + deep), 0],
      excess: MAIN_EXCESS * between(5, 0.5, 1),
    });
    return [trunk(between), block(1), block(-1)];
  },
};

/** Ball, cylinder or cone of radius one at its widest. */
function trunk(between: Between): Part {
  const kind = between(0, 0, 1);
  const shape: UnitShape =
    kind < 0.25
      ? { kind: 'ball' }
      : kind < 0.5
        ? { kind: 'cylinder' }
        : { kind: 'cone', top: 0.5 + 0.9 * (kind - 0.5) };
  return { shape, A: diagonal([1, 1, between(1, 1.1, 1.6)]), c: [0, 0, 0], excess: MAIN_EXCESS };
}

const enlarge = (part: Part, size: number): Part => ({
  ...part,
  A: mulMat(diagonal([size, size, size]), part.A),
  c: [size * part.c[0], size * part.c[1], size * part.c[2]],
});
