import type { Hole } from '../../layout/hole.js';
import { bisectBoundary } from '../../math/bisect-boundary.js';
import { nearestOfSegments, type Segment } from '../../math/segment-distance.js';
import { addScaled } from '../../math/vec3.js';
import { type BoreSolid, entryOf, lowestBallDepth } from './bore-solid.js';
import { boresOf } from './excavation.js';
import { wallAtMouth } from './wall-at-mouth.js';

/** What is left of a ball between two holes, m. */
export interface BoreWall {
  readonly one: Hole;
  readonly other: Hole;
  /** Along the surface, between the edges of what is drilled; negative: by how much the mouths overlap. */
  readonly atMouth: number;
  /** Least along both bores: never more than there is, and less by up to a radius between two bottoms. */
  readonly least: number;
  /** How deep along the first one's axis the two begin to be one space; null where they stay apart. */
  readonly meetsAt: number | null;
  /** How far the bores run into each other where they do so most; 0 where they stay apart. */
  readonly overlap: number;
}

/**
 * Walls between all holes that are to stay apart: all but a vent and its hole. Two vents into one hole stay apart until they come to
 * its wall.
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

/** A bore as far as it runs outside of others. */
const endingAt = (bore: BoreSolid, others: readonly BoreSolid[]): BoreSolid => ({
  ...bore,
  depth: Math.min(bore.depth, ...others.map((other) => Math.max(0, entryOf(other, bore.mouth, bore.d)))),
});

/**
 * The wall between two holes as they are drilled, slugs and inserts not yet in.
 *
 * Between two straight bores it is the distance of their axes less both radii. The end of a bore counts as round, which
 * holds its flat bottom or drill point; whether two meet is asked of bores that end within theirs, so that none are said to meet
 * that do not.
 *
 * @param shared  bores that both run into, where there is no ball to be left between them
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

/** What is left along the bores of two holes, at any depth; in one frame, depths along the first ones' axes. */
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

/** How deep along the axis of `a` its wall first touches that of `b`; null where it never does. */
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
  nearestOfSegments(first, second).apart - a.radius - b.radius;

/** Of four inches: to a millionth of an inch. */
const HALVINGS = 22;
