import { exp } from '../../math/exp.js';
import { writeContact } from './contact-kinematics.js';
import { meetFilm } from './film.js';
import { MOST_PLACES, memory } from './memory.js';
import { GAUSS, setOut, writeContacts, writeOnePlace, writePlaces } from './path-ahead.js';
import { findNearRings, meetNearRings } from './rings.js';
import { FLAG, GROUND, STATE, STEP } from './slots.js';

const { here, trial, middleRates, endRates, ground, step, flags } = memory;
const { placeFilm, placeCarried, placeFriction } = memory;
const { STATE_SIZE, NORMAL, PUSH_X, PUSH_Y } = STATE;
const { OILED, DROP, PER_SCALE, DRY, THICK } = GROUND;
const { MEAN, SLOPE, FOUND, NEEDED, HELD } = STEP;
const { IS_LOST, HAS_FILM, HAS_RINGS, PARTS } = FLAG;

/** Least and greatest number of parts into which a step is divided to look ahead; each part has two Gauss points. */
const FEWEST_PARTS = 2;
const MOST_PARTS = MOST_PLACES / 2;

/** How far past the place where friction gives out the step ends, in gaps between two looks, so that friction has given out there. */
const PAST = 0.02;

/** Prepares to look ahead over the coming step: sets the number of parts, and picks the rings that the contact may meet in it. */
export function expectStep(): void {
  flags[PARTS] = FEWEST_PARTS;
  if (flags[HAS_RINGS] === 0) return;
  setOut();
  flags[PARTS] = Math.max(FEWEST_PARTS, Math.min(MOST_PARTS, findNearRings()));
}

/**
 * Looks ahead over the coming step and sums up the friction on the way as the straight line in time that fits it
 * best, MEAN + (2 share − 1) SLOPE. The ball is lost where that friction, or a film, is negative or NaN.
 *
 * A ball may cross an oil ring in a thousandth of a second, much faster than anything else happens. The effect of such a
 * pulse on velocity and place depends only on its mean and first moment in time, which the line preserves, so a
 * step may be far longer than the pulse. Where friction is smooth, the step keeps its fourth order.
 */
export function lookAhead(): void {
  if (flags[HAS_FILM] === 0) {
    step[MEAN] = ground[DRY];
    step[SLOPE] = 0;
    if (!(ground[DRY] >= 0)) flags[IS_LOST] = 1;
    return;
  }
  const parts = flags[PARTS];
  look();
  let sum = 0;
  let moment = 0;
  let isSound = true;
  for (let i = 0; i < parts; i++) {
    const first = placeFriction[2 * i];
    const second = placeFriction[2 * i + 1];
    isSound = isSound && placeFilm[2 * i] >= 0 && placeFilm[2 * i + 1] >= 0 && first >= 0 && second >= 0;
    sum += first + second;
    moment += (2 * i + 1 - parts) * (first + second) + (second - first) / Math.sqrt(3);
  }
  if (!isSound) flags[IS_LOST] = 1;
  step[MEAN] = sum / (2 * parts);
  step[SLOPE] = (3 * moment) / (2 * parts * parts);
}

/**
 * Writes HELD, the share of the rolling step just computed that passes before friction falls below what rolling needs; 1 when it does
 * not. It is interpolated between the looks on both sides, and lies just past the place. The friction needed follows a parabola through
 * the step's start, middle and end.
 */
export function writeShareHeld(): void {
  const start = step[NEEDED];
  const middle = frictionFor(middleRates);
  const end = frictionFor(endRates);
  const parts = flags[PARTS];
  look();
  let before = 0;
  let spareBefore = step[FOUND] - start;
  for (let i = 0; i < 2 * parts; i++) {
    const share = ((i >> 1) + 0.5 * (1 + ((i & 1) === 1 ? GAUSS : -GAUSS))) / parts;
    const needed = start + share * (end - start + 2 * (1 - share) * (2 * middle - start - end));
    const spare = placeFriction[i] - needed;
    if (!(spare >= 0)) {
      step[HELD] =
        before +
        PAST * (share - before) +
        (1 - PAST) * (share - before) * (spareBefore / (spareBefore - spare));
      return;
    }
    before = share;
    spareBefore = spare;
  }
  step[HELD] = 1;
}

/** Friction that rolling needs, from the contact force in the rates. */
export function frictionFor(rates: Float64Array): number {
  return Math.sqrt(rates[PUSH_X] * rates[PUSH_X] + rates[PUSH_Y] * rates[PUSH_Y]) / rates[NORMAL];
}

/** Writes FOUND, the friction under the ball of `here`. */
export function findFriction(): void {
  for (let i = 0; i < STATE_SIZE; i++) trial[i] = here[i];
  writeContact();
  writeOnePlace();
  meetFilm(1);
  if (flags[HAS_RINGS] === 1) meetNearRings(1);
  step[FOUND] = ground[OILED] + ground[DROP] * exp((placeFilm[0] + placeCarried[0]) * ground[PER_SCALE]);
}

/** Whether more oil would change friction at any of the first `count` places. */
function isThin(count: number): boolean {
  const thick = ground[THICK];
  for (let i = 0; i < count; i++) if (!(placeFilm[i] > thick)) return true;
  return false;
}

/** Writes the friction at all places of the coming step. */
function look(): void {
  const count = 2 * flags[PARTS];
  writePlaces();
  meetFilm(count);
  if (flags[HAS_RINGS] === 1) {
    if (isThin(count)) {
      writeContacts();
      meetNearRings(count);
    } else for (let i = 0; i < count; i++) placeCarried[i] = 0;
  }
  const oiled = ground[OILED];
  const drop = ground[DROP];
  const perScale = ground[PER_SCALE];
  for (let i = 0; i < count; i++)
    placeFriction[i] = oiled + drop * exp((placeFilm[i] + placeCarried[i]) * perScale);
}
