/**
 * The state of a ball under way, as one flat array so that a step allocates nothing:
 * x, y and vx, vy of Bo (m, m/s, in W); quaternion of R_WP (scalar first); w_WP_W (rad/s); the angle turned
 * so far, ∫|w| dt (rad).
 *
 * The angular velocity is kept in W, not in P: there it hardly changes during a turn, so a step of the
 * integrator errs far less than on components that swing round with the ball.
 */
export const X = 0;
export const Y = 1;
export const VX = 2;
export const VY = 3;
export const QW = 4;
export const QX = 5;
export const QY = 6;
export const QZ = 7;
export const WX = 8;
export const WY = 9;
export const WZ = 10;
export const PHASE = 11;
export const STATE_SIZE = 12;

/** What the rates also carry, past the state: normal force and the lane's horizontal push on the ball (N, in W). */
export const NORMAL = 12;
export const PUSH_X = 13;
export const PUSH_Y = 14;
export const RATES_SIZE = 15;

/**
 * Rates of the state: writes d(state)/dt into `out`, and the contact force after it.
 * `friction` is the kinetic coefficient under the ball; rolling does not need it.
 */
export type Rates = (out: Float64Array, state: Float64Array, friction: number) => void;

/** Writes R_WP, row by row, from the state's quaternion, whatever the quaternion's length. */
export function writeRotation(R_WP: Float64Array, state: Float64Array): void {
  const w = state[QW];
  const x = state[QX];
  const y = state[QY];
  const z = state[QZ];
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

/** Writes a vector given in W as seen from the ball, in P. */
export function writeInBall(
  v_P: Float64Array,
  state: Float64Array,
  vX: number,
  vY: number,
  vZ: number,
): void {
  const w = state[QW];
  const x = state[QX];
  const y = state[QY];
  const z = state[QZ];
  const k = 2 / (w * w + x * x + y * y + z * z);
  v_P[0] = (1 - k * (y * y + z * z)) * vX + k * (x * y + w * z) * vY + k * (x * z - w * y) * vZ;
  v_P[1] = k * (x * y - w * z) * vX + (1 - k * (x * x + z * z)) * vY + k * (y * z + w * x) * vZ;
  v_P[2] = k * (x * z + w * y) * vX + k * (y * z - w * x) * vY + (1 - k * (x * x + y * y)) * vZ;
}

/** Rates that hold whatever the forces: of position, orientation (½ w ∘ q) and angle turned. */
export function writeKinematics(out: Float64Array, state: Float64Array): void {
  const w = state[QW];
  const x = state[QX];
  const y = state[QY];
  const z = state[QZ];
  const a = state[WX];
  const b = state[WY];
  const c = state[WZ];
  out[X] = state[VX];
  out[Y] = state[VY];
  out[QW] = -0.5 * (x * a + y * b + z * c);
  out[QX] = 0.5 * (w * a + z * b - y * c);
  out[QY] = 0.5 * (w * b + x * c - z * a);
  out[QZ] = 0.5 * (w * c + y * a - x * b);
  out[PHASE] = Math.sqrt(a * a + b * b + c * c);
}

/** Brings the quaternion back to length one; a Runge–Kutta step leaves it off by its own error. */
export function normaliseOrientation(state: Float64Array): void {
  const w = state[QW];
  const x = state[QX];
  const y = state[QY];
  const z = state[QZ];
  const k = 1 / Math.sqrt(w * w + x * x + y * y + z * z);
  state[QW] = k * w;
  state[QX] = k * x;
  state[QY] = k * y;
  state[QZ] = k * z;
}

/** Slip of the contact point across the lane, m/s in W: v − R ω×z. */
export const slipX = (state: Float64Array, radius: number): number => state[VX] - radius * state[WY];

/** Slip of the contact point down the lane. */
export const slipY = (state: Float64Array, radius: number): number => state[VY] + radius * state[WX];

/** Size of the slip. Written out: `Math.hypot` costs as much as a third of a step. */
export function slipSpeed(state: Float64Array, radius: number): number {
  const x = slipX(state, radius);
  const y = slipY(state, radius);
  return Math.sqrt(x * x + y * y);
}

export function isFiniteState(state: Float64Array): boolean {
  for (let i = 0; i < STATE_SIZE; i++) if (!Number.isFinite(state[i])) return false;
  return true;
}
