import type { Launch } from '../shot/release.js';
import type { LeanShot } from '../shot/shot.js';

/** Near enough to the target to compare layouts, m: a fiftieth of a board. */
export const ON_TARGET = 5e-4;

const MOST_SHOTS = 6;

/** Share of a straight ball's move at the pins below which a change of angle is taken to have no grip on them. */
const LEAST_RESPONSE = 0.05;

/** Longest step, rad; a ball near its line needs less, and farther out the response has changed. */
const LONGEST_STEP = 0.05;

/**
 * Corrects a launch that nearly reaches `pinsX`, by the secant method; the laydown stays.
 *
 * For a ball much like the one the launch was found for: two or three shots instead of the search that `aimAt`
 * makes from nothing. Gives the last shot rolled, which is on target to `ON_TARGET`; null when it misses (a
 * gutter, no arrival, an end at the pins that does not follow the angle): then search.
 *
 * @param pinsX     wanted lateral position at the pins, m
 * @param steepest  steepest launch to either side, rad: what needs a steeper one misses
 * @param near      where to start
 * @param response  change of the position at the pins with the launch angle, m/rad, from the ball next to this one
 * @param roll      rolls the shot from a launch
 */
export function reAim<T extends { readonly shot: LeanShot; readonly launch: Launch }>(
  pinsX: number,
  steepest: number,
  near: Launch,
  response: number,
  roll: (launch: Launch) => T,
): T | null {
  let slope = response;
  let tried = roll(near);
  let miss = missAt(tried.shot, pinsX);
  for (let shots = 1; shots < MOST_SHOTS; shots++) {
    if (Math.abs(miss) <= ON_TARGET) return tried;
    const step = miss / slope;
    if (!(Math.abs(step) <= LONGEST_STEP && slope > LEAST_RESPONSE * response)) return null; // NaN too
    const angle = tried.launch.angle - step;
    if (Math.abs(angle) > steepest) return null;
    const next = roll({ x: near.x, angle });
    const nextMiss = missAt(next.shot, pinsX);
    slope = (miss - nextMiss) / step;
    tried = next;
    miss = nextMiss;
  }
  return Math.abs(miss) <= ON_TARGET ? tried : null;
}

const missAt = ({ outcome, x }: LeanShot, pinsX: number): number =>
  outcome === 'pins' ? x[x.length - 1] - pinsX : Number.NaN;
