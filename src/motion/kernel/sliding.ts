import { memory } from './memory.js';
import { writeKinematics, writeRotation } from './rotation.js';
import { BALL_SLOT, FLAG, STATE, STEP } from './slots.js';

const { trial, rates, R_WP, ball, step, flags } = memory;
const { VX, VY, WX, WY, WZ, NORMAL, PUSH_X, PUSH_Y } = STATE;
const { MASS, RADIUS, MOMENT_0, MOMENT_1, MOMENT_2, OFFSET_0, OFFSET_1, OFFSET_2, GRAVITY } = BALL_SLOT;
const { FRICTION, GIVEN_X, GIVEN_Y } = STEP;
const { IS_GIVEN } = FLAG;

/**
 * Equations of motion of a sliding ball whose centre of mass lies off its centre: writes the rates at `trial`.
 *
 * Newton and Euler about Bcm, with Coulomb friction N μ against the slip s of the contact point and Bo kept
 * at the height of the radius. With d from Bo to Bcm, r from Bcm to the contact, f = z − μ s/|s|:
 *
 *   N = m [g + z·(ω×(ω×d)) − z·((J⁻¹(ω×Jω))×d)] / (1 − m z·((J⁻¹(r×f))×d))
 *   α = J⁻¹(N r×f − ω×Jω),   a_Bo = N f/m − g z − α×d − ω×(ω×d)
 *
 * Holds while N > 0; a ball that would hop gives N < 0, which the caller must check. A slip of exactly
 * zero has no direction and gets no friction. While a push is given, it replaces −μ s/|s|. Vectors with digits are
 * expressed in P, with letters in W.
 */
export function slidingRates(): void {
  writeRotation();
  writeKinematics();
  const mass = ball[MASS];
  const radius = ball[RADIUS];
  const J0 = ball[MOMENT_0];
  const J1 = ball[MOMENT_1];
  const J2 = ball[MOMENT_2];
  const d0 = ball[OFFSET_0];
  const d1 = ball[OFFSET_1];
  const d2 = ball[OFFSET_2];
  const wx = trial[WX];
  const wy = trial[WY];
  const wz = trial[WZ];
  const w0 = R_WP[0] * wx + R_WP[3] * wy + R_WP[6] * wz;
  const w1 = R_WP[1] * wx + R_WP[4] * wy + R_WP[7] * wz;
  const w2 = R_WP[2] * wx + R_WP[5] * wy + R_WP[8] * wz;
  const z0 = R_WP[6];
  const z1 = R_WP[7];
  const z2 = R_WP[8];

  let fX = step[GIVEN_X];
  let fY = step[GIVEN_Y];
  if (flags[IS_GIVEN] === 0) {
    const sX = trial[VX] - radius * wy;
    const sY = trial[VY] + radius * wx;
    const slip = Math.sqrt(sX * sX + sY * sY);
    const k = slip > 0 ? step[FRICTION] / slip : 0;
    fX = -k * sX;
    fY = -k * sY;
  }

  // Contact force per normal force, and J⁻¹ of its moment about Bcm.
  const f0 = z0 + fX * R_WP[0] + fY * R_WP[3];
  const f1 = z1 + fX * R_WP[1] + fY * R_WP[4];
  const f2 = z2 + fX * R_WP[2] + fY * R_WP[5];
  const r0 = -radius * z0 - d0;
  const r1 = -radius * z1 - d1;
  const r2 = -radius * z2 - d2;
  const t0 = (r1 * f2 - r2 * f1) / J0;
  const t1 = (r2 * f0 - r0 * f2) / J1;
  const t2 = (r0 * f1 - r1 * f0) / J2;

  // J⁻¹(ω×Jω) and ω×(ω×d).
  const g0 = ((J2 - J1) * w1 * w2) / J0;
  const g1 = ((J0 - J2) * w2 * w0) / J1;
  const g2 = ((J1 - J0) * w0 * w1) / J2;
  const wd = w0 * d0 + w1 * d1 + w2 * d2;
  const ww = w0 * w0 + w1 * w1 + w2 * w2;
  const c0 = w0 * wd - d0 * ww;
  const c1 = w1 * wd - d1 * ww;
  const c2 = w2 * wd - d2 * ww;

  // z·(a×d) = a·(d×z)
  const e0 = d1 * z2 - d2 * z1;
  const e1 = d2 * z0 - d0 * z2;
  const e2 = d0 * z1 - d1 * z0;
  const normal =
    (mass * (ball[GRAVITY] + z0 * c0 + z1 * c1 + z2 * c2 - (g0 * e0 + g1 * e1 + g2 * e2))) /
    (1 - mass * (t0 * e0 + t1 * e1 + t2 * e2));

  const a0 = normal * t0 - g0;
  const a1 = normal * t1 - g1;
  const a2 = normal * t2 - g2;
  rates[WX] = R_WP[0] * a0 + R_WP[1] * a1 + R_WP[2] * a2;
  rates[WY] = R_WP[3] * a0 + R_WP[4] * a1 + R_WP[5] * a2;
  rates[WZ] = R_WP[6] * a0 + R_WP[7] * a1 + R_WP[8] * a2;

  // What the offset takes from Bo's own acceleration: α×d + ω×(ω×d).
  const b0 = a1 * d2 - a2 * d1 + c0;
  const b1 = a2 * d0 - a0 * d2 + c1;
  const b2 = a0 * d1 - a1 * d0 + c2;
  const push = normal / mass;
  rates[VX] = push * fX - (R_WP[0] * b0 + R_WP[1] * b1 + R_WP[2] * b2);
  rates[VY] = push * fY - (R_WP[3] * b0 + R_WP[4] * b1 + R_WP[5] * b2);
  rates[NORMAL] = normal;
  rates[PUSH_X] = normal * fX;
  rates[PUSH_Y] = normal * fY;
}
