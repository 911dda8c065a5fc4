import { type Mat3, mulMat } from '../mat3.js';
import type { Part, UnitShape } from './part.js';
import type { CoreFamily } from './published.js';
import type { StartingShape } from './solve-core.js';

/*
 * Starting shapes of the three core families, in the core's frame C (z through the pin, x toward the
 * marker), before `solveCore` gives them their proportions and their density. Bounds of what is built:
 * cover 1.15–1.25 g/cc and 3/4–1 in thick (common practice, no source).
 */

/** How many numbers in [0, 1) a starting shape is drawn from. */
export const SHAPE_DIMENSIONS = 9;

/**
 * The starting shape of a family that belongs to a point of the unit cube.
 *
 * @param u  `SHAPE_DIMENSIONS` numbers in [0, 1); each moves one trait of the shape
 */
export function startingShape(family: CoreFamily, u: readonly number[]): StartingShape {
  const between: Between = (i, low, high) => low + (high - low) * u[i];
  // squared: most covers are thin, and only thin light ones leave room for a low RG
  const cover = { coverThickness: 0.019 + 0.0045 * u[0] ** 2, coverDensity: 1150 + 80 * u[1] ** 2 };
  const size = between(2, 0.04, 0.056);
  const parts = [trunk(u[3], between(4, 1, 1.35)), ...FEATURES[family](between)];
  return { ...cover, core: parts.map((part) => enlarge(part, size)) };
}

type Between = (i: number, low: number, high: number) => number;

/** Excess density of the trunk before `solveCore` scales it, kg/m³; the other parts' are relative to it. */
const TRUNK_EXCESS = 1500;

/** What each family has beside its trunk, in units of the trunk's radius. */
const FEATURES: Record<CoreFamily, (between: Between) => Part[]> = {
  /** A coaxial disk somewhere along the trunk. */
  plain: (between) => [
    {
      shape: { kind: 'cylinder' },
      A: diagonalOf(between(5, 0.7, 1.2), between(5, 0.7, 1.2), between(6, 0.12, 0.4)),
      c: [0, 0, between(7, -0.8, 0.8)],
      excess: TRUNK_EXCESS * between(8, 0.05, 0.5),
    },
  ],

  /** Four equal noses around the trunk, one of them toward the marker: their lateral moments are equal. */
  lobed: (between) =>
    [0, 1, 2, 3].map((quarter) => {
      const a = (Math.PI / 2) * quarter;
      const out = between(5, 1.1, 1.5);
      return {
        shape: { kind: 'ball' },
        A: mulMat(
          turnAboutPin(a),
          diagonalOf(between(6, 0.4, 0.62), between(7, 0.27, 0.37), between(8, 0.35, 0.7)),
        ),
        c: [out * Math.cos(a), out * Math.sin(a), 0],
        excess: TRUNK_EXCESS,
      };
    }),

  /** Two blocks beside the trunk, off the marker's axis, which so becomes the high-RG axis. */
  asymmetric: (between) =>
    [1, -1].map((side) => ({
      shape: { kind: 'ball' },
      A: diagonalOf(between(5, 0.4, 0.8), between(6, 0.3, 0.6), between(7, 0.4, 0.9)),
      c: [0, side * between(8, 0.7, 1.1), 0],
      excess: TRUNK_EXCESS * 0.5,
    })),
};

/** The body every core has: ball, cylinder or cone by the trait `kind`, radius one, `height` its half length. */
function trunk(kind: number, height: number): Part {
  const shape: UnitShape =
    kind < 0.3
      ? { kind: 'ball' }
      : kind < 0.6
        ? { kind: 'cylinder' }
        : { kind: 'cone', top: 0.4 + 1.4 * (kind - 0.6) };
  return { shape, A: diagonalOf(1, 1, height), c: [0, 0, 0], excess: TRUNK_EXCESS };
}

const enlarge = (part: Part, size: number): Part => ({
  ...part,
  A: mulMat(diagonalOf(size, size, size), part.A),
  c: [size * part.c[0], size * part.c[1], size * part.c[2]],
});

const diagonalOf = (x: number, y: number, z: number): Mat3 => [
  [x, 0, 0],
  [0, y, 0],
  [0, 0, z],
];

const turnAboutPin = (a: number): Mat3 => [
  [Math.cos(a), -Math.sin(a), 0],
  [Math.sin(a), Math.cos(a), 0],
  [0, 0, 1],
];
