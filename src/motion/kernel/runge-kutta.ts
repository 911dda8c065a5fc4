import { memory } from './memory.js';
import { rollingRates } from './rolling.js';
import { slidingRates } from './sliding.js';
import { FLAG, STATE, STEP } from './slots.js';

const { here, next, trial, rates, startRates, middleSum, middleRates, endRates, step, flags } = memory;
const { STATE_SIZE, NORMAL, PUSH_X, PUSH_Y } = STATE;
const { H, MEAN, SLOPE, FRICTION, SHARE } = STEP;
const { IS_ROLLING, IS_LOST, HAS_HOPPED } = FLAG;

/**
 * One step of the classical fourth-order Runge–Kutta method: `next` from `here`. Global error falls with h⁴ where the rates are smooth.
 *
 * A fixed step is enough here. Nothing in a shot is faster than the ball's own turn, some 0.1 s, except what the ball
 * rolls over, and that is averaged before the step (see `lookAhead`). A ball that would hop is lost.
 * Source: Hairer, Nørsett & Wanner, Solving Ordinary Differential Equations I, 2nd ed., table II.1.2.
 */
export function rungeKuttaStep(): void {
  const h = step[H];
  const half = h / 2;
  for (let i = 0; i < STATE_SIZE; i++) trial[i] = here[i];
  step[FRICTION] = step[MEAN] - step[SLOPE];
  writeRates();
  for (let i = 0; i < STATE_SIZE; i++) {
    startRates[i] = rates[i];
    trial[i] = here[i] + half * rates[i];
  }
  step[FRICTION] = step[MEAN];
  writeRates();
  for (let i = 0; i < STATE_SIZE; i++) {
    middleSum[i] = rates[i];
    trial[i] = here[i] + half * rates[i];
  }
  writeRates();
  for (let i = 0; i < STATE_SIZE; i++) {
    middleSum[i] += rates[i];
    trial[i] = here[i] + h * rates[i];
  }
  middleRates[NORMAL] = rates[NORMAL];
  middleRates[PUSH_X] = rates[PUSH_X];
  middleRates[PUSH_Y] = rates[PUSH_Y];
  step[FRICTION] = step[MEAN] + step[SLOPE];
  writeRates();
  const sixth = h / 6;
  for (let i = 0; i < STATE_SIZE; i++) {
    endRates[i] = rates[i];
    next[i] = here[i] + sixth * (startRates[i] + 2 * middleSum[i] + rates[i]);
  }
  endRates[NORMAL] = rates[NORMAL];
  endRates[PUSH_X] = rates[PUSH_X];
  endRates[PUSH_Y] = rates[PUSH_Y];
}

function writeRates(): void {
  if (flags[IS_ROLLING] === 1) rollingRates();
  else slidingRates();
  if (rates[NORMAL] < 0) {
    flags[IS_LOST] = 1;
    flags[HAS_HOPPED] = 1;
  }
}

/** Writes the state within the step, a SHARE of it on, into `trial`, by the cubic through both ends with their rates (Hermite). */
export function between(): void {
  const share = step[SHARE];
  const h = step[H];
  const rest = 1 - share;
  const a = rest * rest * (1 + 2 * share);
  const b = share * share * (1 + 2 * rest);
  const c = h * share * rest * rest;
  const d = -h * share * share * rest;
  for (let i = 0; i < STATE_SIZE; i++)
    trial[i] = a * here[i] + b * next[i] + c * startRates[i] + d * endRates[i];
}
