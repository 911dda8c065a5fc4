import { exp } from '../math/exp.js';
import { cos, sin } from '../math/sin-cos.js';

/** An angle below which its sine is the angle, rad. */
const SLIGHT = 1e-3;

/**
 * Writes where free rotation takes the axis of a ball released about its PAP: how far from there (rad), the parts of that
 * up and toward the grip, and how fast it then moves (rad per radian turned).
 *
 * Euler's equations by the angle turned, linear about the PAP p and to first order in what the moments differ by: q' = c + M q with c = (I_pg, −I_pu)/I_pp and an M without
 * trace, so that M² = k E; hence q = c sin(λφ)/λ + M c (1 − cos λφ)/λ² with λ² = −k, or the hyperbolic twins.
 * Source: Landau & Lifshitz, Mechanics, §36, made linear here.
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
