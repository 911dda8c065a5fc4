import { memory } from './memory.js';
import { STATE } from './slots.js';

const { trial, rates, R_WP } = memory;
const { X, Y, VX, VY, QW, QX, QY, QZ, WX, WY, WZ, PHASE } = STATE;

/** Writes R_WP of `trial`, row by row, from its quaternion, whatever the quaternion's length. */
export function writeRotation(): void {
  const w = trial[QW];
  const x = trial[QX];
  const y = trial[QY];
  const z = trial[QZ];
  const k = 2 / (w * w + x * x + y * y + z * z);
  R_WP[0] = 1 - k * (y * y + z * z);
  R_WP[1] = k * (x * y - w * z);
  R_WP[2] = k * (x * z + w * y);
  R_WP[3] = k * (x * y + w * z);
  R_WP[4] = 1 - k * (x * x + z * z);
  R_WP[5] = k * (y * z - w * x);
  R_WP[6] = k * (x * z - w * y);
  R_WP[7] = k * (y * z + w * x);
  R_WP[8] = 1 - k * (x * x + y * y);
}

/** Writes the rates at `trial` that hold whatever the forces: of position, orientation (½ w ∘ q) and angle turned. */
export function writeKinematics(): void {
  const w = trial[QW];
  const x = trial[QX];
  const y = trial[QY];
  const z = trial[QZ];
  const a = trial[WX];
  const b = trial[WY];
  const c = trial[WZ];
  rates[X] = trial[VX];
  rates[Y] = trial[VY];
  rates[QW] = -0.5 * (x * a + y * b + z * c);
  rates[QX] = 0.5 * (w * a + z * b - y * c);
  rates[QY] = 0.5 * (w * b + x * c - z * a);
  rates[QZ] = 0.5 * (w * c + y * a - x * b);
  rates[PHASE] = Math.sqrt(a * a + b * b + c * c);
}
