import type { Part } from '../../src/ball/solid/part.js';
import { inverse, mulVec } from '../../src/math/mat3.js';
import { add, scale, type Vec3 } from '../../src/math/vec3.js';

/** Whether a point (m) lies inside the part. */
export function partContains(part: Part, p: Vec3): boolean {
  const [x, y, z] = mulVec(inverse(part.A), add(p, scale(-1, part.c)));
  switch (part.shape.kind) {
    case 'ball':
      return x * x + y * y + z * z <= 1;
    case 'cylinder':
      return Math.abs(z) <= 1 && x * x + y * y <= 1;
    case 'box':
      return Math.max(Math.abs(x), Math.abs(y), Math.abs(z)) <= 1;
    case 'cone':
      return Math.abs(z) <= 1 && Math.hypot(x, y) <= (1 + part.shape.top + (part.shape.top - 1) * z) / 2;
    case 'capsule':
      return Math.hypot(x, y, Math.max(0, Math.abs(z) - part.shape.half)) <= 1;
  }
}
