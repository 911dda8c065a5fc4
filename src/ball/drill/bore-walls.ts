import type { Hole } from '../../layout/hole.js';
import { bisectBoundary } from '../../math/bisect-boundary.js';
import { type Segment, segmentDistance } from '../../math/segment-distance.js';
import { addScaled } from '../../math/vec3.js';
import { type BoreSolid, entryOf, lowestBallDepth } from './bore-solid.js';
import { boresOf } from './excavation.js';
import { wallAtMouth } from './wall-at-mouth.js';

/** What is left of a ball between two holes, m. */
export interface BoreWall {
  readonly one: Hole;
  readonly other: Hole;
  /** Thickness along the surface, between the edges of the mouths; negative where the mouths overlap, by how much. */
  readonly atMouth: number;
  /** Least thickness along both bores. It may be too small by up to a radius between two bottoms, and is never too large. */
  readonly least: number;
  /** Depth along the first one's axis at which the two become one space; null where they stay apart. */
  readonly meetsAt: number | null;
  /** Greatest overlap of the two bores; 0 where they stay apart. */
  readonly overlap: number;
}

/**
 * Walls between all pairs of holes that must stay apart: all but a vent and its hole. Two vents into one hole must stay apart until they
 * reach it.
 *
 * @param radius  the ball's, m
 */
export const boreWalls = (holes: readonly Hole[], radius: number): readonly BoreWall[] =>
  holes.flatMap((one, i) =>
    holes
      .slice(i + 1)
      .filter((other) => other.into !== one.name && one.into !== other.name)
      .map((other) => wallBetween(one, other, radius, sharedBores(one, other, holes, radius))),
  );

/** The bores of the hole that two vents lead into; none where they do not share one. */
const sharedBores = (one: Hole, other: Hole, holes: readonly Hole[], radius: number): readonly BoreSolid[] =>
  one.into !== undefined && one.into === other.into
    ? holes.filter(({ name }) => name === one.into).flatMap((hole) => boresOf(hole, radius))
    : [];

/** A bore, cut short where it enters others. */
const endingAt = (bore: BoreSolid, others: readonly BoreSolid[]): BoreSolid => ({
  ...bore,
  depth: Math.min(bore.depth, ...others.map((other) => Math.max(0, entryOf(other, bore.mouth, bore.d)))),
});

/**
 * The wall between two holes as drilled, before slugs and inserts go in.
 *
 * Between two straight bores it is the distance of their axes less both radii. For the thickness, a bore ends in a hemisphere that
 * contains its flat bottom or drill point; whether two bores meet is decided with hemispheres inside the bores, so that bores that stay
 * apart are never reported to meet.
 *
 * @param shared  bores that both holes run into, inside which no wall is needed
 */
export function wallBetween(
  one: Hole,
  other: Hole,
  radius: number,
  shared: readonly BoreSolid[] = [],
): BoreWall {
  const outside = (hole: Hole): BoreSolid[] => boresOf(hole, radius).map((bore) => endingAt(bore, shared));
  return {
    one,
    other,
    atMouth: wallAtMouth(one, other, radius),
    ...wallBelow(outside(one), outside(other)),
  };
}

/** Walls along the bores of two holes, at any depth. All in one frame; depths are along the first ones' axes. */
export function wallBelow(
  ones: readonly BoreSolid[],
  others: readonly BoreSolid[],
): Pick<BoreWall, 'least' | 'meetsAt' | 'overlap'> {
  const pairs = ones.flatMap((a) => others.map((b) => [a, b] as const));
  const meetings = pairs.map(([a, b]) => meetingDepth(a, b)).filter((depth) => depth !== null);
  return {
    least: Math.min(...pairs.map(([a, b]) => apart(axisOf(a, a.depth), axisOf(b, b.depth), a, b))),
    meetsAt: meetings.length > 0 ? Math.min(...meetings) : null,
    overlap: Math.max(0, ...pairs.map(([a, b]) => -apart(innerAxis(a), innerAxis(b), a, b))),
  };
}

/** Depth along the axis of `a` at which its wall first touches that of `b`, m; null where it never does. */
function meetingDepth(a: BoreSolid, b: BoreSolid): number | null {
  const beside = innerAxis(b);
  if (apart(innerAxis(a), beside, a, b) >= 0) return null;
  const isApart = (depth: number): boolean =>
    apart({ from: a.mouth, to: addScaled(a.mouth, depth, a.d) }, beside, a, b) > 0;
  return isApart(0) ? bisectBoundary(isApart, 0, lowestBallDepth(a), HALVINGS) : 0;
}

const innerAxis = (bore: BoreSolid): Segment => axisOf(bore, lowestBallDepth(bore));

const axisOf = ({ mouth, d }: BoreSolid, depth: number): Segment => ({
  from: mouth,
  to: addScaled(mouth, depth, d),
});

const apart = (first: Segment, second: Segment, a: BoreSolid, b: BoreSolid): number =>
  segmentDistance(first, second) - a.radius - b.radius;

/** Halvings that find a depth of up to four inches to a millionth of an inch. */
const HALVINGS = 22;
