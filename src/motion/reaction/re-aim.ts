import type { Launch } from '../shot/release.js';
import type { LeanShot } from '../shot/shot.js';

/** Near enough to the target to compare layouts, m: a fiftieth of a board. */
export const ON_TARGET = 5e-4;

const MOST_SHOTS = 6;

/** Least slope, as a share of `response`, at which a change of angle still counts as moving the ball at the pins. */
const LEAST_RESPONSE = 0.05;

/** Longest step, rad: a ball near its line needs less, and farther away the response is a different one. */
const LONGEST_STEP = 0.05;

/**
 * Corrects a launch that nearly reaches `pinsX`, by the secant method; the laydown stays.
 *
 * For a ball similar to the one that the launch was found for: two or three shots instead of the search from
 * scratch in `aimAt`. Returns the last shot rolled, which is on target to `ON_TARGET`; null where none is (a
 * gutter, no arrival, an end at the pins that does not follow the angle), and a search is needed.
 *
 * @param pinsX     wanted lateral position at the pins, m
 * @param steepest  steepest launch to either side, rad
 * @param near      where to start
 * @param response  change of the position at the pins with the launch angle, m/rad, for a similar ball
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
