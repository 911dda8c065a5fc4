import { cos, cosNear, sin, sinNear } from '../../math/sin-cos.js';
import { writeContact } from './contact-kinematics.js';
import { memory } from './memory.js';
import { AHEAD, CONTACT, FLAG, RING, STATE, STEP } from './slots.js';

const { here, trial, endRates, R_WP, contact, ahead, ring, step, flags } = memory;
const { placeX, placeY, placeC, placeRing, placeShare } = memory;
const { X, Y, VX, VY, QW, QX, QY, QZ, WX, WY, WZ, PHASE } = STATE;
const { C0, C1, C2, A0, A1, A2, SPIN } = CONTACT;
const { ALONG, ACROSS, ASIDE, LAG_ALONG, LAG_ACROSS, LAG_ASIDE, MIDDLE, REACH } = AHEAD;
const { PER_ANGLE } = RING;
const { H } = STEP;
const { PARTS } = FLAG;

/** Distance of the two points of Gauss's rule from the middle of a part, in half parts; both have the same weight. */
export const GAUSS = 1 / Math.sqrt(3);

/*
 * Predicts where the ball will be during one step, well enough to see what lies under it before the step is taken.
 *
 * The centre continues under the latest acceleration. The ball turns evenly about the axis that it should have
 * at mid-step and, by a little, about its angular acceleration, so that the prediction is right to the second power of the step
 * at both ends and in between: what lies under the ball is read with an error of the third power.
 */

/** Sets out on the step: the axis and spin at mid-step, and how the contact turns about it. */
export function setOut(): void {
  const half = step[H] / 2;
  trial[QW] = here[QW];
  trial[QX] = here[QX];
  trial[QY] = here[QY];
  trial[QZ] = here[QZ];
  trial[WX] = here[WX] + half * endRates[WX];
  trial[WY] = here[WY] + half * endRates[WY];
  trial[WZ] = here[WZ] + half * endRates[WZ];
  writeContact();
  const reach = half * contact[SPIN];
  ahead[REACH] = reach;
  const a0 = contact[A0];
  const a1 = contact[A1];
  const a2 = contact[A2];
  const c0 = contact[C0];
  const c1 = contact[C1];
  const c2 = contact[C2];
  const height = c0 * a0 + c1 * a1 + c2 * a2;
  ahead[ALONG] = height * a0;
  ahead[ALONG + 1] = height * a1;
  ahead[ALONG + 2] = height * a2;
  ahead[ACROSS] = c0 - height * a0;
  ahead[ACROSS + 1] = c1 - height * a1;
  ahead[ACROSS + 2] = c2 - height * a2;
  ahead[ASIDE] = c1 * a2 - c2 * a1;
  ahead[ASIDE + 1] = c2 * a0 - c0 * a2;
  ahead[ASIDE + 2] = c0 * a1 - c1 * a0;
  // of the contact, under the angular acceleration
  const lX = endRates[WY];
  const lY = -endRates[WX];
  const l0 = R_WP[0] * lX + R_WP[3] * lY;
  const l1 = R_WP[1] * lX + R_WP[4] * lY;
  const l2 = R_WP[2] * lX + R_WP[5] * lY;
  const lag = l0 * a0 + l1 * a1 + l2 * a2;
  ahead[LAG_ALONG] = lag * a0;
  ahead[LAG_ALONG + 1] = lag * a1;
  ahead[LAG_ALONG + 2] = lag * a2;
  ahead[LAG_ACROSS] = l0 - lag * a0;
  ahead[LAG_ACROSS + 1] = l1 - lag * a1;
  ahead[LAG_ACROSS + 2] = l2 - lag * a2;
  ahead[LAG_ASIDE] = l1 * a2 - l2 * a1;
  ahead[LAG_ASIDE + 1] = l2 * a0 - l0 * a2;
  ahead[LAG_ASIDE + 2] = l0 * a1 - l1 * a0;
  const c = reach <= NEAR_ANGLE ? cosNear(reach) : cos(reach);
  const s = reach <= NEAR_ANGLE ? sinNear(reach) : sin(reach);
  const k = -0.5 * half * half;
  for (let i = 0; i < 3; i++)
    ahead[MIDDLE + i] =
      ahead[ALONG + i] +
      c * ahead[ACROSS + i] +
      s * ahead[ASIDE + i] +
      k * (ahead[LAG_ALONG + i] + c * ahead[LAG_ACROSS + i] + s * ahead[LAG_ASIDE + i]);
}

/** Angles up to which sine and cosine need no reduction, rad. */
const NEAR_ANGLE = Math.PI / 4;

/** Writes the places at which to look: two in each part of the step. */
export function writePlaces(): void {
  const h = step[H];
  const parts = flags[PARTS];
  const toFirst = (h * (1 - GAUSS)) / parts; // from the second place of the part before
  const toSecond = (h * GAUSS) / parts;
  const x = here[X];
  const y = here[Y];
  const vx = here[VX];
  const vy = here[VY];
  const halfX = 0.5 * endRates[VX];
  const halfY = 0.5 * endRates[VY];
  let after = -toFirst / 2;
  for (let i = 0; i < 2 * parts; i++) {
    after += (i & 1) === 0 ? toFirst : toSecond;
    placeX[i] = x + after * (vx + after * halfX);
    placeY[i] = y + after * (vy + after * halfY);
  }
}

/** Writes the contacts at these places, and how far the rings have come there. */
export function writeContacts(): void {
  const h = step[H];
  const parts = flags[PARTS];
  const toFirst = (h * (1 - GAUSS)) / parts;
  const toSecond = (h * GAUSS) / parts;
  const spin = (2 * ahead[REACH]) / h;
  const halfFirst = (spin * toFirst) / 2;
  const second = spin * toSecond;
  const isNear = second <= NEAR_ANGLE; // the greater of both
  const cosHalf = isNear ? cosNear(halfFirst) : cos(halfFirst);
  const sinHalf = isNear ? sinNear(halfFirst) : sin(halfFirst);
  const cosFirst = 1 - 2 * sinHalf * sinHalf;
  const sinFirst = 2 * sinHalf * cosHalf;
  const cosSecond = isNear ? cosNear(second) : cos(second);
  const sinSecond = isNear ? sinNear(second) : sin(second);
  const along0 = ahead[ALONG];
  const along1 = ahead[ALONG + 1];
  const along2 = ahead[ALONG + 2];
  const across0 = ahead[ACROSS];
  const across1 = ahead[ACROSS + 1];
  const across2 = ahead[ACROSS + 2];
  const aside0 = ahead[ASIDE];
  const aside1 = ahead[ASIDE + 1];
  const aside2 = ahead[ASIDE + 2];
  const lag0 = ahead[LAG_ALONG];
  const lag1 = ahead[LAG_ALONG + 1];
  const lag2 = ahead[LAG_ALONG + 2];
  const lagAcross0 = ahead[LAG_ACROSS];
  const lagAcross1 = ahead[LAG_ACROSS + 1];
  const lagAcross2 = ahead[LAG_ACROSS + 2];
  const lagAside0 = ahead[LAG_ASIDE];
  const lagAside1 = ahead[LAG_ASIDE + 1];
  const lagAside2 = ahead[LAG_ASIDE + 2];
  const phase = here[PHASE];
  const perAngle = ring[PER_ANGLE];
  let after = -toFirst / 2;
  let c = cosHalf;
  let s = -sinHalf;
  for (let i = 0; i < 2 * parts; i++) {
    const isFirst = (i & 1) === 0;
    const byCos = isFirst ? cosFirst : cosSecond;
    const bySin = isFirst ? sinFirst : sinSecond;
    const turned = c * byCos - s * bySin;
    s = s * byCos + c * bySin;
    c = turned;
    after += isFirst ? toFirst : toSecond;
    const k = -0.5 * after * (h - after);
    const p = 3 * i;
    placeC[p] = along0 + c * across0 + s * aside0 + k * (lag0 + c * lagAcross0 + s * lagAside0);
    placeC[p + 1] = along1 + c * across1 + s * aside1 + k * (lag1 + c * lagAcross1 + s * lagAside1);
    placeC[p + 2] = along2 + c * across2 + s * aside2 + k * (lag2 + c * lagAcross2 + s * lagAside2);
    const rings = (phase + after * spin) * perAngle;
    placeRing[i] = Math.floor(rings);
    placeShare[i] = rings - placeRing[i];
  }
}

/** Makes the contact of `trial`, read before, the first and only place. */
export function writeOnePlace(): void {
  placeX[0] = trial[X];
  placeY[0] = trial[Y];
  placeC[0] = contact[C0];
  placeC[1] = contact[C1];
  placeC[2] = contact[C2];
  const rings = trial[PHASE] * ring[PER_ANGLE];
  placeRing[0] = Math.floor(rings);
  placeShare[0] = rings - placeRing[0];
}
