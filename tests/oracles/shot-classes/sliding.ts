import type { PrincipalBody } from '../../../src/motion/shot/principal-body.js';
import {
  NORMAL,
  PUSH_X,
  PUSH_Y,
  type Rates,
  slipX,
  slipY,
  VX,
  VY,
  WX,
  WY,
  WZ,
  writeKinematics,
  writeRotation,
} from './state.js';

/** Horizontal push of the lane per normal force, in W, that takes the place of friction against the slip while it is on. */
export interface GivenPush {
  isOn: boolean;
  x: number;
  y: number;
}

/**
 * Equations of motion of a sliding ball whose centre of mass lies off its centre.
 *
 * Newton and Euler about Bcm, with Coulomb friction N μ against the slip s of the contact point and Bo kept
 * at the height of the radius. With d from Bo to Bcm, r from Bcm to the contact, f = z − μ s/|s|:
 *
 *   N = m [g + z·(ω×(ω×d)) − z·((J⁻¹(ω×Jω))×d)] / (1 − m z·((J⁻¹(r×f))×d))
 *   α = J⁻¹(N r×f − ω×Jω),   a_Bo = N f/m − g z − α×d − ω×(ω×d)
 *
 * Holds while N > 0; a ball that would hop gives N < 0 and it is for the caller to notice. A slip of exactly
 * zero has no direction and gets no friction. Vectors with digits are expressed in P, with letters in W.
 *
 * @param gravity  m/s²
 * @param given    looked at anew each time
 */
export function slidingEquations(
  body: PrincipalBody,
  gravity: number,
  given: Readonly<GivenPush> = NONE_GIVEN,
): Rates {
  const { mass, radius } = body;
  const [J0, J1, J2] = body.J;
  const [d0, d1, d2] = body.p_BoBcm_P;
  const R_WP = new Float64Array(9);

  return (out, state, friction) => {
    writeRotation(R_WP, state);
    writeKinematics(out, state);
    const wx = state[WX];
    const wy = state[WY];
    const wz = state[WZ];
    const w0 = R_WP[0] * wx + R_WP[3] * wy + R_WP[6] * wz;
    const w1 = R_WP[1] * wx + R_WP[4] * wy + R_WP[7] * wz;
    const w2 = R_WP[2] * wx + R_WP[5] * wy + R_WP[8] * wz;
    const z0 = R_WP[6];
    const z1 = R_WP[7];
    const z2 = R_WP[8];

    const sX = slipX(state, radius);
    const sY = slipY(state, radius);
    const slip = Math.sqrt(sX * sX + sY * sY);
    const k = slip > 0 ? friction / slip : 0;
    const fX = given.isOn ? given.x : -k * sX;
    const fY = given.isOn ? given.y : -k * sY;

    // Contact force per normal force, and its moment about Bcm.
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
      (mass * (gravity + z0 * c0 + z1 * c1 + z2 * c2 - (g0 * e0 + g1 * e1 + g2 * e2))) /
      (1 - mass * (t0 * e0 + t1 * e1 + t2 * e2));

    const a0 = normal * t0 - g0;
    const a1 = normal * t1 - g1;
    const a2 = normal * t2 - g2;
    out[WX] = R_WP[0] * a0 + R_WP[1] * a1 + R_WP[2] * a2;
    out[WY] = R_WP[3] * a0 + R_WP[4] * a1 + R_WP[5] * a2;
    out[WZ] = R_WP[6] * a0 + R_WP[7] * a1 + R_WP[8] * a2;

    // What the offset takes from Bo's own acceleration.
    const b0 = a1 * d2 - a2 * d1 + c0;
    const b1 = a2 * d0 - a0 * d2 + c1;
    const b2 = a0 * d1 - a1 * d0 + c2;
    const push = normal / mass;
    out[VX] = push * fX - (R_WP[0] * b0 + R_WP[1] * b1 + R_WP[2] * b2);
    out[VY] = push * fY - (R_WP[3] * b0 + R_WP[4] * b1 + R_WP[5] * b2);
    out[NORMAL] = normal;
    out[PUSH_X] = normal * fX;
    out[PUSH_Y] = normal * fY;
  };
}

const NONE_GIVEN: GivenPush = { isOn: false, x: 0, y: 0 };
