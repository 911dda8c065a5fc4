import { Contact } from './contact.js';
import type { PrincipalBody } from './principal-body.js';
import { rollingEquations } from './rolling.js';
import { rungeKutta, type Step } from './runge-kutta.js';
import { slidingEquations } from './sliding.js';
import {
  isFiniteState,
  NORMAL,
  normaliseOrientation,
  PUSH_X,
  PUSH_Y,
  RATES_SIZE,
  type Rates,
  STATE_SIZE,
  slipSpeed,
  slipX,
  slipY,
  VX,
  VY,
  WX,
  WY,
  Y,
} from './state.js';
import type { Surface } from './surface.js';

/**
 * How one advance ended: with its time used up, or before that with the ball beginning to roll, at a jump of
 * friction, at the end of the lane, or with the ball lost (it would hop, or numbers went astray).
 */
export type Advance = 'went' | 'rolls' | 'crossed' | 'arrived' | 'lost';

/** Slip that counts as none, m/s: far below what moves a ball, far above rounding. */
const NO_SLIP = 1e-11;

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

/** Parts that one advance may be cut into before it is let go in one. */
const MOST_PARTS = 100;

/** Tries at landing on a line across the lane, and how near is there, m: Newton's method needs two or three. */
const MOST_LANDINGS = 6;
const LANDED = 1e-13;

/**
 * A ball under way: its state, and how to take it one step further.
 *
 * Holds what a step needs, so that a step allocates nothing. Knows two ways to move, sliding and rolling, and
 * ends a step exactly where sliding gives way to rolling, where friction jumps, and at the lane's end.
 */
export class Ride {
  time = 0;
  isRolling = false;
  readonly contact: Contact;
  private here: Float64Array;
  private there: Float64Array = new Float64Array(STATE_SIZE);
  private readonly probe = new Float64Array(RATES_SIZE);
  private readonly radius: number;
  private readonly stops: readonly number[];
  private nextStop = 0;
  private isLost = false;
  private readonly slide: Rates;
  private readonly roll: Rates;
  private readonly slideStep: Step;
  private readonly rollStep: Step;
  private readonly nearSlip: number;

  /**
   * @param gravity  m/s²
   * @param state    at release; becomes the ride's own
   * @param length   of the lane, m
   */
  constructor(body: PrincipalBody, surface: Surface, gravity: number, state: Float64Array, length: number) {
    this.radius = body.radius;
    this.here = state;
    this.stops = [...surface.breaks.filter((y) => y > state[Y] && y < length), length];
    this.contact = new Contact(surface);
    this.contact.confine(Number.NEGATIVE_INFINITY, this.stops[0]);
    this.slide = slidingEquations(body, gravity);
    this.roll = rollingEquations(body, gravity);
    this.slideStep = rungeKutta((out, at, after) => {
      const friction = this.contact.frictionAt(at, after);
      this.slide(out, at, friction);
      if (!(friction >= 0) || out[NORMAL] < 0) this.isLost = true;
    });
    this.rollStep = rungeKutta((out, at) => this.roll(out, at, 0));
    // Slip shrinks at about (1 + m R²/J) μ g; below what a step could use up at μ = 1 its end is watched for.
    this.nearSlip = 1.5 * gravity * (1 + (body.mass * body.radius ** 2) / body.J[0]);
  }

  get state(): Float64Array {
    return this.here;
  }

  /** Moves on by `step` seconds, in parts while the slip is about to end, or until something happens. */
  advance(step: number): Advance {
    if (this.isRolling) this.slipIfItMust();
    let left = step;
    for (let part = 0; left > 0; part++) {
      let h = left;
      if (!this.isRolling && part < MOST_PARTS) {
        const slip = slipSpeed(this.here, this.radius);
        if (slip <= NO_SLIP && this.canRoll()) {
          this.isRolling = true;
          this.holdRolling(this.here);
          return 'rolls';
        }
        if (slip > NO_SLIP && slip < this.nearSlip * step) h = Math.min(h, this.cautiousStep(slip, step));
      }
      const landed = this.leap(h);
      if (this.isLost || !isFiniteState(this.here)) return 'lost';
      if (landed) return this.nextStop === this.stops.length ? 'arrived' : 'crossed';
      left -= h;
    }
    return 'went';
  }

  /** Takes one step, cut short where it would pass the next stop; says whether it was. */
  private leap(h: number): boolean {
    const go = this.isRolling ? this.rollStep : this.slideStep;
    const stop = this.stops[this.nextStop];
    const { here, there } = this;
    go(there, here, h);
    let taken = h;
    const landed = there[Y] >= stop;
    if (landed) {
      taken = (h * (stop - here[Y])) / (there[Y] - here[Y]);
      for (let i = 0; i < MOST_LANDINGS; i++) {
        this.contact.retry();
        go(there, here, taken);
        const miss = stop - there[Y];
        if (Math.abs(miss) < LANDED) break;
        taken += miss / there[VY];
      }
      there[Y] = stop;
      this.nextStop++;
      this.contact.confine(stop, this.stops[this.nextStop] ?? Number.POSITIVE_INFINITY);
    }
    this.time += taken;
    normaliseOrientation(there);
    this.here = there;
    this.there = here;
    if (this.isRolling) this.holdRolling(there);
    this.contact.begin(this.time);
    return landed;
  }

  /** Whether rolling on from here asks no more of the lane than friction can give. */
  private canRoll(): boolean {
    const { probe, here } = this;
    this.roll(probe, here, 0);
    const wanted = Math.sqrt(probe[PUSH_X] * probe[PUSH_X] + probe[PUSH_Y] * probe[PUSH_Y]);
    return wanted <= this.contact.frictionAt(here, 0) * probe[NORMAL];
  }

  /** Ends rolling where the lane cannot hold the ball: slip sets in against the push that rolling wants. */
  private slipIfItMust(): void {
    if (this.canRoll()) return;
    const { probe, here } = this;
    const k = (0.5 * NO_SLIP) / Math.hypot(probe[PUSH_X], probe[PUSH_Y]); // less than counts as slip
    here[VX] -= k * probe[PUSH_X];
    here[VY] -= k * probe[PUSH_Y];
    this.isRolling = false;
  }

  /** Longest step, s, over which a small slip keeps its size and direction well enough. */
  private cautiousStep(slip: number, step: number): number {
    const { probe, here, radius } = this;
    this.slide(probe, here, this.contact.frictionAt(here, 0));
    const rateX = slipX(probe, radius);
    const rateY = slipY(probe, radius);
    const isGrowing = slipX(here, radius) * rateX + slipY(here, radius) * rateY >= 0;
    const share = slip < DIRECTED ? SLIP_SHARE_DIRECTED : SLIP_SHARE;
    const own = (share * slip) / Math.hypot(rateX, rateY);
    return isGrowing ? Math.max(own, FINEST_WHILE_GROWING * step) : own;
  }

  /** Sets the velocity to that of rolling, R ω×z, which a step keeps only to its own accuracy. */
  private holdRolling(state: Float64Array): void {
    state[VX] = this.radius * state[WY];
    state[VY] = -this.radius * state[WX];
  }
}
