import { cos, sin } from '../../math/sin-cos.js';
import type { Vec3 } from '../../math/vec3.js';
import { type Part, stretchPart } from './part.js';
import { partReach } from './support.js';

/**
 * Whether a part, stretched along the axes and then shifted, lies within a distance (m) of the origin.
 *
 * Tests points 15° apart on its outline, so the part may stick out by as much as the outline bulges between them: less than 0.5 mm on
 * a core 3 in across. `partReach` is exact but a hundred times slower, too slow for every core that a fit tries. Allocates nothing.
 */
export function fitsInside({ shape, A, c }: Part, [sx, sy, sz]: Vec3, shift: Vec3, room: number): boolean {
  const isWithin = (x: number, y: number, z: number): boolean => {
    const px = sx * (A[0][0] * x + A[0][1] * y + A[0][2] * z + c[0]) + shift[0];
    const py = sy * (A[1][0] * x + A[1][1] * y + A[1][2] * z + c[1]) + shift[1];
    const pz = sz * (A[2][0] * x + A[2][1] * y + A[2][2] * z + c[2]) + shift[2];
    return px * px + py * py + pz * pz <= room * room;
  };
  switch (shape.kind) {
    case 'ball':
      return SPHERE.every(([x, y, z]) => isWithin(x, y, z));
    case 'box':
      return CORNERS.every(([x, y, z]) => isWithin(x, y, z));
    case 'cylinder':
      return RIM.every(([x, y]) => isWithin(x, y, -1) && isWithin(x, y, 1));
    case 'cone':
      return RIM.every(([x, y]) => isWithin(x, y, -1) && isWithin(shape.top * x, shape.top * y, 1));
    case 'capsule':
      return partReach(stretchPart({ shape, A, c, excess: 0 }, [sx, sy, sz], shift)) <= room; // in no family
  }
}

const STEPS = 24;

const RIM: readonly (readonly [number, number])[] = Array.from({ length: STEPS }, (_, i) => {
  const a = (2 * Math.PI * i) / STEPS;
  return [cos(a), sin(a)];
});

const SPHERE: readonly Vec3[] = Array.from({ length: STEPS / 2 + 1 }, (_, j) => {
  const b = (Math.PI * j) / (STEPS / 2);
  return RIM.map(([x, y]): Vec3 => [sin(b) * x, sin(b) * y, cos(b)]);
}).flat();

const CORNERS: readonly Vec3[] = [-1, 1].flatMap((x) =>
  [-1, 1].flatMap((y) => [-1, 1].map((z): Vec3 => [x, y, z])),
);
