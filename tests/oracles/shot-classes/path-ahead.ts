import { ContactKinematics } from './contact-kinematics.js';
import { LaneVector } from './lane-vector.js';
import type { Places } from './places.js';
import { PHASE, VX, VY, WX, WY, WZ, writeInBall, X, Y } from './state.js';

/** Where the two points of Gauss's rule lie in a part, from its middle, in halves of it; both weigh the same. */
const GAUSS = 1 / Math.sqrt(3);

/**
 * Where the ball is about to be during one step: near enough to see what lies under it, before the step is taken.
 *
 * The centre goes on under the acceleration of a moment ago. The ball turns evenly about the axis it should have
 * at mid-step, and besides, by a little, about its angular acceleration, so that both ends of the step and all
 * between are right to the second power of the step: what lies under the ball is read with an error of the third.
 */
export class PathAhead {
  /** Spin and axis that the ball should have at mid-step, and the contact where the step starts. */
  readonly mid = new ContactKinematics();
  /** The contact at mid-step, expressed in P. */
  readonly midContact_P = new Float64Array(3);
  private state: Float64Array = new Float64Array(0);
  private rates: Float64Array = new Float64Array(0);
  private step = 0;
  private readonly contact = new LaneVector();
  private readonly lag = new LaneVector();
  private readonly lag_P = new Float64Array(3);

  /**
   * Sets out on a step of `h` seconds.
   *
   * @param rates  of the state, or those of a moment ago
   */
  setOut(state: Float64Array, rates: Float64Array, h: number): void {
    const { mid, midContact_P, contact, lag, lag_P } = this;
    const half = h / 2;
    this.state = state;
    this.rates = rates;
    this.step = h;
    mid.read(state, half * rates[WX], half * rates[WY], half * rates[WZ]);
    contact.set(mid.contact_P, mid.axis_P);
    writeInBall(lag_P, state, rates[WY], -rates[WX], 0); // of the contact, under the angular acceleration
    lag.set(lag_P, mid.axis_P);
    const cos = Math.cos(half * mid.spin);
    const sin = Math.sin(half * mid.spin);
    contact.write(midContact_P, 0, cos, sin);
    lag.add(midContact_P, 0, -0.5 * half * half, cos, sin);
  }

  /** Writes the points at which to look: two in each of the parts into which the step is cut. */
  write(places: Places, parts: number): void {
    const { state, rates, mid, step, contact, lag } = this;
    const { x, y, phase, contact_P } = places;
    const toFirst = (step * (1 - GAUSS)) / parts; // from the second point of the part before
    const toSecond = (step * GAUSS) / parts;
    const cosToFirst = Math.cos(mid.spin * toFirst);
    const sinToFirst = Math.sin(mid.spin * toFirst);
    const cosToSecond = Math.cos(mid.spin * toSecond);
    const sinToSecond = Math.sin(mid.spin * toSecond);
    places.count = 2 * parts;
    let after = -toFirst / 2;
    let cos = Math.cos(mid.spin * after);
    let sin = Math.sin(mid.spin * after);
    for (let i = 0; i < places.count; i++) {
      const isFirst = (i & 1) === 0;
      const c = isFirst ? cosToFirst : cosToSecond;
      const s = isFirst ? sinToFirst : sinToSecond;
      const turned = cos * c - sin * s;
      sin = sin * c + cos * s;
      cos = turned;
      after += isFirst ? toFirst : toSecond;
      x[i] = state[X] + after * (state[VX] + 0.5 * after * rates[VX]);
      y[i] = state[Y] + after * (state[VY] + 0.5 * after * rates[VY]);
      phase[i] = state[PHASE] + after * mid.spin;
      contact.write(contact_P, 3 * i, cos, sin);
      lag.add(contact_P, 3 * i, -0.5 * after * (step - after), cos, sin);
    }
  }
}

/** The share of the step at which a point lies. */
export const shareOf = (point: number, parts: number): number =>
  ((point >> 1) + 0.5 * (1 + (point & 1 ? GAUSS : -GAUSS))) / parts;
