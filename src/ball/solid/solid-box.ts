import { type Mat3, mulVec } from '../../math/mat3.js';
import { dot, scale, type Vec3 } from '../../math/vec3.js';
import { vertexAt } from '../mesh/mesh.js';
import type { Solid } from './layered-core.js';
import { supportPoint } from './support.js';

/** Least and greatest coordinates, m. */
export interface Box {
  readonly low: Vec3;
  readonly high: Vec3;
}

/**
 * Bounding box of a solid along the axes of a frame Q.
 *
 * @param R_QC  from the solid's frame to Q
 */
export function boxOf(solid: Solid, R_QC: Mat3): Box {
  if ('mesh' in solid) {
    let box = NOTHING;
    for (let i = 0; i < solid.mesh.positions.length / 3; i++) {
      const p = mulVec(R_QC, vertexAt(solid.mesh, i));
      box = { low: least(box.low, p), high: most(box.high, p) };
    }
    return box;
  }
  const reach = (axis_C: Vec3): number => dot(axis_C, supportPoint(solid, axis_C));
  return {
    low: [-reach(scale(-1, R_QC[0])), -reach(scale(-1, R_QC[1])), -reach(scale(-1, R_QC[2]))],
    high: [reach(R_QC[0]), reach(R_QC[1]), reach(R_QC[2])],
  };
}

/** The box that two boxes share; null when they touch or are apart. */
export function meetingOf(a: Box, b: Box): Box | null {
  const low = most(a.low, b.low);
  const high = least(a.high, b.high);
  return low.every((x, i) => high[i] - x > TOUCHING) ? { low, high } : null;
}

/** Bounding box of two boxes. */
export const around = (a: Box, b: Box): Box => ({ low: least(a.low, b.low), high: most(a.high, b.high) });

/** Boxes that share less than this, m, only touch: faces meant to coincide differ by rounding. */
const TOUCHING = 1e-9;

const NOTHING: Box = {
  low: [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
  high: [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY],
};

const least = (a: Vec3, b: Vec3): Vec3 => [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.min(a[2], b[2])];

const most = (a: Vec3, b: Vec3): Vec3 => [Math.max(a[0], b[0]), Math.max(a[1], b[1]), Math.max(a[2], b[2])];
