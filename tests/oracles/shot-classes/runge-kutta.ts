import { RATES_SIZE, STATE_SIZE } from './state.js';

/** Rates at a state reached after a share of the step. */
type RatesInStep = (out: Float64Array, state: Float64Array, share: number) => void;

/**
 * Steps of the classical fourth-order Runge–Kutta method; global error falls with h⁴ where the rates are smooth.
 *
 * A fixed step is enough here: nothing in a shot is faster than the ball's own turn, some 0.1 s, but what it
 * rolls over, and that is summed up before the step (see `Contact`).
 * Source: Hairer, Nørsett & Wanner, Solving Ordinary Differential Equations I, 2nd ed., table II.1.2.
 */
export class RungeKutta {
  /** Rates at the end of the last step, to its own third order. */
  readonly endRates = new Float64Array(RATES_SIZE);
  /** Rates at its middle, to the second order. */
  readonly middleRates = new Float64Array(RATES_SIZE);
  private readonly k1 = new Float64Array(RATES_SIZE);
  private readonly k2 = new Float64Array(RATES_SIZE);
  private readonly at = new Float64Array(STATE_SIZE);

  constructor(private readonly rates: RatesInStep) {}

  /** One step of `h` seconds from `state` into `next` (another array). */
  step(next: Float64Array, state: Float64Array, h: number): void {
    const { k1, k2, middleRates: k3, endRates: k4, at } = this;
    const half = h / 2;
    this.rates(k1, state, 0);
    for (let i = 0; i < STATE_SIZE; i++) at[i] = state[i] + half * k1[i];
    this.rates(k2, at, 0.5);
    for (let i = 0; i < STATE_SIZE; i++) at[i] = state[i] + half * k2[i];
    this.rates(k3, at, 0.5);
    for (let i = 0; i < STATE_SIZE; i++) at[i] = state[i] + h * k3[i];
    this.rates(k4, at, 1);
    for (let i = 0; i < STATE_SIZE; i++) next[i] = state[i] + (h / 6) * (k1[i] + 2 * (k2[i] + k3[i]) + k4[i]);
  }

  /** A state within the last step, `share` of it on, from the cubic through both ends with their rates (Hermite). */
  between(out: Float64Array, state: Float64Array, next: Float64Array, h: number, share: number): void {
    const { k1, endRates: k4 } = this;
    const rest = 1 - share;
    const a = rest * rest * (1 + 2 * share);
    const b = share * share * (1 + 2 * rest);
    const c = h * share * rest * rest;
    const d = -h * share * share * rest;
    for (let i = 0; i < STATE_SIZE; i++) out[i] = a * state[i] + b * next[i] + c * k1[i] + d * k4[i];
  }
}
