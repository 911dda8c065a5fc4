import { type BoreSolid, crossBore } from '../../../src/ball/drill/bore-solid.js';
import type { Interval } from '../../../src/ball/solid/ray-interval.js';
import type { Vec3 } from '../../../src/math/vec3.js';

/** Where a ray runs inside a bore, as a new interval. */
export function insideBore(bore: BoreSolid, a: Vec3, d: Vec3): Interval {
  const inside = { enter: 0, leave: 0 };
  crossBore(inside, bore, a, d);
  return inside;
}
