import { memory } from './memory.js';
import { writeRotation } from './rotation.js';
import { FLAG, RING, STATE, STEP, TRACK } from './slots.js';

const { here, next, trial, startRates, endRates, R_WP, ring, step, flags, track, trackStart, trackEnd } =
  memory;
const { trackStartRates, trackEndRates, trackCubic } = memory;
const { X, Y, VX, VY, WX, WY, WZ, PHASE, STATE_SIZE } = STATE;
const { ON_X, ON_Y, CONTACT_P, SPIN_P, TURNED, TRACK_SIZE } = TRACK;
const { H, PER_TURNED } = STEP;
const { PLACE_ANGLE } = RING;
const { PLACES } = FLAG;

/*
 * The track that the ball rolls in a step, seen from the lane and from the ball: x and y of Bo, the contact and ω in P, the angle turned.
 * Each is interpolated by the cubic through both ends of the step with their rates (Hermite), and is evaluated at all places of the rings in between.
 */

/** Lays the cubics through the step from `here` to `next`. */
export function setTrack(): void {
  for (let i = 0; i < STATE_SIZE; i++) trial[i] = here[i];
  writeEnd(trackStart, trackStartRates, startRates);
  for (let i = 0; i < STATE_SIZE; i++) trial[i] = next[i];
  writeEnd(trackEnd, trackEndRates, endRates);
  for (let i = 0; i < TRACK_SIZE; i++) {
    const from = trackStart[i];
    const by = trackEnd[i] - from;
    const startRate = trackStartRates[i];
    const endRate = trackEndRates[i];
    trackCubic[4 * i] = from;
    trackCubic[4 * i + 1] = startRate;
    trackCubic[4 * i + 2] = 3 * by - 2 * startRate - endRate;
    trackCubic[4 * i + 3] = startRate + endRate - 2 * by;
  }
  step[PER_TURNED] = 1 / (next[PHASE] - here[PHASE]);
}

/**
 * Writes the values at `trial`, and their rates times H. In P, a vector v that is constant in W, such as the contact, changes at the rate
 * v×ω; ω itself changes at the rate of the angular acceleration alone, since ω×ω = 0.
 */
function writeEnd(values: Float64Array, scaledRates: Float64Array, rates: Float64Array): void {
  const h = step[H];
  writeRotation();
  const c0 = -R_WP[6];
  const c1 = -R_WP[7];
  const c2 = -R_WP[8];
  const wx = trial[WX];
  const wy = trial[WY];
  const wz = trial[WZ];
  const w0 = R_WP[0] * wx + R_WP[3] * wy + R_WP[6] * wz;
  const w1 = R_WP[1] * wx + R_WP[4] * wy + R_WP[7] * wz;
  const w2 = R_WP[2] * wx + R_WP[5] * wy + R_WP[8] * wz;
  const ax = h * rates[WX];
  const ay = h * rates[WY];
  const az = h * rates[WZ];
  values[ON_X] = trial[X];
  values[ON_Y] = trial[Y];
  values[CONTACT_P] = c0;
  values[CONTACT_P + 1] = c1;
  values[CONTACT_P + 2] = c2;
  values[SPIN_P] = w0;
  values[SPIN_P + 1] = w1;
  values[SPIN_P + 2] = w2;
  values[TURNED] = trial[PHASE];
  scaledRates[ON_X] = h * trial[VX];
  scaledRates[ON_Y] = h * trial[VY];
  scaledRates[CONTACT_P] = h * (c1 * w2 - c2 * w1);
  scaledRates[CONTACT_P + 1] = h * (c2 * w0 - c0 * w2);
  scaledRates[CONTACT_P + 2] = h * (c0 * w1 - c1 * w0);
  scaledRates[SPIN_P] = R_WP[0] * ax + R_WP[3] * ay + R_WP[6] * az;
  scaledRates[SPIN_P + 1] = R_WP[1] * ax + R_WP[4] * ay + R_WP[7] * az;
  scaledRates[SPIN_P + 2] = R_WP[2] * ax + R_WP[5] * ay + R_WP[8] * az;
  scaledRates[TURNED] = h * rates[PHASE];
}

/** Writes the track where the next place of a ring is to be laid. */
export function followTrack(): void {
  const p = 4 * TURNED;
  const perTurned = step[PER_TURNED];
  const wanted = flags[PLACES] * ring[PLACE_ANGLE];
  const about = (wanted - here[PHASE]) * perTurned; // spin hardly changes in a step
  const found =
    trackCubic[p] + about * (trackCubic[p + 1] + about * (trackCubic[p + 2] + about * trackCubic[p + 3]));
  const share = Math.min(1, about - (found - wanted) * perTurned);
  for (let i = 0; i < TRACK_SIZE - 1; i++) {
    const c = 4 * i;
    track[i] =
      trackCubic[c] + share * (trackCubic[c + 1] + share * (trackCubic[c + 2] + share * trackCubic[c + 3]));
  }
}

/** Makes the ball of `trial` the track: where it stands at release. */
export function startTrack(): void {
  writeEnd(track, trackEndRates, endRates);
}
