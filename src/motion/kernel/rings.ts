import { MOST_RING_PLACES, MOST_RINGS, memory } from './memory.js';
import { AHEAD, BALL_SLOT, CONTACT, FLAG, RING, STATE, TRACK } from './slots.js';

const { here, ball, ring, flags, contact, ahead, track } = memory;
const { placeC, placeFilm, placeCarried, placeFresh, placeRing, placeShare } = memory;
const { ringPlane, ringOil, ringOffset, ringOilBefore, ringPassed, ringNear } = memory;
const { PHASE } = STATE;
const { RADIUS } = BALL_SLOT;
const { PER_BAND, CARRIED_SHARE, WORN_PER_PASS, PER_ANGLE } = RING;
const { A0, A1, A2 } = CONTACT;
const { MIDDLE, REACH } = AHEAD;
const { CONTACT_P, SPIN_P } = TRACK;
const { NEAR, PLACES, LAST_OILED, PER_TURN } = FLAG;

const MASK = MOST_RING_PLACES - 1;

/** A ring's plane moves by less than this many band widths in a radian. */
const PLANE_MOVES = 1;

/*
 * The oil rings that the ball lays on itself, and what the contact meets of them later, in P.
 *
 * At equal angles turned, PER_TURN of them a turn, the ball keeps a place: the plane of the circle that the contact was drawing
 * about the axis of that moment, and the oil left there. So what the contact left n turns ago at the place now under it is
 * found by counting back n times PER_TURN. Between places, planes and oil are linear.
 *
 * The contact's distance from the circle is its offset o, in band widths, and the ring's oil counts by (1 − o²)², a
 * bump of the same area as a triangle's (to 7 %) but without its corner. Of all earlier turns the one that carries most counts. Each
 * pass wears what it passes by the same bump.
 */

/**
 * Lays oil at the next place of the ring under way, where the track is, from the film there (of the first place).
 *
 * The contact c draws a circle about ω, of radius R √(ω² − (ω·c)²)/|ω|. With n = k ω and h = k ω·c, k one over that root times R, n·c − h is the
 * distance from the circle along the ball.
 */
export function layPlace(): void {
  const place = flags[PLACES];
  if (ring[WORN_PER_PASS] > 0) wearPassed();
  flags[PLACES] = place + 1;
  const w0 = track[SPIN_P];
  const w1 = track[SPIN_P + 1];
  const w2 = track[SPIN_P + 2];
  const along = w0 * track[CONTACT_P] + w1 * track[CONTACT_P + 1] + w2 * track[CONTACT_P + 2];
  const along2 = along * along;
  // Spinning on the contact point itself draws no ring: the circle shrinks to a point.
  const level2 = Math.max(w0 * w0 + w1 * w1 + w2 * w2 - along2, 1e-12 * along2, LEAST);
  const k = (ball[RADIUS] * ring[PER_BAND]) / Math.sqrt(level2);
  const at = place & MASK;
  ringPlane[4 * at] = k * w0;
  ringPlane[4 * at + 1] = k * w1;
  ringPlane[4 * at + 2] = k * w2;
  ringPlane[4 * at + 3] = k * along;
  ringOil[at] = placeFilm[0];
  if (placeFilm[0] > 0) flags[LAST_OILED] = place;
}

/** Least square of the spin across the contact, (rad/s)², so that no quotient overflows. */
const LEAST = 1e-99;

/**
 * Takes oil off the near rings at the place that the contact is about to lay: less beside a ring, by the bump, averaged
 * over the stretch of ring around the place, since rings that cross at a wide angle do so within less than the gap between two places.
 */
function wearPassed(): void {
  const place = flags[PLACES];
  const perTurn = flags[PER_TURN];
  const worn = ring[WORN_PER_PASS];
  const c0 = track[CONTACT_P];
  const c1 = track[CONTACT_P + 1];
  const c2 = track[CONTACT_P + 2];
  const oldest = Math.max(0, place - MOST_RING_PLACES);
  const near = flags[NEAR];
  for (let i = 0; i < near; i++) {
    const n = ringNear[i];
    const back = place - perTurn * (n + 1);
    if (back < oldest) break;
    const at = back & MASK;
    const p = 4 * at;
    const offset = ringPlane[p] * c0 + ringPlane[p + 1] * c1 + ringPlane[p + 2] * c2 - ringPlane[p + 3];
    const half = ringPassed[n] === place - 1 ? Math.abs(offset - ringOffset[n]) / 2 : 0;
    const oil = ringOil[at];
    ringOffset[n] = offset;
    ringOilBefore[n] = oil;
    ringPassed[n] = place;
    if (Math.abs(offset) - half < 1) ringOil[at] = oil * (1 - worn * meanBump(offset, half));
  }
}

/**
 * Picks the rings with oil that the contact can meet in the coming step, and returns the greatest number of band widths that it can cross
 * of any of them during the step.
 */
export function findNearRings(): number {
  const perTurn = flags[PER_TURN];
  const newest = flags[PLACES] - 1;
  const oldest = Math.max(0, newest - MOST_RING_PLACES + 1);
  const reach = ahead[REACH];
  const m0 = ahead[MIDDLE];
  const m1 = ahead[MIDDLE + 1];
  const m2 = ahead[MIDDLE + 2];
  const a0 = contact[A0];
  const a1 = contact[A1];
  const a2 = contact[A2];
  const middle = Math.floor((here[PHASE] + reach) * ring[PER_ANGLE]);
  const end = Math.floor((here[PHASE] + 2 * reach) * ring[PER_ANGLE]);
  const band = 1.2 + PLANE_MOVES * reach;
  const lastOiled = flags[LAST_OILED];
  const halfWay = end - middle + 1;
  let near = 0;
  let steepest = 0;
  for (let turned = perTurn, n = 0; turned <= end && n < MOST_RINGS; turned += perTurn, n++) {
    const back = Math.min(newest, Math.max(0, middle - turned));
    if (back < oldest) break;
    if (middle - turned - halfWay > lastOiled) continue;
    const p = 4 * (back & MASK);
    const n0 = ringPlane[p];
    const n1 = ringPlane[p + 1];
    const n2 = ringPlane[p + 2];
    const gap = Math.abs(n0 * m0 + n1 * m1 + n2 * m2 - ringPlane[p + 3]) - band;
    const along = n0 * a0 + n1 * a1 + n2 * a2;
    const across2 = n0 * n0 + n1 * n1 + n2 * n2 - along * along;
    if (gap > 0 && gap * gap > across2 * reach * reach) continue;
    ringNear[near++] = n;
    if (across2 > steepest) steepest = across2;
  }
  flags[NEAR] = near;
  return Math.ceil(2 * reach * Math.sqrt(steepest));
}

/** Writes the oil carried at the first `count` places, from the near rings. */
export function meetNearRings(count: number): void {
  const perTurn = flags[PER_TURN];
  const newest = flags[PLACES] - 1;
  const oldest = Math.max(0, newest - MOST_RING_PLACES + 1);
  const carriedShare = ring[CARRIED_SHARE];
  const far = 1 + PLANE_MOVES / ring[PER_ANGLE];
  for (let i = 0; i < count; i++) {
    placeCarried[i] = 0;
  }
  const near = flags[NEAR];
  for (let k = 0; k < near; k++) {
    const n = ringNear[k];
    const turned = perTurn * (n + 1);
    for (let i = 0; i < count; i++) {
      const back = placeRing[i] - turned;
      if (back < oldest || back >= newest) continue;
      const at = back & MASK;
      const p = 4 * at;
      const c0 = placeC[3 * i];
      const c1 = placeC[3 * i + 1];
      const c2 = placeC[3 * i + 2];
      const from = ringPlane[p] * c0 + ringPlane[p + 1] * c1 + ringPlane[p + 2] * c2 - ringPlane[p + 3];
      if (from > far || from < -far) continue;
      const next = (back + 1) & MASK;
      const q = 4 * next;
      const to = ringPlane[q] * c0 + ringPlane[q + 1] * c1 + ringPlane[q + 2] * c2 - ringPlane[q + 3];
      const u = placeShare[i];
      const offset = from + u * (to - from);
      const within = 1 - offset * offset;
      if (within <= 0) continue;
      const share = within * within;
      // the pass that is under way has worn what lies behind it already
      const isPassed = placeRing[i] === newest && ringPassed[n] === newest;
      const film = isPassed ? ringOilBefore[n] : ringOil[at];
      const oil = carriedShare * share * (film + u * (ringOil[next] - film));
      if (oil > placeCarried[i]) placeCarried[i] = oil;
    }
  }
}

/** Writes the share of contact on clean cover at the first place, from all rings, with oil or without. */
export function meetAllRings(): void {
  const perTurn = flags[PER_TURN];
  const newest = flags[PLACES] - 1;
  const oldest = Math.max(0, newest - MOST_RING_PLACES + 1);
  const u = placeShare[0];
  let most = 0;
  for (let back = placeRing[0] - perTurn; back >= oldest; back -= perTurn) {
    if (back >= newest) continue;
    const p = 4 * (back & MASK);
    const q = 4 * ((back + 1) & MASK);
    const c0 = placeC[0];
    const c1 = placeC[1];
    const c2 = placeC[2];
    const from = ringPlane[p] * c0 + ringPlane[p + 1] * c1 + ringPlane[p + 2] * c2 - ringPlane[p + 3];
    const to = ringPlane[q] * c0 + ringPlane[q + 1] * c1 + ringPlane[q + 2] * c2 - ringPlane[q + 3];
    const offset = from + u * (to - from);
    const within = 1 - offset * offset;
    if (within > 0) most = Math.max(most, within * within);
  }
  placeFresh[0] = 1 - most;
}

/** Mean of (1 − o²)², nothing beyond ±1, over offsets up to `half` to either side of a middle. */
function meanBump(middle: number, half: number): number {
  const m2 = middle * middle;
  const h2 = half * half;
  if (Math.abs(middle) + half <= 1) return 1 - 2 * (m2 + h2 / 3) + m2 * m2 + 2 * m2 * h2 + 0.2 * h2 * h2;
  return (bumpBefore(middle + half) - bumpBefore(middle - half)) / Math.max(2 * half, SMALL);
}

/** Least width over which the bump is averaged, against division by zero. */
const SMALL = 1e-9;

/** Integral of the bump from 0. */
function bumpBefore(offset: number): number {
  const o = Math.max(-1, Math.min(1, offset));
  const o2 = o * o;
  return o * (1 - (2 / 3) * o2 + 0.2 * o2 * o2);
}
