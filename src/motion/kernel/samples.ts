import { writeContact } from './contact-kinematics.js';
import { meetFilm } from './film.js';
import { memory, RECORD_ROOM } from './memory.js';
import { writeOnePlace } from './path-ahead.js';
import { followTrack, setTrack, startTrack } from './ring-track.js';
import { layPlace, meetAllRings, meetNearRings } from './rings.js';
import { between } from './runge-kutta.js';
import { holdRolling } from './shot-stepper.js';
import { BALL_SLOT, CONTACT, FLAG, RING, STATE, STEP, TRACK } from './slots.js';

const { here, next, trial, track, R_BP, ball, ring, step, flags, contact, record } = memory;
const { placeX, placeY, placeFilm, placeCarried, placeFresh } = memory;
const { X, Y, VX, VY, WX, WY, PHASE, STATE_SIZE } = STATE;
const { RADIUS } = BALL_SLOT;
const { C0, C1, C2, A0, A1, A2, SPIN } = CONTACT;
const { PER_ANGLE } = RING;
const { TIME, H, SHARE } = STEP;
const { ON_X, ON_Y } = TRACK;
const { IS_ROLLING, HAS_RINGS, PLACES, RECORDED, IS_FULL } = FLAG;

/** Greatest angle that the ball turns from one sample to the next, rad. */
const SAMPLE_ANGLE = (2 * Math.PI) / 32;

/** Takes the first sample and lays the first place of the first ring. */
export function sampleRelease(): void {
  for (let i = 0; i < STATE_SIZE; i++) trial[i] = here[i];
  step[SHARE] = 1;
  meetTrial();
  addSample();
  if (flags[HAS_RINGS] === 0) return;
  startTrack();
  layPlace();
}

/**
 * Takes the samples of the step from `here` to `next`, its end the last of them, and lays the places of rings on the way.
 *
 * @param keep  takes the record when it is full
 */
export function sampleStep(keep: () => void): void {
  const gaps = Math.max(1, Math.ceil((next[PHASE] - here[PHASE]) / SAMPLE_ANGLE));
  if (flags[HAS_RINGS] === 1) setTrack();
  for (let k = 1; k <= gaps; k++) {
    if (flags[RECORDED] === RECORD_ROOM) keep();
    step[SHARE] = k / gaps;
    if (k < gaps) {
      between();
      if (flags[IS_ROLLING] === 1) holdRolling(trial);
    } else for (let i = 0; i < STATE_SIZE; i++) trial[i] = next[i];
    if (flags[HAS_RINGS] === 1) layPlaces();
    meetTrial();
    addSample();
  }
}

/** Lays the places of rings that the ball has passed when it has turned as far as `trial`. */
function layPlaces(): void {
  const last = Math.floor(trial[PHASE] * ring[PER_ANGLE]);
  while (flags[PLACES] <= last) {
    followTrack();
    placeX[0] = track[ON_X];
    placeY[0] = track[ON_Y];
    meetFilm(1);
    layPlace();
  }
}

/** Meets what lies under the ball of `trial`. */
function meetTrial(): void {
  writeContact();
  writeOnePlace();
  meetFilm(1);
  if (flags[HAS_RINGS] === 1 && flags[IS_FULL] === 1) {
    meetNearRings(1);
    meetAllRings();
  }
}

/** Adds `trial`, just met, a SHARE of the step on, to the record. */
function addSample(): void {
  const i = flags[RECORDED];
  flags[RECORDED] = i + 1;
  record.time[i] = step[TIME] - (1 - step[SHARE]) * step[H];
  record.x[i] = trial[X];
  record.y[i] = trial[Y];
  record.vx[i] = trial[VX];
  record.vy[i] = trial[VY];
  record.spin[i] = contact[SPIN];
  record.phase[i] = trial[PHASE];
  record.film[i] = placeFilm[0];
  const c0 = contact[C0];
  const c1 = contact[C1];
  const c2 = contact[C2];
  record.contact_B[3 * i] = R_BP[0] * c0 + R_BP[1] * c1 + R_BP[2] * c2;
  record.contact_B[3 * i + 1] = R_BP[3] * c0 + R_BP[4] * c1 + R_BP[5] * c2;
  record.contact_B[3 * i + 2] = R_BP[6] * c0 + R_BP[7] * c1 + R_BP[8] * c2;
  if (flags[IS_FULL] === 0) return;
  const a0 = contact[A0];
  const a1 = contact[A1];
  const a2 = contact[A2];
  record.axis_B[3 * i] = R_BP[0] * a0 + R_BP[1] * a1 + R_BP[2] * a2;
  record.axis_B[3 * i + 1] = R_BP[3] * a0 + R_BP[4] * a1 + R_BP[5] * a2;
  record.axis_B[3 * i + 2] = R_BP[6] * a0 + R_BP[7] * a1 + R_BP[8] * a2;
  const sX = trial[VX] - ball[RADIUS] * trial[WY];
  const sY = trial[VY] + ball[RADIUS] * trial[WX];
  record.slip[i] = Math.sqrt(sX * sX + sY * sY);
  record.carried[i] = placeCarried[0];
  record.fresh[i] = placeFresh[0];
}
