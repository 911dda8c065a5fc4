import { ln } from '../../math/ln.js';
import { expectStep, findFriction, frictionFor, lookAhead, writeShareHeld } from './friction-ahead.js';
import { lent, memory } from './memory.js';
import { rollingRates } from './rolling.js';
import { rungeKuttaStep } from './runge-kutta.js';
import { slidingRates } from './sliding.js';
import { ADVANCE, BALL_SLOT, FLAG, GROUND, STATE, STEP } from './slots.js';

const { here, next, trial, rates, ball, ground, step, flags } = memory;
const { Y, VX, VY, QW, QX, QY, QZ, WX, WY, STATE_SIZE, NORMAL, PUSH_X, PUSH_Y } = STATE;
const { RADIUS, INVERSE_EFFECTIVE_MASS, SLIP_RATE } = BALL_SLOT;
const { OILED, DROP, PER_SCALE, DRY, THICK, END, LENGTH } = GROUND;
const { TIME, H, LONGEST, MEAN, FRICTION, FOUND, NEEDED, HELD_NORMAL, HELD, SLIP } = STEP;
const { NEEDED_X, NEEDED_Y, GIVEN_X, GIVEN_Y } = STEP;
const { WENT, ROLLS, CROSSED, ARRIVED, LOST } = ADVANCE;
const { IS_ROLLING, HAS_ROLLED, IS_GIVEN, IS_LOST, CAUTIOUS, STRETCH } = FLAG;

/** Slip that counts as none, m/s: far too small to move a ball noticeably, far above rounding. */
const NO_SLIP = 1e-11;

/** The same once the ball has rolled: gripping ends a slip in few steps, and moves the ball by less than this anyway. */
const GRIPPED = 1e-6;

/** Most tries to find the push that ends a slip within a step: each leaves a few hundredths of the slip. */
const MOST_GRIPS = 4;

/**
 * Most of the time in which the slip would change by its own size that one step may take. Near the end of a
 * slide the slip's direction turns ever faster, toward one in which it can end; once it points there, with
 * the slip below `DIRECTED` (m/s), the steps may go nearly all the way.
 */
const SLIP_SHARE = 0.5;
const SLIP_SHARE_DIRECTED = 0.9;
const DIRECTED = 1e-5;

/** A growing slip needs no finer steps than this share of the usual one: its direction settles by itself. */
const FINEST_WHILE_GROWING = 1 / 16;

/**
 * Time, s, over which friction hardly changes. In a longer step it may rise to its greatest value, as at the end of an
 * oil ring, and even then the step must not use up more of the slip.
 */
const UNCHANGED = 2.5e-4;

/** Cautious steps in a row before one of the usual length is taken after all. */
export const MOST_CAUTIOUS = 100;

/** Most tries to land on a line across the lane (Newton's method needs two or three), and the tolerance, m. */
const MOST_LANDINGS = 6;
const LANDED = 1e-13;

/** Negligible change of friction: a ten-thousandth of the least friction, which moves no path by a thousandth of a board. */
const UNSEEN = 1e-6;

/**
 * Takes the ball from `here` to `next`: at most LONGEST seconds on, less while the slip is about to end, and only until the next event.
 * The ball slides or rolls; a step ends exactly where sliding changes to rolling, where friction jumps, and at
 * the lane's end. H is the step taken; no step is taken when the ball begins to roll.
 */
export function advance(): number {
  if (flags[IS_ROLLING] === 1 && !canRoll()) beginToSlip();
  const longest = step[LONGEST];
  let h = longest;
  flags[IS_GIVEN] = 0;
  if (flags[IS_ROLLING] === 0) {
    step[SLIP] = slipOf(here);
    if (slipIsOver()) {
      flags[IS_ROLLING] = 1;
      flags[HAS_ROLLED] = 1;
      holdRolling(here);
      return ROLLS;
    }
    flags[IS_GIVEN] = canGrip() ? 1 : 0;
    if (flags[IS_GIVEN] === 0 && step[SLIP] < ball[SLIP_RATE] * longest && flags[CAUTIOUS] < MOST_CAUTIOUS)
      h = Math.min(longest, cautiousStep());
  }
  flags[CAUTIOUS] = flags[IS_ROLLING] === 0 && h < longest ? flags[CAUTIOUS] + 1 : 0;
  step[H] = h;
  const isAtEnd = stepToStop();
  if (flags[IS_LOST] === 1 || !isFiniteState(next)) return LOST;
  if (!isAtEnd) return WENT;
  if (ground[END] >= ground[LENGTH]) return ARRIVED;
  enterStretch(flags[STRETCH] + 1);
  return CROSSED;
}

/** Makes the state that `advance` reached the start of the next step. */
export function settleStep(): void {
  for (let i = 0; i < STATE_SIZE; i++) here[i] = next[i];
}

/** Puts the ball on a stretch of lane. */
export function enterStretch(number: number): void {
  const { stretches } = lent.surface;
  const { oiled, dry, filmScale } = stretches[number];
  flags[STRETCH] = number;
  ground[OILED] = oiled;
  ground[DROP] = dry - oiled;
  ground[PER_SCALE] = -1 / filmScale;
  ground[DRY] = dry;
  ground[THICK] = dry > oiled ? filmScale * ln((dry - oiled) / UNSEEN) : Number.POSITIVE_INFINITY;
  ground[END] = Math.min(ground[LENGTH], stretches[number + 1]?.fromY ?? Number.POSITIVE_INFINITY);
}

/** Takes one step of H, cut short at the end of the stretch or where the lane cannot hold a rolling ball; returns whether it reached that end. */
function stepToStop(): boolean {
  const stop = ground[END];
  const h = step[H];
  trialStep();
  if (flags[IS_ROLLING] === 1) {
    writeShareHeld();
    step[H] = h * step[HELD];
    if (step[H] < h) trialStep();
  }
  const isAtEnd = next[Y] >= stop;
  if (isAtEnd) {
    step[H] = (step[H] * (stop - here[Y])) / (next[Y] - here[Y]);
    for (let i = 0; i < MOST_LANDINGS; i++) {
      trialStep();
      const miss = stop - next[Y];
      if (Math.abs(miss) < LANDED) break;
      step[H] += miss / next[VY];
    }
    next[Y] = stop;
  }
  step[TIME] += step[H];
  normaliseOrientation(next);
  if (flags[IS_ROLLING] === 1) holdRolling(next);
  return isAtEnd;
}

/** Computes `next`, H seconds on from `here`. */
function trialStep(): void {
  expectStep();
  if (flags[IS_ROLLING] === 0) lookAhead();
  if (flags[IS_GIVEN] === 1) grip();
  else rungeKuttaStep();
}

/**
 * Whether a ball that has rolled slips so little that friction could end it within a step. The direction of such a slip
 * turns faster than steps can follow.
 */
function canGrip(): boolean {
  if (flags[HAS_ROLLED] === 0) return false;
  canRoll();
  return step[SLIP] < ball[INVERSE_EFFECTIVE_MASS] * step[HELD_NORMAL] * step[FOUND] * step[LONGEST];
}

/**
 * Computes `next` for a ball that slips a little: through the whole step the lane pushes with the force that ends the slip at its
 * end, or, if that is more than friction allows, in the same direction with all friction.
 * Source: the implicit step for dry friction; Moreau, Unilateral contact and dry friction in finite freedom dynamics, 1988.
 */
function grip(): void {
  const radius = ball[RADIUS];
  const most = step[MEAN];
  const perSlip = 1 / (ball[INVERSE_EFFECTIVE_MASS] * step[HELD_NORMAL] * step[H]);
  let x = step[NEEDED_X] - perSlip * (here[VX] - radius * here[WY]);
  let y = step[NEEDED_Y] - perSlip * (here[VY] + radius * here[WX]);
  for (let i = 0; i < MOST_GRIPS; i++) {
    const k = Math.min(1, most / Math.sqrt(x * x + y * y));
    step[GIVEN_X] = k * x;
    step[GIVEN_Y] = k * y;
    rungeKuttaStep();
    const sX = next[VX] - radius * next[WY];
    const sY = next[VY] + radius * next[WX];
    if (Math.sqrt(sX * sX + sY * sY) < GRIPPED) break;
    x = step[GIVEN_X] - perSlip * sX;
    y = step[GIVEN_Y] - perSlip * sY;
  }
}

/** Whether the slip is over, and the lane can hold the ball. */
const slipIsOver = (): boolean => step[SLIP] <= (flags[HAS_ROLLED] === 1 ? GRIPPED : NO_SLIP) && canRoll();

/** Whether rolling on from here needs no more friction than there is. */
function canRoll(): boolean {
  findFriction(); // leaves `here` in `trial`
  rollingRates();
  step[NEEDED] = frictionFor(rates);
  step[HELD_NORMAL] = rates[NORMAL];
  step[NEEDED_X] = rates[PUSH_X] / rates[NORMAL];
  step[NEEDED_Y] = rates[PUSH_Y] / rates[NORMAL];
  return step[NEEDED] <= step[FOUND];
}

/** Ends rolling where the lane cannot hold the ball: slip begins opposite to the push that rolling would need. */
function beginToSlip(): void {
  const pushX = rates[PUSH_X];
  const pushY = rates[PUSH_Y];
  const k = (0.5 * NO_SLIP) / Math.sqrt(pushX * pushX + pushY * pushY); // less than counts as slip
  here[VX] -= k * pushX;
  here[VY] -= k * pushY;
  flags[IS_ROLLING] = 0;
}

/** Longest step, s, over which a small slip keeps its size and direction well enough. */
function cautiousStep(): number {
  findFriction();
  step[FRICTION] = step[FOUND];
  slidingRates();
  const radius = ball[RADIUS];
  const slip = step[SLIP];
  const rateX = rates[VX] - radius * rates[WY];
  const rateY = rates[VY] + radius * rates[WX];
  const sX = trial[VX] - radius * trial[WY];
  const sY = trial[VY] + radius * trial[WX];
  const isGrowing = sX * rateX + sY * rateY >= 0;
  const share = slip < DIRECTED ? SLIP_SHARE_DIRECTED : SLIP_SHARE;
  const own = (share * slip) / Math.sqrt(rateX * rateX + rateY * rateY);
  const lasting = isGrowing ? Math.max(own, FINEST_WHILE_GROWING * step[LONGEST]) : own;
  const soonest = slip / (ball[SLIP_RATE] * Math.max(step[FOUND], ground[DRY]));
  return Math.min(lasting, Math.max(soonest, UNCHANGED));
}

/** Size of the slip of the contact point, v − R ω×z, m/s. */
function slipOf(state: Float64Array): number {
  const x = state[VX] - ball[RADIUS] * state[WY];
  const y = state[VY] + ball[RADIUS] * state[WX];
  return Math.sqrt(x * x + y * y);
}

/** Sets the velocity to that of rolling, R ω×z, which a step keeps only to its own accuracy. */
export function holdRolling(state: Float64Array): void {
  state[VX] = ball[RADIUS] * state[WY];
  state[VY] = -ball[RADIUS] * state[WX];
}

/** Brings the quaternion back to length one; a Runge–Kutta step leaves it off by its own error. */
function normaliseOrientation(state: Float64Array): void {
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

function isFiniteState(state: Float64Array): boolean {
  for (let i = 0; i < STATE_SIZE; i++) if (!Number.isFinite(state[i])) return false;
  return true;
}
