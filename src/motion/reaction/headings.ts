import { FOOT } from '../../base/units.js';
import { atan2 } from '../../math/atan.js';
import { tan } from '../../math/sin-cos.js';
import type { LeanShot } from '../shot/shot.js';

/** Longest distance over which a heading is averaged, m. */
const LONGEST_WINDOW = 5 * FOOT;

/**
 * Headings (rad, positive leftward) at distances down the lane (m): the first is the launch line's, the others are averaged over one turn of
 * the ball (at most 5 ft), since a drilled ball sways once a turn.
 */
export interface Headings {
  readonly places: Float64Array;
  readonly headings: Float64Array;
  /** Tangents of the headings. */
  readonly slopes: Float64Array;
}

/** The headings of a path; none for a shot without samples. */
export function headingsOf(shot: LeanShot): Headings {
  const { x, y, phase, launch } = shot;
  const end = y.length - 1;
  if (end < 0) return { places: y, headings: y, slopes: y };
  const places = new Float64Array(end + 1);
  const headings = new Float64Array(end + 1);
  const slopes = new Float64Array(end + 1);
  places[0] = y[0];
  headings[0] = -launch.angle;
  slopes[0] = -tan(launch.angle);
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
    slopes[count] = (fromX - x[i]) / (y[i] - fromY);
    count += 1;
  }
  return {
    places: places.subarray(0, count),
    headings: headings.subarray(0, count),
    slopes: slopes.subarray(0, count),
  };
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
