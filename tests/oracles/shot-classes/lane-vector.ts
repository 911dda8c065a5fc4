/**
 * A vector fixed in the lane, as seen from a ball that turns evenly about one axis: in P it turns the other way.
 */
export class LaneVector {
  private readonly along = new Float64Array(3);
  private readonly across = new Float64Array(3);
  private readonly aside = new Float64Array(3);

  /** @param v_P  the vector before the ball turns   @param axis_P  unit vector */
  set(v_P: Float64Array, axis_P: Float64Array): void {
    const { along, across, aside } = this;
    const height = v_P[0] * axis_P[0] + v_P[1] * axis_P[1] + v_P[2] * axis_P[2];
    for (let i = 0; i < 3; i++) {
      along[i] = height * axis_P[i];
      across[i] = v_P[i] - along[i];
    }
    aside[0] = v_P[1] * axis_P[2] - v_P[2] * axis_P[1];
    aside[1] = v_P[2] * axis_P[0] - v_P[0] * axis_P[2];
    aside[2] = v_P[0] * axis_P[1] - v_P[1] * axis_P[0];
  }

  /** Writes the vector once the ball has turned by the angle of this cosine and sine; its three numbers begin at `from`. */
  write(out: Float64Array, from: number, cos: number, sin: number): void {
    const { along, across, aside } = this;
    out[from] = along[0] + cos * across[0] + sin * aside[0];
    out[from + 1] = along[1] + cos * across[1] + sin * aside[1];
    out[from + 2] = along[2] + cos * across[2] + sin * aside[2];
  }

  /** The same, added `k` times to what stands there. */
  add(out: Float64Array, from: number, k: number, cos: number, sin: number): void {
    const { along, across, aside } = this;
    out[from] += k * (along[0] + cos * across[0] + sin * aside[0]);
    out[from + 1] += k * (along[1] + cos * across[1] + sin * aside[1]);
    out[from + 2] += k * (along[2] + cos * across[2] + sin * aside[2]);
  }
}
