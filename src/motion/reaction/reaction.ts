import { LANE_LENGTH } from '../../base/constants.js';
import { atan2 } from '../../math/atan.js';
import { hypot } from '../../math/hypot.js';
import type { LeanShot } from '../shot/shot.js';
import { breakpointOf } from './breakpoint.js';
import { flareOf } from './flare.js';
import { headingsOf } from './headings.js';
import { hookOf } from './hook.js';
import { turnsOf } from './rings.js';

/** What a shot does, in SI: distances from the foul line, angles positive toward the bowler's off side (left). */
export interface Reaction {
  /** The mean place of all bending: the corner of the path; see `hookOf`. */
  readonly hookStart: number;
  /** Where the slip first ends; the lane's length when it does not. */
  readonly rollStart: number;
  readonly rollsBeforePins: boolean;
  /** Greatest change of heading per distance over any ten feet of lane, rad/m. */
  readonly sharpness: number;
  /** The outermost point toward the ball's own gutter; its distance without the sway once a turn. */
  readonly breakpointY: number;
  readonly breakpointX: number;
  /** Distance from the launch line, extended to the pins, to the ball there, m. */
  readonly totalHook: number;
  /** Heading at the pins, averaged over the last turn. */
  readonly entryAngle: number;
  readonly pinsX: number;
  /** First full oil ring to the last laid in oil, along the surface at the widest place, m. */
  readonly flare: number;
  readonly turns: number;
  readonly speedAtPins: number;
  readonly spinAtPins: number;
  /** Elevation of the axis over the lane, and its turn from the foul line's direction, as at release, rad. */
  readonly tiltAtPins: number;
  readonly rotationAtPins: number;
}

/**
 * The reaction numbers of a shot. All are interpolated between samples, so they change smoothly with the
 * inputs. A ball that never gets to the pins is described as far as it came; a shot with outcome `invalid`
 * has no path and gives NaN throughout.
 *
 * @param radius  the ball's, m
 */
export function reactionNumbers(shot: LeanShot, radius: number): Reaction {
  const end = shot.time.length - 1;
  if (end < 0) return NOTHING;
  const { x, y, vx, vy, spin, rollStart, endAxis_W } = shot;
  const headings = headingsOf(shot);
  const breakpoint = breakpointOf(shot, headings);
  const hook = hookOf(shot, headings);
  return {
    hookStart: hook.start,
    rollStart: rollStart < 0 ? LANE_LENGTH : y[rollStart],
    rollsBeforePins: rollStart >= 0,
    sharpness: hook.sharpness,
    breakpointX: breakpoint.x,
    breakpointY: breakpoint.y,
    totalHook: hook.total,
    entryAngle: hook.entryAngle,
    pinsX: x[end],
    flare: flareOf(shot, radius),
    turns: turnsOf(shot),
    speedAtPins: hypot(vx[end], vy[end]),
    spinAtPins: spin[end],
    tiltAtPins: atan2(endAxis_W[2], hypot(endAxis_W[0], endAxis_W[1])),
    rotationAtPins: atan2(-endAxis_W[1], -endAxis_W[0]),
  };
}

/** The mean of two shots, number by number. */
export function meanReaction(a: Reaction, b: Reaction): Reaction {
  const mean = (name: NumberOf<Reaction>): number => (a[name] + b[name]) / 2;
  const numbers = Object.fromEntries(NUMBERS.map((name) => [name, mean(name)])) as Record<
    NumberOf<Reaction>,
    number
  >;
  return { ...numbers, rollsBeforePins: a.rollsBeforePins && b.rollsBeforePins };
}

type NumberOf<T> = { [K in keyof T]: T[K] extends number ? K : never }[keyof T];

const NOTHING: Reaction = {
  hookStart: Number.NaN,
  rollStart: Number.NaN,
  rollsBeforePins: false,
  sharpness: Number.NaN,
  breakpointX: Number.NaN,
  breakpointY: Number.NaN,
  totalHook: Number.NaN,
  entryAngle: Number.NaN,
  pinsX: Number.NaN,
  flare: Number.NaN,
  turns: Number.NaN,
  speedAtPins: Number.NaN,
  spinAtPins: Number.NaN,
  tiltAtPins: Number.NaN,
  rotationAtPins: Number.NaN,
};

const NUMBERS = Object.keys(NOTHING).filter((name) => name !== 'rollsBeforePins') as NumberOf<Reaction>[];
