import type { FreshSurface } from '../../../src/motion/lane/fresh-surface.js';
import type { Places } from './places.js';

const USUAL_FRESH_SURFACE: FreshSurface = { bandWidth: 0.00635, carriedShare: 0.15, wornPerPass: 0.3 };

/** Rings remembered; more than a legal shot can have in twelve seconds. */
const MOST_RINGS = 256;

const TURN = 2 * Math.PI;

/** Samples that there is room for at first. */
const ROOM = 1024;

/** Numbers kept of each sample: its circle's plane (four), angle turned, film, and the film before the last pass wore it. */
const KEPT = 7;
const AT = 4;
const FILM = 5;
const BEFORE = 6;

/**
 * The rings laid so far, and what the contact meets of them. Contact and axis are expressed in P, the frame fixed
 * in the ball that the motion is computed in.
 *
 * A sample's contact was drawing a circle about the axis of that moment; the passing contact's distance from
 * that circle is its offset o, and the ring's oil counts by (1 − (o/width)²)², a bump of the same area as a
 * triangle's (to 7 %) but without its corner. Of all earlier turns the one that carries most counts. The
 * circle a whole number of turns ago is found by the angle turned, linearly between samples. Each pass wears what it
 * passes by the same bump.
 */
export class RingMemory {
  private freshSurface = USUAL_FRESH_SURFACE;
  private radius = 1;
  private kept = new Float64Array(KEPT * ROOM);
  private count = 0;
  private newest = 0;
  /** The expected rings, counted back from now, and for each ring ever met where it was met last. */
  private readonly near = new Int32Array(MOST_RINGS);
  private nearCount = 0;
  private readonly cursors = new Int32Array(MOST_RINGS);
  /** For each ring, the first of its samples that no contact has passed so many turns later. */
  private readonly passed = new Int32Array(MOST_RINGS);
  /** How far the contact passed from the last of those, in band widths. */
  private readonly offsets = new Float64Array(MOST_RINGS);
  private readonly lastContact_P = new Float64Array(3);

  /** Wipes the ball clean. */
  clear(freshSurface: FreshSurface, radius: number): void {
    this.freshSurface = freshSurface;
    this.radius = radius;
    this.count = 0;
    this.newest = 0;
    this.nearCount = 0;
    this.cursors.fill(0);
    this.passed.fill(0);
  }

  /** Lays oil where the ball touches the lane. Samples come in order of the angle turned. */
  lay(contact_P: Float64Array, axis_P: Float64Array, phase: number, film: number): void {
    if (this.freshSurface.wornPerPass > 0) this.wear(contact_P, phase);
    this.lastContact_P.set(contact_P);
    const p = KEPT * this.count++;
    if (p === this.kept.length) this.grow();
    const { kept, radius } = this;
    const height = axis_P[0] * contact_P[0] + axis_P[1] * contact_P[1] + axis_P[2] * contact_P[2];
    // Spinning on the contact point itself draws no ring: the circle shrinks to a point.
    const k = radius / Math.sqrt(Math.max(1e-12, 1 - height * height));
    kept[p] = k * axis_P[0];
    kept[p + 1] = k * axis_P[1];
    kept[p + 2] = k * axis_P[2];
    kept[p + 3] = k * height;
    kept[p + AT] = phase;
    kept[p + FILM] = film;
    this.newest = phase;
  }

  /**
   * Takes oil off the samples of all rings that the contact has passed since the last sample, a straight line on. Far apart
   * rings cross between two samples, so each wears by the mean over its stretch of ring.
   */
  private wear(contact_P: Float64Array, phase: number): void {
    const { kept, passed, offsets, lastContact_P, newest } = this;
    const { bandWidth, wornPerPass } = this.freshSurface;
    const perWidth = 1 / bandWidth;
    const perPhase = 1 / (phase - newest);
    for (let ring = 0; ring < MOST_RINGS; ring++) {
      const turned = (ring + 1) * TURN;
      const then = phase - turned;
      if (!(then > 0)) break;
      let p = passed[ring];
      for (; kept[p + AT] <= then; p += KEPT) {
        const u = Math.max(0, (kept[p + AT] + turned - newest) * perPhase); // 0 at the last sample, 1 here
        const c0 = lastContact_P[0] + u * (contact_P[0] - lastContact_P[0]);
        const c1 = lastContact_P[1] + u * (contact_P[1] - lastContact_P[1]);
        const c2 = lastContact_P[2] + u * (contact_P[2] - lastContact_P[2]);
        const offset = (kept[p] * c0 + kept[p + 1] * c1 + kept[p + 2] * c2 - kept[p + 3]) * perWidth;
        const stretch = p > 0 ? offset - offsets[ring] : 0;
        kept[p + BEFORE] = kept[p + FILM];
        kept[p + FILM] *= 1 - wornPerPass * meanBump(offset - stretch / 2, offset + stretch / 2);
        offsets[ring] = offset;
      }
      passed[ring] = p;
    }
  }

  /**
   * Picks the rings that a contact can come upon that stays within `reach` (rad) of a point, turning about an axis.
   * Returns how many band widths it can cross of any of them, going all the way.
   *
   * @param phase  angle turned when it is at that point
   */
  expect(contact_P: Float64Array, axis_P: Float64Array, phase: number, reach: number): number {
    const { kept, near } = this;
    const c0 = contact_P[0];
    const c1 = contact_P[1];
    const c2 = contact_P[2];
    const a0 = axis_P[0];
    const a1 = axis_P[1];
    const a2 = axis_P[2];
    const { bandWidth } = this.freshSurface;
    this.nearCount = 0;
    let steepest = 0;
    let ring = 0;
    for (let then = phase + reach - TURN; then >= 0 && ring < MOST_RINGS; ring++, then -= TURN) {
      const p = this.find(ring, Math.min(this.newest, Math.max(0, then - reach)));
      const n0 = kept[p];
      const n1 = kept[p + 1];
      const n2 = kept[p + 2];
      const offset = Math.abs(n0 * c0 + n1 * c1 + n2 * c2 - kept[p + 3]);
      const gap = offset - bandWidth * (1.2 + reach); // a ring's plane moves by less than a band in a radian
      const along = n0 * a0 + n1 * a1 + n2 * a2;
      const across2 = n0 * n0 + n1 * n1 + n2 * n2 - along * along;
      if (gap > 0 && gap * gap > across2 * reach * reach) continue;
      near[this.nearCount++] = ring;
      if (across2 > steepest) steepest = across2;
    }
    return (2 * reach * Math.sqrt(steepest)) / bandWidth;
  }

  /** Meets the expected rings at each of the places. */
  meet({ count, phase, contact_P, carried, fresh }: Places): void {
    const { kept, near, nearCount, cursors, passed, newest } = this;
    const { bandWidth, carriedShare } = this.freshSurface;
    const perWidth = 1 / bandWidth;
    for (let i = 0; i < count; i++) {
      carried[i] = 0;
      fresh[i] = 1;
    }
    for (let n = 0; n < nearCount; n++) {
      const ring = near[n];
      const turned = (ring + 1) * TURN;
      let p = cursors[ring];
      for (let i = 0; i < count; i++) {
        const then = phase[i] - turned;
        if (!(then >= 0 && then < newest)) continue;
        while (kept[p + AT] > then) p -= KEPT;
        while (kept[p + KEPT + AT] < then) p += KEPT;
        const q = p + KEPT;
        const u = (then - kept[p + AT]) / (kept[q + AT] - kept[p + AT]);
        const c0 = contact_P[3 * i];
        const c1 = contact_P[3 * i + 1];
        const c2 = contact_P[3 * i + 2];
        const here = kept[p] * c0 + kept[p + 1] * c1 + kept[p + 2] * c2 - kept[p + 3];
        const next = kept[q] * c0 + kept[q + 1] * c1 + kept[q + 2] * c2 - kept[q + 3];
        const offset = (here + u * (next - here)) * perWidth;
        const within = 1 - offset * offset;
        if (within <= 0) continue;
        const share = within * within;
        // the pass that is under way has worn what lies behind it already
        const film = kept[p + (p < passed[ring] ? BEFORE : FILM)];
        const filmNext = kept[q + (q < passed[ring] ? BEFORE : FILM)];
        const oil = carriedShare * share * (film + u * (filmNext - film));
        if (1 - share < fresh[i]) fresh[i] = 1 - share;
        if (oil > carried[i]) carried[i] = oil;
      }
      cursors[ring] = p;
    }
  }

  /** Where the sample is kept after which an angle turned was passed; looks from where it looked last time. */
  private find(ring: number, phase: number): number {
    const { kept, cursors } = this;
    let p = cursors[ring];
    while (kept[p + AT] > phase) p -= KEPT;
    while (kept[p + KEPT + AT] < phase) p += KEPT;
    cursors[ring] = p;
    return p;
  }

  private grow(): void {
    const wider = new Float64Array(2 * this.kept.length);
    wider.set(this.kept);
    this.kept = wider;
  }
}

/** Mean of (1 − o²)², nothing beyond ±1, over offsets between two. */
function meanBump(from: number, to: number): number {
  const gap = to - from;
  if (Math.abs(gap) > SMALL) return (bumpBefore(to) - bumpBefore(from)) / gap;
  const within = 1 - from * from;
  return within > 0 ? within * within : 0;
}

/** Offsets so near to one another that the bump is the same at both. */
const SMALL = 1e-4;

/** Integral of the bump from 0. */
function bumpBefore(offset: number): number {
  const o = Math.max(-1, Math.min(1, offset));
  const o2 = o * o;
  return o * (1 - (2 / 3) * o2 + 0.2 * o2 * o2);
}
