import type { Hole } from '../../layout/hole.js';
import { type Mat3, mulVec, transpose } from '../../math/mat3.js';
import { cos, sin } from '../../math/sin-cos.js';
import { addScaled, dot, norm, type Vec3 } from '../../math/vec3.js';
import { crosser, type Solid } from '../solid/layered-core.js';
import type { BallBody } from './ball-body.js';
import { type BoreSolid, depthAt, rayStart } from './bore-solid.js';
import { boresOf } from './excavation.js';

/** Depths along its axis at which a hole leaves the cover and first meets the core, m; null where it ends before that. */
interface HoleDepths {
  readonly hole: Hole;
  readonly cover: number | null;
  /** What is left of the cover below a hole that ends in it; null where it leaves the cover. */
  readonly coverBelow: number | null;
  readonly core: number | null;
}

/** Lines along a bore that search for the core: its axis, and rings of lines at half and at the full radius. */
const RINGS = [0.5, 1] as const;
const ANGLES = 48;

/**
 * Where holes leave the cover, and where they enter a core whose shape is known.
 *
 * The core is met where the first of 97 lines along the bore meets it, which may be a little too deep at a pointed part.
 *
 * @param body  in C
 * @param R_BC  how the layout turns the core
 */
export function holeDepths(body: BallBody, holes: readonly Hole[], R_BC: Mat3): readonly HoleDepths[] {
  const R_CB = transpose(R_BC);
  const solids: readonly Solid[] = [...body.core, ...(body.layers?.layers ?? [])];
  const crossers = solids.map(crosser);
  return holes.map((hole) => {
    const bores = boresOf(hole, body.radius);
    const met = bores.flatMap((bore) => linesOf(bore).flatMap((line) => firstIn(line)));
    return {
      hole,
      cover: least(bores.flatMap((bore) => throughCover(bore, body))),
      coverBelow: positive(Math.min(...bores.map((bore) => coverBelow(bore, body)))),
      core: least(met),
    };
  });

  /** Depths at which a line in B first enters each solid of the core; none for solids that it ends before. */
  function firstIn({ a, d, end }: Line): number[] {
    const [a_C, d_C] = [mulVec(R_CB, a), mulVec(R_CB, d)];
    const ends: number[] = [];
    return crossers.flatMap((cross) => {
      const [enters] = ends.slice(0, cross(ends, a_C, d_C)); // ascending
      return enters > 0 && enters < end ? [enters] : [];
    });
  }
}

interface Line {
  readonly a: Vec3;
  readonly d: Vec3;
  readonly end: number;
}

const linesOf = (bore: BoreSolid): Line[] => [
  { a: bore.mouth, d: bore.d, end: depthAt(bore, 0) },
  ...RINGS.flatMap((share) =>
    Array.from({ length: ANGLES }, (_, i): Line => {
      const angle = (2 * Math.PI * i) / ANGLES;
      return {
        a: rayStart(bore, share * cos(angle), share * sin(angle)),
        d: bore.d,
        end: depthAt(bore, share * bore.radius),
      };
    }),
  ),
];

/** Where the axis of a bore passes the inside of the cover. */
function throughCover(bore: BoreSolid, { radius, coverThickness }: BallBody): number[] {
  const inner = radius - coverThickness;
  const along = -dot(bore.mouth, bore.d); // to the point of the axis nearest to the centre
  const off2 = radius * radius - along * along;
  const depth = along - Math.sqrt(inner * inner - off2); // NaN where it passes by
  return depth < depthAt(bore, 0) ? [depth] : [];
}

/** From the deepest point on the axis of a bore to the inside of the cover, m; negative where it leaves the cover. */
const coverBelow = (bore: BoreSolid, { radius, coverThickness }: BallBody): number =>
  norm(addScaled(bore.mouth, depthAt(bore, 0), bore.d)) - (radius - coverThickness);

const positive = (length: number): number | null => (length > 0 ? length : null);

const least = (depths: readonly number[]): number | null => (depths.length > 0 ? Math.min(...depths) : null);
