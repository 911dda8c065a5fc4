import { memory } from './memory.js';
import { writeKinematics, writeRotation } from './rotation.js';
import { BALL_SLOT, STATE } from './slots.js';

const { trial, rates, R_WP, ball } = memory;
const { VX, VY, WX, WY, WZ, NORMAL, PUSH_X, PUSH_Y } = STATE;
const { MASS, RADIUS, MOMENT_0, MOMENT_1, MOMENT_2, OFFSET_0, OFFSET_1, OFFSET_2, GRAVITY } = BALL_SLOT;

/**
 * Equations of motion of a ball that rolls without slip, v = R ω×z, its centre of mass off its centre: writes the rates at `trial`.
 *
 * Moments about the contact point, with ρ = R z + d from there to Bcm, so that v_Bcm = ω×ρ:
 *
 *   (J + m (ρ·ρ E − ρ ρᵀ)) α = −ω×Jω − m ρ×(ω×(ω×d) + g z)
 *
 * The contact force m (α×ρ + ω×(ω×d) + g z) follows; rolling lasts while its horizontal part stays
 * within friction times NORMAL, which the caller must check. Vectors with digits are expressed in P, with letters in W.
 */
export function rollingRates(): void {
  writeRotation();
  writeKinematics();
  const mass = ball[MASS];
  const radius = ball[RADIUS];
  const gravity = ball[GRAVITY];
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
  const p0 = radius * z0 + d0;
  const p1 = radius * z1 + d1;
  const p2 = radius * z2 + d2;

  // u = ω×(ω×d) + g z, the acceleration to be held against, and the right-hand side.
  const wd = w0 * d0 + w1 * d1 + w2 * d2;
  const ww = w0 * w0 + w1 * w1 + w2 * w2;
  const u0 = w0 * wd - d0 * ww + gravity * z0;
  const u1 = w1 * wd - d1 * ww + gravity * z1;
  const u2 = w2 * wd - d2 * ww + gravity * z2;
  const h0 = (J1 - J2) * w1 * w2 - mass * (p1 * u2 - p2 * u1);
  const h1 = (J2 - J0) * w2 * w0 - mass * (p2 * u0 - p0 * u2);
  const h2 = (J0 - J1) * w0 * w1 - mass * (p0 * u1 - p1 * u0);

  // Symmetric 3×3 system by cofactors: positive definite, condition number below 5.
  const m00 = J0 + mass * (p1 * p1 + p2 * p2);
  const m11 = J1 + mass * (p0 * p0 + p2 * p2);
  const m22 = J2 + mass * (p0 * p0 + p1 * p1);
  const m01 = -mass * p0 * p1;
  const m02 = -mass * p0 * p2;
  const m12 = -mass * p1 * p2;
  const c00 = m11 * m22 - m12 * m12;
  const c01 = m02 * m12 - m01 * m22;
  const c02 = m01 * m12 - m02 * m11;
  const k = 1 / (m00 * c00 + m01 * c01 + m02 * c02);
  const c11 = m00 * m22 - m02 * m02;
  const c12 = m01 * m02 - m00 * m12;
  const c22 = m00 * m11 - m01 * m01;
  const a0 = k * (c00 * h0 + c01 * h1 + c02 * h2);
  const a1 = k * (c01 * h0 + c11 * h1 + c12 * h2);
  const a2 = k * (c02 * h0 + c12 * h1 + c22 * h2);
  const aX = R_WP[0] * a0 + R_WP[1] * a1 + R_WP[2] * a2;
  const aY = R_WP[3] * a0 + R_WP[4] * a1 + R_WP[5] * a2;
  rates[WX] = aX;
  rates[WY] = aY;
  rates[WZ] = R_WP[6] * a0 + R_WP[7] * a1 + R_WP[8] * a2;
  rates[VX] = radius * aY;
  rates[VY] = -radius * aX;

  const F0 = mass * (a1 * p2 - a2 * p1 + u0);
  const F1 = mass * (a2 * p0 - a0 * p2 + u1);
  const F2 = mass * (a0 * p1 - a1 * p0 + u2);
  rates[NORMAL] = z0 * F0 + z1 * F1 + z2 * F2;
  rates[PUSH_X] = R_WP[0] * F0 + R_WP[1] * F1 + R_WP[2] * F2;
  rates[PUSH_Y] = R_WP[3] * F0 + R_WP[4] * F1 + R_WP[5] * F2;
}
