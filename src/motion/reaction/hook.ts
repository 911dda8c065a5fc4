import { DEGREE, FOOT } from '../../base/units.js';
import { peak } from '../../math/peak.js';
import { tan } from '../../math/sin-cos.js';
import type { LeanShot } from '../shot/shot.js';
import { type Headings, headingsOf } from './headings.js';

/** Tangent of the least turn from the launch line: slighter turns make no corner, and count as this. */
export const LEAST_TURN = tan(DEGREE);

/** Distance over which the sharpness of a hook is taken, m. */
export const SHARP_OVER = 10 * FOOT;

/** How a path bends. */
export interface Hook {
  /**
   * The mean place of all bending, m: the corner of the path, where the launch line meets the line through its end on which the ball
   * rolls on, so that what a ball that still slides would bend past the pins counts as done there. The path's end when it does not hook.
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
 * that of the centre of mass, and past the pins the ball goes on square to its angular momentum (`rollHeading`). The hook starts where it
 * would start if all of it happened at one point, which is the mean place of all bending; its sharpness is taken over ten feet of lane.
 * Both change little when the shot does: a path often bends most at two places, and a number that depends on which of them bends more
 * would jump from one to the other.
 */
export function hookOf(shot: LeanShot, { places, headings }: Headings = headingsOf(shot)): Hook {
  const { x, y, launch, rollHeading } = shot;
  const end = y.length - 1;
  if (end < 0) return { start: 0, total: 0, sharpness: 0, entryAngle: 0 };
  const slope = tan(launch.angle);
  const total = launch.x + y[end] * slope - x[end];
  const entryAngle = headings[headings.length - 1];
  return {
    start: cornerOf(y[end], total, tan(rollHeading) + slope),
    total,
    sharpness: sharpnessOf(places, headings),
    entryAngle,
  };
}

/**
 * Distance at which two lines meet that are `hook` apart at `end`; kept between 0 and `end`.
 *
 * @param turn  tangent of the angle between them; if it includes turning that is still to come, the result is the mean place of all
 *   turning, as if the rest happened at `end`
 */
export const cornerOf = (end: number, hook: number, turn: number): number =>
  Math.min(end, Math.max(0, end - hook / Math.max(turn, LEAST_TURN)));

/** Greatest change of heading per distance over a stretch of `SHARP_OVER`, or over all of a shorter path. */
function sharpnessOf(places: Float64Array, headings: Float64Array): number {
  const end = places.length - 1;
  const all = places[end] - places[0];
  if (!(all > SHARP_OVER)) return all > 0 ? Math.max(0, (headings[end] - headings[0]) / all) : 0;
  const bends = new Float64Array(end);
  let count = 0;
  let behind = 0;
  for (let i = 1; i <= end; i++) {
    const from = places[i] - SHARP_OVER;
    if (from < places[0]) continue;
    while (places[behind + 1] <= from) behind += 1;
    const share = (from - places[behind]) / (places[behind + 1] - places[behind]);
    const before = headings[behind] + share * (headings[behind + 1] - headings[behind]);
    bends[count] = (headings[i] - before) / SHARP_OVER;
    count += 1;
  }
  return Math.max(0, peak(bends.subarray(0, count)));
}
