import type { Vec3 } from '../../math/vec3.js';
import type { LeanShot } from '../shot/shot.js';
import { distanceToTrack } from './track.js';

/** The oil ring that one turn lays on the ball: unit vectors in B, and where on the lane it begins (m). */
interface Ring {
  /** Counted from 1. */
  readonly turn: number;
  readonly fromY: number;
  readonly points_B: readonly Vec3[];
}

/** Points a ring is drawn with, its first one repeated at the end of the turn. */
const RING_POINTS = 73;

/** The rings of all full turns, in order. A ring need not close: the axis wanders while it is laid. */
export function ringsOnBall(shot: LeanShot): readonly Ring[] {
  const turns = Math.floor(turnsOf(shot));
  return Array.from({ length: Math.max(0, turns) }, (_, i) => {
    const from = 2 * Math.PI * i;
    return {
      turn: i + 1,
      fromY: interpolate(shot.y, locate(shot.phase, from)),
      points_B: ringFrom(shot, from, RING_POINTS),
    };
  });
}

/**
 * Least arc from any ring to the edge of a round hole's mouth, rad; negative when a ring runs over the hole.
 *
 * @param mouth_B        unit vector to the middle of the mouth
 * @param angularRadius  of the mouth, rad
 */
export const leastClearance = (shot: LeanShot, mouth_B: Vec3, angularRadius: number): number =>
  distanceToTrack(shot.contact_B, mouth_B) - angularRadius;

/** Turns of the ball from release to the last sample, a fraction included; 0 for a shot without samples. */
export const turnsOf = ({ phase }: Pick<LeanShot, 'phase'>): number =>
  (phase[phase.length - 1] ?? 0) / (2 * Math.PI);

/** Contact points at equal angles over the turn that begins at a given angle turned, rad: unit vectors in B, three numbers a point. */
export function ringTrack(
  { contact_B, phase }: LeanShot,
  fromPhase: number,
  points: number,
): Float64Array<ArrayBuffer> {
  const ring = new Float64Array(3 * points);
  for (let n = 0; n < points; n++) {
    const { index, share } = locate(phase, fromPhase + (2 * Math.PI * n) / (points - 1));
    const i = 3 * index;
    const x = contact_B[i] + share * (contact_B[i + 3] - contact_B[i]);
    const y = contact_B[i + 1] + share * (contact_B[i + 4] - contact_B[i + 1]);
    const z = contact_B[i + 2] + share * (contact_B[i + 5] - contact_B[i + 2]);
    const k = 1 / Math.sqrt(x * x + y * y + z * z);
    ring[3 * n] = k * x;
    ring[3 * n + 1] = k * y;
    ring[3 * n + 2] = k * z;
  }
  return ring;
}

/** The same, point by point. */
export function ringFrom(shot: LeanShot, fromPhase: number, points: number): readonly Vec3[] {
  const track = ringTrack(shot, fromPhase, points);
  return Array.from({ length: points }, (_, n) => [track[3 * n], track[3 * n + 1], track[3 * n + 2]]);
}

/** A place between two samples: after the sample of this index by this share of the gap. */
interface Place {
  readonly index: number;
  readonly share: number;
}

/** Where an ascending column passes a value, by bisection; the ends where it lies outside. */
function locate(column: Float64Array, value: number): Place {
  let low = 0;
  let high = column.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (column[middle] <= value) low = middle;
    else high = middle;
  }
  const gap = column[high] - column[low];
  return { index: low, share: gap > 0 ? Math.min(1, Math.max(0, (value - column[low]) / gap)) : 0 };
}

const interpolate = (column: Float64Array, { index, share }: Place): number =>
  column[index] + share * (column[index + 1] - column[index]);
