import { crossingAngle, crossingOf, type Side, sideOf } from '../layout/crossing.js';
import { arcAngle, tangentToward, walk } from '../layout/sphere.js';
import type { TapeStep } from '../records/sheet-answer.js';
import { DEGREE, from, INCH, to } from '../units.js';
import type { Vec3 } from '../vec3.js';

/** A mark: where it should lie, and where the tape put it; unit vectors in B. */
export interface Mark {
  readonly name: string;
  readonly true_B: Vec3;
  readonly placed_B: Vec3;
}

/** Two marks that arcs to another one are swung from. */
export type Pair = readonly [Mark, Mark];

/** What a tape is read to, in. */
export const SIXTEENTH = 1 / 16;

/** Marks nearer to each other than this are one mark, in. */
const SAME_PLACE = SIXTEENTH / 2;

/** Crossing angles this near to each other count as one, so that rounding does not choose the pair, rad. */
const TIE = 1e-9;

/**
 * Finds a mark by tape arcs from one of several pairs of marks: the pair whose arcs cross nearest to square.
 *
 * Arcs are those between the true places, to a sixteenth; they are swung from where the two marks came to lie.
 * Where no pair serves (the pin and the CG in one place), or the mark lies on another, one arc is all there is.
 *
 * @param radius  the ball's, m
 */
export function placeMark(
  name: string,
  true_B: Vec3,
  pairs: readonly Pair[],
  radius: number,
): { readonly step: TapeStep; readonly mark: Mark } {
  const inches = (arc: number): number => to(arc * radius, INCH);
  const apart = (a: Vec3, b: Vec3): boolean => inches(arcAngle(a, b)) > SAME_PLACE;
  const tape = (one: Mark): number =>
    Math.round(inches(arcAngle(one.true_B, true_B)) / SIXTEENTH) * SIXTEENTH;
  const arcOf = (one: Mark): number => from(tape(one), INCH) / radius;
  const placed = (from: readonly Mark[], placed_B: Vec3, side: Side | null, crossing: number | null) => ({
    step: {
      mark: name,
      arcs: from.map((one) => ({ from: one.name, inches: tape(one) })),
      side,
      crossingDeg: crossing === null ? null : to(crossing, DEGREE),
      offIn: inches(arcAngle(placed_B, true_B)),
    },
    mark: { name, true_B, placed_B },
  });

  const marks = pairs.flat();
  const same = marks.find((one) => !apart(one.true_B, true_B));
  const usable = pairs.filter(([a, b]) => apart(a.true_B, b.true_B));
  if (same || usable.length === 0) {
    const one = same ?? marks[0];
    return placed([one], same ? one.placed_B : toward(one.placed_B, true_B, arcOf(one)), null, null);
  }
  const crossing = ([a, b]: Pair): number => crossingAngle(a.true_B, b.true_B, true_B);
  const best = usable.reduce((one, other) => (crossing(other) > crossing(one) + TIE ? other : one));
  const [a, b] = best;
  const side = sideOf(a.true_B, b.true_B, true_B);
  const swing = (one: Mark) => ({ centre_B: one.placed_B, arc: arcOf(one) });
  return placed(best, crossingOf(swing(a), swing(b), side), side, crossing(best));
}

/** From one point in the direction of another, by an arc (rad). */
const toward = (u: Vec3, v: Vec3, arc: number): Vec3 => walk(u, tangentToward(u, v), arc);
