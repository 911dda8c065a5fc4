import type { Vec3 } from '../../math/vec3.js';
import type { LeanShot } from '../shot/shot.js';
import { distanceToTrack } from './track.js';

/** The oil ring that one turn lays on the ball: unit vectors in B, and where on the lane it begins (m). */
export interface Ring {
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

/** Turns of the ball from release to the last sample, not whole; 0 for a shot without samples. */
export const turnsOf = ({ phase }: Pick<LeanShot, 'phase'>): number =>
  (phase[phase.length - 1] ?? 0) / (2 * Math.PI);

/** Contact points over one turn from a given angle turned on, at equal angles, unit vectors in B. */
export function ringFrom(shot: LeanShot, fromPhase: number, points: number): readonly Vec3[] {
  return Array.from({ length: points }, (_, k) =>
    contactAt(shot, fromPhase + (2 * Math.PI * k) / (points - 1)),
  );
}

function contactAt({ contact_B, phase }: LeanShot, at: number): Vec3 {
  const { index, share } = locate(phase, at);
  const part = (j: number): number =>
    contact_B[3 * index + j] + share * (contact_B[3 * index + 3 + j] - contact_B[3 * index + j]);
  const [x, y, z] = [part(0), part(1), part(2)];
  const k = 1 / Math.sqrt(x * x + y * y + z * z);
  return [k * x, k * y, k * z];
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
  share > 0 ? column[index] + share * (column[index + 1] - column[index]) : column[index];
