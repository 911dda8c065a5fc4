import type { PrincipalBody } from '../../../src/motion/shot/principal-body.js';
import type { Contact } from './contact.js';
import { ContactKinematics } from './contact-kinematics.js';
import { rollingEquations } from './rolling.js';
import { RungeKutta } from './runge-kutta.js';
import { type GivenPush, slidingEquations } from './sliding.js';
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

/**
 * How one advance ended: with its time used up, or before that with the ball beginning to roll, at a jump of
 * friction, at the end of the lane, or with the ball lost (it would hop, or numbers went astray).
 */
type Advance = 'went' | 'rolls' | 'crossed' | 'arrived' | 'lost';

/** Slip that counts as none, m/s: far below what moves a ball, far above rounding. */
const NO_SLIP = 1e-11;

/** The same once the ball has rolled: gripping ends a slip in few steps, and moves the ball by less than this anyway. */
const GRIPPED = 1e-6;

/** Tries at the push that ends a slip within a step: each leaves a few hundredths of what was there before. */
const MOST_GRIPS = 4;

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

/**
 * Time, s, for which friction is about the same. Over a longer step it may rise as far as it can, as at the end of an
 * oil ring, and no more of the slip may be used up even then.
 */
const UNCHANGED = 2.5e-4;

/** Cautious steps in a row before one of the usual length is taken after all. */
export const MOST_CAUTIOUS = 100;

/** Tries at landing on a line across the lane, and how near is there, m: Newton's method needs two or three. */
const MOST_LANDINGS = 6;
const LANDED = 1e-13;

/**
 * A ball under way: its state, and how to take it one step further.
 *
 * Holds what a step needs, so that a step allocates nothing. Knows two ways to move, sliding and rolling, and
 * ends a step exactly where sliding gives way to rolling, where friction jumps, and at the lane's end.
 */
export class ShotStepper {
  time = 0;
  isRolling = false;
  /** How long the last step was, s. */
  taken = 0;
  private here: Float64Array;
  private there: Float64Array = new Float64Array(STATE_SIZE);
  private readonly inside = new Float64Array(STATE_SIZE);
  private readonly probe = new Float64Array(RATES_SIZE);
  private readonly kinematics = new ContactKinematics();
  private readonly radius: number;
  private readonly stops: readonly number[];
  private nextStop = 0;
  private hasRolled = false;
  private cautious = 0;
  /** By `canRoll`: friction under the ball, and what holding it takes. */
  private frictionFound = 0;
  private frictionNeeded = 0;
  private neededX = 0;
  private neededY = 0;
  private normal = 0;
  private isLost = false;
  /** Whether the lane would have had to pull the ball down. */
  hopped = false;
  /** Set while the ball grips: a push through the whole step. */
  private readonly push: GivenPush = { isOn: false, x: 0, y: 0 };
  private readonly slide: Rates;
  private readonly roll: Rates;
  private readonly method: RungeKutta;
  /** Change of slip per change of the lane's push, 1/kg, about the same in all directions. */
  private readonly inverseEffectiveMass: number;
  /** How fast slip ends at a friction of 1, at most, m/s². */
  private readonly slipRate: number;

  /**
   * @param contact  what lies under the ball
   * @param stops    distances at which a step ends, ascending, the last the end of the lane, m
   * @param gravity  m/s²
   * @param state    at release; becomes the stepper's own
   */
  constructor(
    body: PrincipalBody,
    private readonly contact: Contact,
    stops: readonly number[],
    gravity: number,
    state: Float64Array,
  ) {
    this.radius = body.radius;
    this.here = state;
    this.stops = stops;
    contact.confine(Number.NEGATIVE_INFINITY, stops[0]);
    this.slide = slidingEquations(body, gravity, this.push);
    this.roll = rollingEquations(body, gravity);
    this.method = new RungeKutta((out, at, share) => {
      const move = this.isRolling ? this.roll : this.slide;
      move(out, at, contact.frictionAt(share));
      if (out[NORMAL] < 0) this.isLost = this.hopped = true;
    });
    this.inverseEffectiveMass = 1 / body.mass + body.radius ** 2 / body.J[0];
    // half as much again for the sway of the normal force and of what else moves the contact
    this.slipRate = 1.5 * gravity * body.mass * this.inverseEffectiveMass;
  }

  get state(): Float64Array {
    return this.here;
  }

  /** The state within the last step, `share` of it on. */
  between(share: number): Float64Array {
    this.method.between(this.inside, this.there, this.here, this.taken, share);
    if (this.isRolling) this.holdRolling(this.inside);
    return this.inside;
  }

  /** Goes on by `most` seconds at most, less while the slip is about to end, or until something happens. */
  advance(most: number): Advance {
    if (this.isRolling && !this.canRoll()) this.beginToSlip();
    let h = most;
    this.push.isOn = false;
    if (!this.isRolling) {
      const slip = slipSpeed(this.here, this.radius);
      if (this.slipIsOver(slip)) {
        this.isRolling = true;
        this.hasRolled = true;
        this.holdRolling(this.here);
        return 'rolls';
      }
      this.push.isOn = this.canGrip(slip, most);
      if (!this.push.isOn && slip < this.slipRate * most && this.cautious < MOST_CAUTIOUS) {
        h = Math.min(most, this.cautiousStep(slip, most));
      }
    }
    this.cautious = !this.isRolling && h < most ? this.cautious + 1 : 0;
    const landed = this.stepToStop(h);
    if (this.isLost || !isFiniteState(this.here)) return 'lost';
    if (landed) return this.nextStop === this.stops.length ? 'arrived' : 'crossed';
    return 'went';
  }

  /** Takes one step, cut short where it would pass the next stop; says whether it was. */
  private stepToStop(h: number): boolean {
    const stop = this.stops[this.nextStop];
    const { here, there } = this;
    let taken = h;
    this.trialStep(taken);
    if (this.isRolling) {
      taken *= this.shareHeld();
      if (taken < h) this.trialStep(taken);
    }
    const landed = there[Y] >= stop;
    if (landed) {
      taken = (taken * (stop - here[Y])) / (there[Y] - here[Y]);
      for (let i = 0; i < MOST_LANDINGS; i++) {
        this.trialStep(taken);
        const miss = stop - there[Y];
        if (Math.abs(miss) < LANDED) break;
        taken += miss / there[VY];
      }
      there[Y] = stop;
      this.nextStop++;
      this.contact.confine(stop, this.stops[this.nextStop] ?? Number.POSITIVE_INFINITY);
    }
    this.time += taken;
    this.taken = taken;
    normaliseOrientation(there);
    this.here = there;
    this.there = here;
    if (this.isRolling) this.holdRolling(there);
    return landed;
  }

  /** How much of the rolling step just computed the lane holds the ball. */
  private shareHeld(): number {
    const { contact, frictionFound, frictionNeeded } = this;
    const { middleRates, endRates } = this.method;
    const spare = frictionFound - frictionNeeded;
    return contact.shareHeld(spare, frictionNeeded, frictionFor(middleRates), frictionFor(endRates));
  }

  /** Computes `there`, h seconds on from `here`. */
  private trialStep(h: number): void {
    const { method, contact, here, there } = this;
    contact.expect(here, method.endRates, h);
    if (!this.isRolling && !contact.lookAhead()) this.isLost = true;
    if (this.push.isOn) this.grip(h);
    else method.step(there, here, h);
  }

  /**
   * Whether a ball that has rolled slips so little that friction could end it within a step. The direction of such a slip
   * turns faster than steps can follow.
   */
  private canGrip(slip: number, step: number): boolean {
    if (!this.hasRolled) return false;
    this.canRoll();
    return slip < this.inverseEffectiveMass * this.normal * this.frictionFound * step;
  }

  /**
   * Computes `there` for a ball that slips a little: the lane pushes through the whole step as it must for the slip to end
   * with it, or where that asks for more than friction, in the same direction as hard as it can.
   * Source: the implicit step for dry friction; Moreau, Unilateral contact and dry friction in finite freedom dynamics, 1988.
   */
  private grip(h: number): void {
    const { method, contact, here, there, radius, push } = this;
    const most = contact.frictionAt(0.5);
    const perSlip = 1 / (this.inverseEffectiveMass * this.normal * h);
    let x = this.neededX - perSlip * slipX(here, radius);
    let y = this.neededY - perSlip * slipY(here, radius);
    for (let i = 0; i < MOST_GRIPS; i++) {
      const k = Math.min(1, most / Math.sqrt(x * x + y * y));
      push.x = k * x;
      push.y = k * y;
      method.step(there, here, h);
      if (slipSpeed(there, radius) < GRIPPED) break;
      x = push.x - perSlip * slipX(there, radius);
      y = push.y - perSlip * slipY(there, radius);
    }
  }

  /** Whether the slip is over, and the lane can hold the ball. */
  private slipIsOver(slip: number): boolean {
    return slip <= (this.hasRolled ? GRIPPED : NO_SLIP) && this.canRoll();
  }

  /** Whether rolling on from here asks no more of the lane than friction can give. */
  private canRoll(): boolean {
    const { probe, here } = this;
    this.frictionFound = this.frictionHere();
    this.roll(probe, here, this.frictionFound);
    this.frictionNeeded = frictionFor(probe);
    this.normal = probe[NORMAL];
    this.neededX = probe[PUSH_X] / probe[NORMAL];
    this.neededY = probe[PUSH_Y] / probe[NORMAL];
    return this.frictionNeeded <= this.frictionFound;
  }

  /** Rolling ends where the lane cannot hold the ball: slip sets in against the push that rolling wants. */
  private beginToSlip(): void {
    const { probe, here } = this;
    const k = (0.5 * NO_SLIP) / Math.hypot(probe[PUSH_X], probe[PUSH_Y]); // less than counts as slip
    here[VX] -= k * probe[PUSH_X];
    here[VY] -= k * probe[PUSH_Y];
    this.isRolling = false;
  }

  /** Longest step, s, over which a small slip keeps its size and direction well enough. */
  private cautiousStep(slip: number, step: number): number {
    const { probe, here, radius, contact } = this;
    const friction = this.frictionHere();
    this.slide(probe, here, friction);
    const rateX = slipX(probe, radius);
    const rateY = slipY(probe, radius);
    const isGrowing = slipX(here, radius) * rateX + slipY(here, radius) * rateY >= 0;
    const share = slip < DIRECTED ? SLIP_SHARE_DIRECTED : SLIP_SHARE;
    const own = (share * slip) / Math.hypot(rateX, rateY);
    const lasting = isGrowing ? Math.max(own, FINEST_WHILE_GROWING * step) : own;
    const soonest = slip / (this.slipRate * Math.max(friction, contact.dryFriction));
    return Math.min(lasting, Math.max(soonest, UNCHANGED));
  }

  private frictionHere(): number {
    this.kinematics.read(this.here);
    this.contact.meet(this.here, this.kinematics);
    return this.contact.friction();
  }

  /** Sets the velocity to that of rolling, R ω×z, which a step keeps only to its own accuracy. */
  private holdRolling(state: Float64Array): void {
    state[VX] = this.radius * state[WY];
    state[VY] = -this.radius * state[WX];
  }
}

/** Friction that holding a rolling ball takes, by the contact force that its rates carry. */
const frictionFor = (rates: Float64Array): number =>
  Math.sqrt(rates[PUSH_X] * rates[PUSH_X] + rates[PUSH_Y] * rates[PUSH_Y]) / rates[NORMAL];
