import { atan2 } from './atan.js';
import { hypot } from './hypot.js';
import { cos, sin } from './sin-cos.js';
import type { Vec3 } from './vec3.js';

/** Unit vector in B of a point by its arcs (rad) from the grip centre: `over` along the midline, then `up` from it, like a PAP. */
export const ballPoint = (over: number, up: number): Vec3 => [
  cos(up) * sin(over),
  sin(up),
  cos(up) * cos(over),
];

/** Arcs (rad) over along the midline and up from it to a point of the ball; the inverse of `ballPoint`. */
export const overAndUp = (u_B: Vec3): { over: number; up: number } => ({
  over: atan2(u_B[0], u_B[2]),
  up: atan2(u_B[1], hypot(u_B[0], u_B[2])),
});
