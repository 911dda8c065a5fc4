import { memory } from './memory.js';
import { writeRotation } from './rotation.js';
import { CONTACT, STATE } from './slots.js';

const { trial, R_WP, contact } = memory;
const { WX, WY, WZ } = STATE;
const { C0, C1, C2, A0, A1, A2, SPIN } = CONTACT;

/**
 * Writes where the ball of `trial` touches the lane (unit vector from Bo, in P) and the axis about which it spins (w/|w| in P, the
 * migrating PAP; zeros while it does not spin).
 */
export function writeContact(): void {
  writeRotation();
  const wx = trial[WX];
  const wy = trial[WY];
  const wz = trial[WZ];
  const spin = Math.sqrt(wx * wx + wy * wy + wz * wz);
  const k = spin > 0 ? 1 / spin : 0;
  const aX = k * wx;
  const aY = k * wy;
  const aZ = k * wz;
  contact[C0] = -R_WP[6];
  contact[C1] = -R_WP[7];
  contact[C2] = -R_WP[8];
  contact[A0] = R_WP[0] * aX + R_WP[3] * aY + R_WP[6] * aZ;
  contact[A1] = R_WP[1] * aX + R_WP[4] * aY + R_WP[7] * aZ;
  contact[A2] = R_WP[2] * aX + R_WP[5] * aY + R_WP[8] * aZ;
  contact[SPIN] = spin;
}
