import { FOOT } from '../units.js';
import type { Shot } from './shot.js';

/** Share of the greatest sharpness at which the hook is said to start. */
const STARTED = 0.5;

/** A bend too slight to speak of a hook, rad/m. */
const NO_HOOK = 1e-9;

/** Longest distance over which a heading is averaged, m. */
const LONGEST_WINDOW = 5 * FOOT;

/** Where and how sharply a path bends. */
export interface Hook {
  /** Before the sharpest place, the last with half its sharpness, m; the path's end when nothing bends. */
  readonly start: number;
  /** Greatest change of heading per distance down the lane, averaged over a turn, rad/m, positive leftward. */
  readonly sharpness: number;
}

/**
 * The hook of a path: how sharp it gets, and where it starts.
 *
 * The change of heading is taken over one turn of the ball (at most 5 ft): a drilled ball sways once a turn,
 * since its centre of mass lies off its centre, and rolls over its own bow tie twice; neither is the hook.
 * Values lie between samples, so they change smoothly with the shot.
 */
export function hookOf(shot: Shot): Hook {
  const { y } = shot;
  const end = y.length - 1;
  const headings = y.map((_, i) => headingAt(shot, i));
  const bends = new Float64Array(end + 1);
  const middles = new Float64Array(end + 1);
  let behind = 0;
  let top = -1;
  for (let i = 1; i <= end; i++) {
    while (isOutside(shot, behind + 1, i)) behind += 1;
    if (!isOutside(shot, behind, i)) continue; // less than a window from the release
    const share = windowShare(shot, behind, i);
    const from = y[behind] + share * (y[behind + 1] - y[behind]);
    const before = headings[behind] + share * (headings[behind + 1] - headings[behind]);
    bends[i] = (headings[i] - before) / (y[i] - from);
    middles[i] = (y[i] + from) / 2;
    if (top < 0 || bends[i] > bends[top]) top = i;
  }
  if (top < 0 || !(bends[top] > NO_HOOK)) return { start: y[end] ?? 0, sharpness: 0 };
  const sharpness = parabolaTop(bends[top - 1] || bends[top], bends[top], bends[top + 1] ?? bends[top]);
  return { start: lastBelow(STARTED * sharpness, bends, middles, top), sharpness };
}

/** Heading at the pins, averaged over the last turn (at most 5 ft), rad, positive leftward. */
export function entryAngle(shot: Shot): number {
  const { x, y } = shot;
  const end = y.length - 1;
  let behind = end - 1;
  while (behind > 0 && !isOutside(shot, behind, end)) behind -= 1;
  if (behind < 0) return 0;
  const share = isOutside(shot, behind, end) ? windowShare(shot, behind, end) : 0;
  const from = (column: Float64Array): number =>
    column[behind] + share * (column[behind + 1] - column[behind]);
  return Math.atan2(from(x) - x[end], y[end] - from(y));
}

/** Heading, rad, positive toward the left. */
const headingAt = ({ vx, vy }: Shot, i: number): number => Math.atan2(-vx[i], vy[i]);

/** Whether a sample lies a window or more before the one at which the window ends. */
const isOutside = ({ phase, y }: Shot, i: number, end: number): boolean =>
  phase[end] - phase[i] >= 2 * Math.PI || y[end] - y[i] >= LONGEST_WINDOW;

/** Where between a sample outside the window and the next, inside it, the window begins: share of the gap. */
function windowShare({ phase, y }: Shot, behind: number, end: number): number {
  const turned = phase[behind + 1] - phase[behind];
  const byPhase = turned > 0 ? (phase[end] - 2 * Math.PI - phase[behind]) / turned : 0;
  const byDistance = (y[end] - LONGEST_WINDOW - y[behind]) / (y[behind + 1] - y[behind]);
  return Math.min(1, Math.max(0, byPhase, byDistance)); // whichever window begins later, the shorter one
}

/** Going back from the top, the place where the bend first falls to a level; where windows begin if it never does. */
function lastBelow(level: number, bends: Float64Array, middles: Float64Array, top: number): number {
  for (let i = top; i > 0 && middles[i - 1] > 0; i--) {
    if (bends[i - 1] >= level) continue;
    const share = (level - bends[i - 1]) / (bends[i] - bends[i - 1]);
    return middles[i - 1] + share * (middles[i] - middles[i - 1]);
  }
  return middles.find((y) => y > 0) ?? 0;
}

/** Top of the parabola through three values at equal steps when the middle one is the greatest, else the middle one. */
function parabolaTop(a: number, b: number, c: number): number {
  const bend = a - 2 * b + c;
  return b >= a && b >= c && bend < 0 ? b - (c - a) ** 2 / (8 * bend) : b;
}
