import { atan2 } from '../../math/atan.js';
import { memory } from '../kernel/memory.js';
import { writeRotation } from '../kernel/rotation.js';
import { BALL_SLOT, STATE } from '../kernel/slots.js';

const { here, trial, R_WP, ball } = memory;
const { VX, VY, WX, WY, WZ, STATE_SIZE } = STATE;
const { MASS, RADIUS, MOMENT_0, MOMENT_1, MOMENT_2, OFFSET_0, OFFSET_1, OFFSET_2 } = BALL_SLOT;

/**
 * Heading in which the ball of `here` rolls on, averaged over a turn, whether it still slips or not, rad, positive leftward: square to its
 * angular momentum about the contact, which friction there does not change.
 *
 *   L = J ω + m ρ×(v + ω×d),  ρ = R z + d
 *
 * Exact for equal moments about a centre of mass at Bo; on other balls L sways a little once a turn, far less than the ball's own heading.
 */
export function rollHeading(): number {
  for (let i = 0; i < STATE_SIZE; i++) trial[i] = here[i];
  writeRotation();
  const mass = ball[MASS];
  const d0 = ball[OFFSET_0];
  const d1 = ball[OFFSET_1];
  const d2 = ball[OFFSET_2];
  const wx = here[WX];
  const wy = here[WY];
  const wz = here[WZ];
  const l0 = ball[MOMENT_0] * (R_WP[0] * wx + R_WP[3] * wy + R_WP[6] * wz);
  const l1 = ball[MOMENT_1] * (R_WP[1] * wx + R_WP[4] * wy + R_WP[7] * wz);
  const l2 = ball[MOMENT_2] * (R_WP[2] * wx + R_WP[5] * wy + R_WP[8] * wz);
  const dX = R_WP[0] * d0 + R_WP[1] * d1 + R_WP[2] * d2;
  const dY = R_WP[3] * d0 + R_WP[4] * d1 + R_WP[5] * d2;
  const dZ = R_WP[6] * d0 + R_WP[7] * d1 + R_WP[8] * d2;
  const vX = here[VX] + wy * dZ - wz * dY; // of Bcm
  const vY = here[VY] + wz * dX - wx * dZ;
  const vZ = wx * dY - wy * dX;
  const height = ball[RADIUS] + dZ;
  const momentumX = R_WP[0] * l0 + R_WP[1] * l1 + R_WP[2] * l2 + mass * (dY * vZ - height * vY);
  const momentumY = R_WP[3] * l0 + R_WP[4] * l1 + R_WP[5] * l2 + mass * (height * vX - dX * vZ);
  return atan2(-momentumY, -momentumX);
}
