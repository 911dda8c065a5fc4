import { RATES_SIZE, STATE_SIZE } from './state.js';

/** Rates at a state reached `after` seconds into the step. */
export type RatesInStep = (out: Float64Array, state: Float64Array, after: number) => void;

/** One step of `h` seconds from `state` into `next` (another array). */
export type Step = (next: Float64Array, state: Float64Array, h: number) => void;

/**
 * The classical fourth-order Runge–Kutta step; global error falls with h⁴ where the rates are smooth.
 *
 * A fixed step is enough here: nothing in a shot is faster than the ball's own turn, some 0.1 s.
 * Source: Hairer, Nørsett & Wanner, Solving Ordinary Differential Equations I, 2nd ed., table II.1.2.
 */
export function rungeKutta(rates: RatesInStep): Step {
  const k1 = new Float64Array(RATES_SIZE);
  const k2 = new Float64Array(RATES_SIZE);
  const k3 = new Float64Array(RATES_SIZE);
  const k4 = new Float64Array(RATES_SIZE);
  const at = new Float64Array(STATE_SIZE);
  return (next, state, h) => {
    const half = h / 2;
    rates(k1, state, 0);
    for (let i = 0; i < STATE_SIZE; i++) at[i] = state[i] + half * k1[i];
    rates(k2, at, half);
    for (let i = 0; i < STATE_SIZE; i++) at[i] = state[i] + half * k2[i];
    rates(k3, at, half);
    for (let i = 0; i < STATE_SIZE; i++) at[i] = state[i] + h * k3[i];
    rates(k4, at, h);
    for (let i = 0; i < STATE_SIZE; i++) next[i] = state[i] + (h / 6) * (k1[i] + 2 * (k2[i] + k3[i]) + k4[i]);
  };
}
