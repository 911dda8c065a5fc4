import { DEGREE, FOOT } from '../../base/units.js';
import { atan2 } from '../../math/atan.js';
import { peak } from '../../math/peak.js';
import { tan } from '../../math/sin-cos.js';
import type { LeanShot } from '../shot/shot.js';

/** Tangent of the least turn from the launch line: slighter turns make no corner, and count as this. */
export const LEAST_TURN = tan(DEGREE);

/** Distance over which the sharpness of a hook is taken, m. */
export const SHARP_OVER = 10 * FOOT;

/** Longest distance over which a heading is averaged, m. */
const LONGEST_WINDOW = 5 * FOOT;

/** How a path bends. */
export interface Hook {
  /**
   * The mean place of all bending, m: the corner of the path, where the launch line meets the line into the pins, with what a
   * ball that still slides would bend past them counted as done there. The path's end when it does not hook.
   */
  readonly start: number;
  /** Distance from the launch line, extended to the end of the path, to the ball there, m, positive leftward. */
  readonly total: number;
  /** Greatest change of heading per distance over any ten feet of lane, rad/m, positive leftward; at least 0. */
  readonly sharpness: number;
  /** Heading over the last turn, rad, positive leftward. */
  readonly entryAngle: number;
}

/**
 * The hook of a path: where it starts, how much and how sharp it gets, and where it leads.
 *
 * Headings are averaged over one turn of the ball (at most 5 ft): a drilled ball sways once a turn, since its centre of mass
 * lies off its centre, and rolls over its own bow tie twice; neither is hook. For the same reason the launch line is
 * that of the centre of mass. The hook starts where it would start if all of it happened at one point, which is the mean place of all
 * bending; its sharpness is taken over ten feet of lane. Both change little when the shot does: a path often bends most at two places,
 * and a number that depends on which of them bends more would jump from one to the other.
 */
export function hookOf(shot: LeanShot): Hook {
  const { x, y, launch } = shot;
  const end = y.length - 1;
  if (end < 0) return { start: 0, total: 0, sharpness: 0, entryAngle: 0 };
  const { places, headings } = headingsOf(shot);
  const slope = tan(launch.angle);
  const total = launch.x + y[end] * slope - x[end];
  const entryAngle = headings[headings.length - 1];
  const turn = Math.max(tan(entryAngle), tan(lastHeading(shot, entryAngle))) + slope;
  return {
    start: cornerOf(y[end], total, turn),
    total,
    sharpness: sharpnessOf(places, headings),
    entryAngle,
  };
}

/**
 * The heading with which the ball goes on, rad: its mean over the last turn, or over as much of that as the ball has rolled; while it still
 * slides, the heading it will roll with. These agree for a ball that begins to roll at the end of its path, so hook start does not jump there.
 */
function lastHeading({ x, y, phase, rollStart, rollHeading }: LeanShot, entryAngle: number): number {
  const end = y.length - 1;
  if (rollStart < 0 || rollStart === end) return rollHeading;
  if (isOutside(phase, y, rollStart, end)) return entryAngle;
  return atan2(x[rollStart] - x[end], y[end] - y[rollStart]);
}

/**
 * Distance at which two lines meet that are `hook` apart at `end`; kept between 0 and `end`.
 *
 * @param turn  tangent of the angle between them; if it includes turning that is still to come, the result is the mean place of all
 *   turning, as if the rest happened at `end`
 */
export const cornerOf = (end: number, hook: number, turn: number): number =>
  Math.min(end, Math.max(0, end - hook / Math.max(turn, LEAST_TURN)));

/** Headings (rad, positive leftward) at distances down the lane (m): the first is the launch line's, the others are over a turn. */
interface Headings {
  readonly places: Float64Array;
  readonly headings: Float64Array;
}

function headingsOf(shot: LeanShot): Headings {
  const { x, y, phase, launch } = shot;
  const end = y.length - 1;
  const places = new Float64Array(end + 1);
  const headings = new Float64Array(end + 1);
  places[0] = y[0];
  headings[0] = -launch.angle;
  let count = 1;
  let behind = 0;
  for (let i = 1; i <= end; i++) {
    while (isOutside(phase, y, behind + 1, i)) behind += 1;
    const isFull = isOutside(phase, y, behind, i);
    if (!isFull && i < end) continue; // less than a window from the release; a path shorter than a window is one window
    const share = isFull ? windowShare(shot, behind, i) : 0;
    const fromX = x[behind] + share * (x[behind + 1] - x[behind]);
    const fromY = y[behind] + share * (y[behind + 1] - y[behind]);
    places[count] = (fromY + y[i]) / 2;
    headings[count] = atan2(fromX - x[i], y[i] - fromY);
    count += 1;
  }
  return { places: places.subarray(0, count), headings: headings.subarray(0, count) };
}

/** Greatest change of heading per distance over a stretch of `SHARP_OVER`, or over all of a shorter path. */
function sharpnessOf(places: Float64Array, headings: Float64Array): number {
  const end = places.length - 1;
  const all = places[end] - places[0];
  if (!(all > SHARP_OVER)) return all > 0 ? Math.max(0, (headings[end] - headings[0]) / all) : 0;
  const bends: number[] = [];
  let behind = 0;
  for (let i = 1; i <= end; i++) {
    const from = places[i] - SHARP_OVER;
    if (from < places[0]) continue;
    while (places[behind + 1] <= from) behind += 1;
    const share = (from - places[behind]) / (places[behind + 1] - places[behind]);
    const before = headings[behind] + share * (headings[behind + 1] - headings[behind]);
    bends.push((headings[i] - before) / SHARP_OVER);
  }
  return Math.max(0, peak(bends));
}

/** Whether a sample lies a window or more before the one at which the window ends. */
const isOutside = (phase: Float64Array, y: Float64Array, i: number, end: number): boolean =>
  phase[end] - phase[i] >= 2 * Math.PI || y[end] - y[i] >= LONGEST_WINDOW;

/** Where the window begins between a sample outside it and the next, inside it: share of the gap. */
function windowShare({ phase, y }: LeanShot, behind: number, end: number): number {
  const turned = phase[behind + 1] - phase[behind];
  const byPhase = turned > 0 ? (phase[end] - 2 * Math.PI - phase[behind]) / turned : 0;
  const byDistance = (y[end] - LONGEST_WINDOW - y[behind]) / (y[behind + 1] - y[behind]);
  return Math.min(1, Math.max(0, byPhase, byDistance)); // the window that begins later, which is the shorter one
}
