import { QW, QX, QY, QZ, WX, WY, WZ } from './state.js';

/**
 * Where a ball touches the lane and about which axis it spins, both expressed in P.
 *
 * One object is read again and again, so that nothing is allocated.
 */
export class ContactKinematics {
  /** Unit vector from Bo down to the contact. */
  readonly contact_P = new Float64Array(3);
  /** w/|w|, the wandering PAP; zeros while the ball does not spin. */
  readonly axis_P = new Float64Array(3);
  /** |w|, rad/s. */
  spin = 0;

  /**
   * Reads a state, whatever its quaternion's length.
   *
   * @param turnX,turnY,turnZ  added to the state's angular velocity, rad/s in W: the axis of a little later
   */
  read(state: Float64Array, turnX = 0, turnY = 0, turnZ = 0): void {
    const { contact_P, axis_P } = this;
    const w = state[QW];
    const x = state[QX];
    const y = state[QY];
    const z = state[QZ];
    const wx = state[WX] + turnX;
    const wy = state[WY] + turnY;
    const wz = state[WZ] + turnZ;
    const spin = Math.sqrt(wx * wx + wy * wy + wz * wz);
    const k = 2 / (w * w + x * x + y * y + z * z);
    const down0 = -k * (x * z - w * y);
    const down1 = -k * (y * z + w * x);
    const down2 = k * (x * x + y * y) - 1;
    const s = spin > 0 ? 1 / spin : 0;
    const aX = s * wx;
    const aY = s * wy;
    const aZ = s * wz;
    contact_P[0] = down0;
    contact_P[1] = down1;
    contact_P[2] = down2;
    axis_P[0] = (1 - k * (y * y + z * z)) * aX + k * (x * y + w * z) * aY - down0 * aZ;
    axis_P[1] = k * (x * y - w * z) * aX + (1 - k * (x * x + z * z)) * aY - down1 * aZ;
    axis_P[2] = k * (x * z + w * y) * aX + k * (y * z - w * x) * aY - down2 * aZ;
    this.spin = spin;
  }
}
