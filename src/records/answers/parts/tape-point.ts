import { ballPoint } from '../../../math/ball-point.js';
import type { Vec3 } from '../../../math/vec3.js';

/** Unit vector in B of a point that an answer gives by tape: arcs over and up from the grip centre, in. */
export const tapePoint = (
  { overIn, upIn }: { readonly overIn: number; readonly upIn: number },
  radiusIn: number,
): Vec3 => ballPoint(overIn / radiusIn, upIn / radiusIn);
