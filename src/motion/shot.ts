import { GRAVITY, LANE_LENGTH, LANE_WIDTH } from '../constants.js';
import { norm, scale, type Vec3, ZERO } from '../vec3.js';
import type { RollingBody } from './body.js';
import { type FreshSurface, RingMemory } from './fresh-surface.js';
import { launchState } from './launch-state.js';
import { isPlausible } from './plausible.js';
import { principalBody } from './principal-body.js';
import type { Launch, Release } from './release.js';
import { Ride } from './ride.js';
import { emptySamples, type Samples, ShotRecord } from './shot-record.js';
import { VY, WX, WY, WZ, X } from './state.js';
import type { Surface } from './surface.js';

/** How a shot is computed. What is left out is the sport's own. */
export interface ShotSettings {
  /** Step of the integrator, s; 0.002 is ample. */
  readonly step: number;
  /** How carried oil comes back to the lane; null leaves friction to the lane alone. */
  readonly freshSurface: FreshSurface | null;
  /** m/s² */
  readonly gravity?: number;
  /** Where the shot ends, m from the foul line; the last sample lands there exactly. */
  readonly length?: number;
  /** Beyond this on either side is gutter, m. */
  readonly halfWidth?: number;
  /** A ball that has not arrived after this many seconds is given up. */
  readonly longest?: number;
}

/**
 * A rolled shot. Scalars in SI, one entry per sample; the first is the release.
 *
 * `time`; `x`, `y`, `vx`, `vy` of Bo in W; `spin` (|w|); `slip` of the contact point; `phase`, the angle turned;
 * `film` on the lane and `carried` on the ball under the contact; `fresh`, the share of contact on clean cover.
 * `contact_B` and `axis_B` hold unit vectors, three numbers a sample: the contact point on the ball and the
 * wandering PAP (w/|w|; zeros while the ball does not spin).
 */
export interface Shot extends Samples {
  readonly outcome: 'pins' | 'gutter' | 'stopped' | 'invalid';
  readonly steps: number;
  /** Sample at which the ball first rolls without slip, −1 when it never does. */
  readonly rollStart: number;
  /** The PAP at the last sample, unit vector in W. */
  readonly endAxis_W: Vec3;
}

/**
 * Rolls one shot: a rigid body of any inertia, its centre of mass off its centre, from release to the pins.
 *
 * Slides under Coulomb friction, rolls once the slip has gone, and slides again when rolling would need more
 * friction than there is. The step is fixed, except that one ends exactly at each jump of friction, at the
 * end of the slip and at the pins. Left out: air, the lane's rolling resistance and the friction that slows a
 * spin about the contact point. Never throws: a shot that cannot be computed has outcome `invalid`, a ball
 * that would hop off the lane included.
 */
export function rollShot(
  body: RollingBody,
  release: Release,
  launch: Launch,
  surface: Surface,
  settings: ShotSettings,
): Shot {
  const { step, freshSurface, gravity = GRAVITY, length = LANE_LENGTH, longest = 12 } = settings;
  const { halfWidth = LANE_WIDTH / 2 } = settings;
  if (!isPlausible(body, release, launch, settings)) return nothingRolled();

  const ball = principalBody(body);
  const state = launchState(ball, release, launch);
  const expected = 64 + Math.ceil((1.3 * Math.min(longest, length / (state[VY] > 0 ? state[VY] : 1))) / step);
  const record = new ShotRecord(ball, expected);
  const rings = freshSurface && new RingMemory(freshSurface, body.radius, expected);
  const ride = new Ride(ball, surface, gravity, state, length);

  const sample = (): void => {
    record.add(ride.time, ride.state);
    const i = record.count - 1;
    record.columns.film[i] = ride.contact.filmAtStart(ride.state);
    if (!rings) {
      record.columns.fresh[i] = 1;
      return;
    }
    rings.meet(record.columns, i);
    ride.contact.carry(record.columns.carried[i]);
  };

  sample();
  const mostSteps = 2 * Math.ceil(longest / step) + MOST_EVENTS;
  let outcome: Shot['outcome'] = 'stopped';
  let rollStart = -1;
  let steps = 0;
  for (; steps < mostSteps && ride.time < longest; steps++) {
    const event = ride.advance(Math.min(step, longest - ride.time));
    if (event === 'lost') return nothingRolled();
    if (ride.time > record.columns.time[record.count - 1]) sample();
    if (event === 'rolls' && rollStart < 0) rollStart = record.count - 1;
    if (event === 'arrived') outcome = 'pins';
    else if (Math.abs(ride.state[X]) > halfWidth) outcome = 'gutter';
    else continue;
    break;
  }
  return { ...record.trimmed(), outcome, steps, rollStart, endAxis_W: axisInLane(ride.state) };
}

/** Steps allowed for ends of slip and jumps of friction, past those that fill the time. */
const MOST_EVENTS = 1000;

const axisInLane = (state: Float64Array): Vec3 => {
  const w_WP_W: Vec3 = [state[WX], state[WY], state[WZ]];
  const spin = norm(w_WP_W);
  return spin > 0 ? scale(1 / spin, w_WP_W) : ZERO;
};

const nothingRolled = (): Shot => ({
  ...emptySamples(),
  outcome: 'invalid',
  steps: 0,
  rollStart: -1,
  endAxis_W: ZERO,
});
