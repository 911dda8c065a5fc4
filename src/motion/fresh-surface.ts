import type { Samples } from './shot-record.js';

/**
 * How oil that the ball picks up comes back to the lane. **An assumption of flarewise: no published model of
 * it is known.** Logged shots could fit its two numbers.
 *
 * Each turn lays an oil ring on the ball. Where the contact later passes over a ring it meets the film that
 * ring carries, and friction is what the lane's film and that film together allow. A ball that flares brings
 * clean cover instead; where its rings cross (the bow tie) it runs on oil again.
 */
export interface FreshSurface {
  /** Distance from a ring's middle at which its oil has faded to nothing, m. */
  readonly bandWidth: number;
  /** Share of the lane's film that a passing contact keeps. */
  readonly carriedShare: number;
}

export const USUAL_FRESH_SURFACE: FreshSurface = { bandWidth: 0.00635, carriedShare: 0.15 };

/** Rings remembered; more than a legal shot can have in twelve seconds. */
const MOST_RINGS = 256;

const TURN = 2 * Math.PI;

/**
 * The rings laid so far, and what the contact meets of them.
 *
 * A sample's contact was drawing a circle about the axis of that moment; the passing contact's distance from
 * that circle is its offset o, and the ring's oil counts by (1 − (o/width)²)², a bump of the same area as a
 * triangle's (to 7 %) but without its corner. Of all earlier turns the one that carries most counts. The
 * earlier sample a whole number of turns ago is found by the angle turned, linearly between samples, which
 * makes this second order in the step while the motion itself is fourth.
 */
export class RingMemory {
  /** Plane of the circle each sample draws: offset of a unit vector c is normal·c − height, m. */
  private planes: Float64Array;
  private readonly cursors = new Int32Array(MOST_RINGS);

  constructor(
    private readonly fresh: FreshSurface,
    private readonly radius: number,
    expected: number,
  ) {
    this.planes = new Float64Array(4 * expected);
  }

  /** Takes up sample `i` and fills in its `carried` film and `fresh` share. Samples come in order. */
  meet(samples: Samples, i: number): void {
    const { contact_B, film, phase } = samples;
    this.remember(samples, i);
    const { planes, cursors } = this;
    const { bandWidth, carriedShare } = this.fresh;
    const c0 = contact_B[3 * i];
    const c1 = contact_B[3 * i + 1];
    const c2 = contact_B[3 * i + 2];
    const perWidth = 1 / bandWidth;
    const farOff = 2 * bandWidth; // no plane turns that far between two samples
    let carried = 0;
    let covered = 0;
    let then = phase[i] - TURN;
    for (let ring = 0; then >= 0 && ring < MOST_RINGS; ring++, then -= TURN) {
      let j = cursors[ring];
      while (phase[j + 1] < then) j++;
      cursors[ring] = j;
      const p = 4 * j;
      const here = planes[p] * c0 + planes[p + 1] * c1 + planes[p + 2] * c2 - planes[p + 3];
      if (here > farOff || here < -farOff) continue;
      const next = planes[p + 4] * c0 + planes[p + 5] * c1 + planes[p + 6] * c2 - planes[p + 7];
      const u = (then - phase[j]) / (phase[j + 1] - phase[j]);
      const offset = (here + u * (next - here)) * perWidth;
      const within = 1 - offset * offset;
      if (within <= 0) continue;
      const share = within * within;
      if (share > covered) covered = share;
      const oil = share * (film[j] + u * (film[j + 1] - film[j]));
      if (oil > carried) carried = oil;
    }
    samples.carried[i] = carriedShare * carried;
    samples.fresh[i] = 1 - covered;
  }

  private remember({ contact_B, axis_B }: Samples, i: number): void {
    if (4 * i + 4 > this.planes.length) {
      const wider = new Float64Array(2 * this.planes.length);
      wider.set(this.planes);
      this.planes = wider;
    }
    const { planes, radius } = this;
    const a0 = axis_B[3 * i];
    const a1 = axis_B[3 * i + 1];
    const a2 = axis_B[3 * i + 2];
    const height = a0 * contact_B[3 * i] + a1 * contact_B[3 * i + 1] + a2 * contact_B[3 * i + 2];
    // Spinning on the contact point itself draws no ring: the circle shrinks to a point.
    const k = radius / Math.sqrt(Math.max(1e-12, 1 - height * height));
    planes[4 * i] = k * a0;
    planes[4 * i + 1] = k * a1;
    planes[4 * i + 2] = k * a2;
    planes[4 * i + 3] = k * height;
  }
}
