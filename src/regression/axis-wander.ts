import { exp } from '../math/exp.js';
import { cos, sin } from '../math/sin-cos.js';

/** Below this angle λφ, rad, limits replace quotients, whose numerators would lose their digits; their error is below 2e-7. */
const SLIGHT = 1e-3;

/**
 * Writes where free rotation takes the axis of a ball released about its PAP: its distance from there (rad), the components of that
 * up and toward the grip, and its speed there (rad per radian turned).
 *
 * Euler's equations by the angle turned φ, linearised about the PAP p and to first order in the differences of the moments:
 * q' = c + M q with c = (I_pg, −I_pu)/I_pp. M has no trace, so M² = k E and q = c sin(λφ)/λ + M c (1 − cos λφ)/λ² with λ² = −k, or the
 * hyperbolic equivalents where k > 0.
 * Source: Landau & Lifshitz, Mechanics, §36; linearised here.
 *
 * @param out     holds the ball's tensor (pp, uu, gg, pu, pg, ug; any unit) from `tensor` on, and takes four numbers at `at`
 * @param turned  rad
 */
export function writeWander(out: Float32Array, at: number, tensor: number, turned: number): void {
  const per = 1 / out[tensor];
  const shear = out[tensor + 5] * per;
  const toGrip = out[tensor + 2] * per - 1;
  const toUp = 1 - out[tensor + 1] * per;
  const c0 = out[tensor + 4] * per;
  const c1 = -out[tensor + 3] * per;
  const mc0 = shear * c0 + toGrip * c1;
  const mc1 = toUp * c0 - shear * c1;
  const k = shear * shear + toGrip * toUp;
  const angle = turned * Math.sqrt(Math.abs(k));
  const isSlight = angle < SLIGHT;
  const grown = exp(angle);
  const cosine = k < 0 ? cos(angle) : (grown + 1 / grown) / 2;
  const slow = isSlight ? turned : (turned * (k < 0 ? sin(angle) : (grown - 1 / grown) / 2)) / angle;
  const bent = isSlight ? (turned * turned) / 2 : (cosine - 1) / k;
  const up = slow * c0 + bent * mc0;
  const grip = slow * c1 + bent * mc1;
  const upRate = cosine * c0 + slow * mc0;
  const gripRate = cosine * c1 + slow * mc1;
  out[at] = Math.sqrt(up * up + grip * grip);
  out[at + 1] = up;
  out[at + 2] = grip;
  out[at + 3] = Math.sqrt(upRate * upRate + gripRate * gripRate);
}
