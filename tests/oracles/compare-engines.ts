import { LANE_LENGTH } from '../../src/base/constants.js';
import { arcAngle } from '../../src/math/sphere.js';
import { rollShot } from '../../src/motion/shot/shot.js';
import { zonedLane } from '../support/dry-lanes.js';
import type { Scene } from '../support/scenes.js';
import type { Arrival } from './second-engine.js';

const STEP = 0.0005; // s; ours, far finer than it needs

/** What `rollShot` makes of a scene, and how far its path was bent: launch line less board reached, m. */
export function rollOurs({ name, body, release, launch, zones }: Scene): Arrival & { readonly hook: number } {
  const shot = rollShot(body, release, launch, zonedLane(zones), {
    step: STEP,
    freshSurface: null,
    halfWidth: Number.POSITIVE_INFINITY,
  });
  if (shot.outcome !== 'pins') throw new Error(`our ball did not arrive: ${name}`);
  const { x, vx, vy, spin, time, axis_B } = shot;
  const i = x.length - 1;
  return {
    x: x[i],
    time: time[i],
    heading: Math.atan2(-vx[i], vy[i]),
    speed: Math.hypot(vx[i], vy[i]),
    spin: spin[i],
    axis_B: [axis_B[3 * i], axis_B[3 * i + 1], axis_B[3 * i + 2]],
    hook: launch.x + LANE_LENGTH * Math.tan(launch.angle) - x[i],
  };
}

/** By how much one arrival differs from another: m, rad, parts of one. */
export interface Difference {
  readonly x: number;
  readonly heading: number;
  readonly speed: number;
  readonly spin: number;
  /** Angle between the spin axes in the ball, after all its turns. */
  readonly axis: number;
}

export const difference = (theirs: Arrival, ours: Arrival): Difference => ({
  x: theirs.x - ours.x,
  heading: theirs.heading - ours.heading,
  speed: theirs.speed / ours.speed - 1,
  spin: theirs.spin / ours.spin - 1,
  axis: arcAngle(theirs.axis_B, ours.axis_B),
});
