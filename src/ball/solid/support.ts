import { hypot } from '../../math/hypot.js';
import { mulVec, transpose } from '../../math/mat3.js';
import { add, dot, scale, unit, type Vec3 } from '../../math/vec3.js';
import type { Part, UnitShape } from './part.js';

/**
 * The point of a part that lies farthest in a direction (its support point), m.
 *
 * An affine map carries it over from the unit shape: the farthest point A q + c along u comes from the
 * farthest q along Aᵀu.
 *
 * @param u  of any length but zero, in the part's frame
 */
export const supportPoint = (part: Pick<Part, 'shape' | 'A' | 'c'>, u: Vec3): Vec3 =>
  add(mulVec(part.A, unitSupport(part.shape, mulVec(transpose(part.A), u))), part.c);

/**
 * Greatest distance (m) from the origin to any point of the part.
 *
 * Steps from a point of the part to the one farthest in its direction. The distance never falls, since it is a convex function,
 * and stops growing at a local maximum. Starting points lie all over the surface, every corner of a box among them.
 */
export function partReach(part: Pick<Part, 'shape' | 'A' | 'c'>): number {
  let reach = 0;
  for (const start of STARTS) {
    let p = add(mulVec(part.A, unitSupport(part.shape, start)), part.c);
    let far = dot(p, p);
    for (let step = 0; step < MOST_STEPS; step++) {
      const next = supportPoint(part, p);
      const farther = dot(next, next);
      if (!(farther > far * (1 + 1e-13))) break;
      p = next;
      far = farther;
    }
    reach = Math.max(reach, far);
  }
  return Math.sqrt(reach);
}

const MOST_STEPS = 200;

/** Toward the faces, edges and corners of a cube. */
const STARTS: readonly Vec3[] = [-1, 0, 1].flatMap((x) =>
  [-1, 0, 1].flatMap((y) =>
    [-1, 0, 1].filter((z) => x !== 0 || y !== 0 || z !== 0).map((z): Vec3 => [x, y, z]),
  ),
);

function unitSupport(shape: UnitShape, u: Vec3): Vec3 {
  switch (shape.kind) {
    case 'ball':
      return unit(u);
    case 'box':
      return [side(u[0]), side(u[1]), side(u[2])];
    case 'cylinder':
      return rim(u, 1, side(u[2]));
    case 'cone': {
      const across = hypot(u[0], u[1]);
      return shape.top * across + u[2] > across - u[2] ? rim(u, shape.top, 1) : rim(u, 1, -1);
    }
    case 'capsule':
      return add(unit(u), [0, 0, side(u[2]) * shape.half]);
  }
}

const side = (x: number): 1 | -1 => (x < 0 ? -1 : 1);

/** The point of a circle about the z axis that lies farthest along u. */
function rim(u: Vec3, radius: number, z: number): Vec3 {
  const across = hypot(u[0], u[1]);
  const [x, y] = across > 0 ? scale(radius / across, u) : [radius, 0, 0];
  return [x, y, z];
}
