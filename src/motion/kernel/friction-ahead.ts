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

/** Parts that a step is cut into to see what the ball rolls over; two looks in each. */
const FEWEST_PARTS = 2;
const MOST_PARTS = MOST_PLACES / 2;

/** How far past the place where friction gives out is gone, in gaps between two looks, so that it has. */
const PAST = 0.02;

/** A step is coming: until the next one, only its contacts are met. */
export function expectStep(): void {
  flags[PARTS] = FEWEST_PARTS;
  if (flags[HAS_RINGS] === 0) return;
  setOut();
  flags[PARTS] = Math.max(FEWEST_PARTS, Math.min(MOST_PARTS, findNearRings()));
}

/**
 * Looks over the expected step and sums up the friction on the way: the straight line in time that fits it
 * best, MEAN + (2 share − 1) SLOPE. The ball is lost where that friction, or a film, is negative or no number.
 *
 * A ball may cross an oil ring in a thousandth of a second, much faster than anything else happens. What such a
 * pulse does to velocity and place is its mean and first moment in time, and the line has both, so a
 * step may be far longer than the pulse. Where friction is smooth, the fourth order of the step is kept.
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
 * Writes how much of the rolling step just computed passes before friction falls below what is needed: HELD, 1 when it does not.
 * Just past the place where it does, by what the looks to both sides of it say. What is needed follows a parabola through the
 * step's start, middle and end.
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

/** Friction that holding a rolling ball takes, by the contact force that its rates carry. */
export function frictionFor(rates: Float64Array): number {
  return Math.sqrt(rates[PUSH_X] * rates[PUSH_X] + rates[PUSH_Y] * rates[PUSH_Y]) / rates[NORMAL];
}

/** Writes the friction under the ball as it is, FOUND. */
export function findFriction(): void {
  for (let i = 0; i < STATE_SIZE; i++) trial[i] = here[i];
  writeContact();
  writeOnePlace();
  meetFilm(1);
  if (flags[HAS_RINGS] === 1) meetNearRings(1);
  step[FOUND] = ground[OILED] + ground[DROP] * exp((placeFilm[0] + placeCarried[0]) * ground[PER_SCALE]);
}

/** Whether at any of the first this many places more oil would change friction. */
function isThin(count: number): boolean {
  const thick = ground[THICK];
  for (let i = 0; i < count; i++) if (!(placeFilm[i] > thick)) return true;
  return false;
}

/** Looks at all places of the expected step: the friction there. */
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
