import type { ContactKinematics } from './contact-kinematics.js';
import type { MethodSurface } from './method-surface.js';
import { PathAhead, shareOf } from './path-ahead.js';
import { Places } from './places.js';
import type { RingMemory } from './ring-memory.js';
import { PHASE, X, Y } from './state.js';

/** How near a jump of friction its near side is still read, m. */
const NEAR_SIDE = 1e-9;

/** Parts that a step is cut into to see what the ball rolls over; two looks in each. */
const FEWEST_PARTS = 2;
const MOST_PARTS = 64;

/** How far past the place where friction gives out is gone, in gaps between two looks, so that it has. */
const PAST = 0.02;

/**
 * What the ball finds under it: the lane's film, the oil it carries there itself, and the friction they make.
 *
 * Knows the stretch of lane between two jumps of friction that the ball is on, and reads nothing beyond it, so
 * that no step sees past a jump.
 */
export class Contact {
  /** What lies where the ball was met last. */
  readonly here = new Places(1);
  private readonly coming = new Places(2 * MOST_PARTS);
  private readonly ahead = new PathAhead();
  private parts = FEWEST_PARTS;
  private mean = 0;
  private slope = 0;
  private nearEnd = Number.NEGATIVE_INFINITY;
  private farEnd = Number.POSITIVE_INFINITY;

  /** Friction where there is no film: the greatest, on an oiled lane. */
  readonly dryFriction: number;

  constructor(
    private readonly surface: MethodSurface,
    private readonly rings: RingMemory | null,
  ) {
    this.here.count = 1;
    this.dryFriction = surface.frictionUnder(0);
  }

  /** Confines reading to the lane from `near` to just short of `far`, m. */
  confine(near: number, far: number): void {
    this.nearEnd = near;
    this.farEnd = far - NEAR_SIDE;
  }

  /** A step of `h` seconds from a state is coming: until the next one, only its contacts are met. */
  expect(state: Float64Array, rates: Float64Array, h: number): void {
    const { ahead, rings } = this;
    ahead.setOut(state, rates, h);
    this.parts = FEWEST_PARTS;
    if (!rings) return;
    const reach = 0.5 * h * ahead.mid.spin;
    const widths = rings.expect(ahead.midContact_P, ahead.mid.axis_P, state[PHASE] + reach, reach);
    this.parts = Math.max(FEWEST_PARTS, Math.min(MOST_PARTS, Math.ceil(widths)));
  }

  /** Meets what lies under the ball in one state. */
  meet(state: Float64Array, { contact_P }: ContactKinematics): void {
    const { here } = this;
    here.x[0] = state[X];
    here.y[0] = state[Y];
    here.phase[0] = state[PHASE];
    here.contact_P.set(contact_P);
    this.fill(here);
  }

  /** Friction where the ball was met last. */
  friction(): number {
    return this.surface.frictionUnder(this.here.film[0] + this.here.carried[0]);
  }

  /**
   * Looks over the expected step and sums up the friction on the way: the straight line in time that fits it
   * best. False when that friction, or a film, is negative or no number.
   *
   * A ball may cross an oil ring in a thousandth of a second, much faster than anything else goes on. What such a
   * pulse does to velocity and place is told by its mean and first moment in time, and the line has both, so a
   * step may be far longer than the pulse. Where friction is smooth, the fourth order of the step is kept.
   */
  lookAhead(): boolean {
    const { coming, parts, surface } = this;
    const { film, carried } = coming;
    this.look();
    let sum = 0;
    let moment = 0;
    for (let i = 0; i < 2 * parts; i++) if (!(film[i] >= 0)) return false;
    for (let i = 0; i < parts; i++) {
      const first = surface.frictionUnder(film[2 * i] + carried[2 * i]);
      const second = surface.frictionUnder(film[2 * i + 1] + carried[2 * i + 1]);
      if (!(first >= 0 && second >= 0)) return false;
      sum += first + second;
      moment += (2 * i + 1 - parts) * (first + second) + (second - first) / Math.sqrt(3);
    }
    this.mean = sum / (2 * parts);
    this.slope = (3 * moment) / (2 * parts * parts);
    return true;
  }

  /**
   * How much of the expected step goes by before friction falls below what is needed: a share, 1 when it does not.
   * Just past the place where it does, by what the looks to both sides of it say.
   *
   * @param spare             friction at the start beyond what is needed there, not negative
   * @param start,middle,end  friction needed in the course of the step, a parabola between
   */
  shareHeld(spare: number, start: number, middle: number, end: number): number {
    const { coming, surface, parts } = this;
    const { film, carried } = coming;
    this.look();
    let before = 0;
    let spareBefore = spare;
    for (let i = 0; i < coming.count; i++) {
      const share = shareOf(i, parts);
      const needed = start + share * (end - start + 2 * (1 - share) * (2 * middle - start - end));
      const spareHere = surface.frictionUnder(film[i] + carried[i]) - needed;
      if (!(spareHere >= 0))
        return (
          before +
          PAST * (share - before) +
          (1 - PAST) * (share - before) * (spareBefore / (spareBefore - spareHere))
        );
      before = share;
      spareBefore = spareHere;
    }
    return 1;
  }

  /** Friction at a share of the step looked over. */
  frictionAt(share: number): number {
    return this.mean + (2 * share - 1) * this.slope;
  }

  private look(): void {
    this.ahead.write(this.coming, this.parts);
    this.fill(this.coming);
  }

  /** Fills in what lies at places. */
  private fill(places: Places): void {
    const { surface, rings, nearEnd, farEnd } = this;
    const { count, x, y, film } = places;
    for (let i = 0; i < count; i++) film[i] = surface.filmAt(x[i], Math.min(farEnd, Math.max(nearEnd, y[i])));
    if (rings) rings.meet(places);
  }
}
