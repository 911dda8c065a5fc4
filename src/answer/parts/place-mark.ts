import { DEGREE, from, INCH, to } from '../../base/units.js';
import { crossingAngle, crossingOf, type Side, sideOf } from '../../math/crossing.js';
import { arcAngle, clockwiseTurn, tangentToward, walk } from '../../math/sphere.js';
import { rotateAbout, type Vec3 } from '../../math/vec3.js';
import { SIXTEENTH } from '../../prepare/tape-reading.js';
import type { TapeStep } from '../../records/answers/sheet-answer.js';

/** A mark: where it should lie, and where the tape put it; unit vectors in B. */
export interface PlacedMark {
  readonly name: string;
  readonly true_B: Vec3;
  readonly placed_B: Vec3;
}

/** Two marks that another one is found from. */
export type Pair = readonly [PlacedMark, PlacedMark];

/** Marks nearer to each other than this are one mark, in. */
const SAME_PLACE = SIXTEENTH / 2;

/** Crossing angles this near to each other count as one, so that rounding does not choose the pair, rad. */
const TIE = 1e-9;

/** Arcs that cross flatter than this are not swung: an error of either grows more than threefold, rad. */
const FLATTEST = 20 * DEGREE;

interface Placed {
  readonly step: TapeStep;
  readonly mark: PlacedMark;
}

/**
 * Finds a mark from one of several pairs of marks: by tape arcs from the pair whose arcs cross nearest to square; where
 * they all cross too flat, or rounded arcs put the mark where it is not wanted, by a protractor: at the first mark of the
 * first pair, an angle from the way to the second, and one arc.
 *
 * Arcs are those between the true places, to a sixteenth; they are swung from where the marks came to lie.
 * Where no pair serves (the pin and the CG in one place), or the mark lies on another, one arc is all there is.
 *
 * @param radius   the ball's, m
 * @param isExact  whether a mark that arcs put there is near enough
 */
export function placeMark(
  name: string,
  true_B: Vec3,
  pairs: readonly Pair[],
  radius: number,
  isExact: (placed_B: Vec3) => boolean = () => true,
): Placed {
  const inches = (arc: number): number => to(arc * radius, INCH);
  const apart = (a: Vec3, b: Vec3): boolean => inches(arcAngle(a, b)) > SAME_PLACE;
  const tape = (one: PlacedMark): number =>
    Math.round(inches(arcAngle(one.true_B, true_B)) / SIXTEENTH) * SIXTEENTH;
  const arcOf = (one: PlacedMark): number => from(tape(one), INCH) / radius;
  const placed = (
    from: readonly PlacedMark[],
    placed_B: Vec3,
    how: Partial<Pick<TapeStep, 'turn' | 'side' | 'crossingDeg'>>,
  ): Placed => ({
    step: {
      mark: name,
      arcs: from.map((one) => ({ from: one.name, inches: tape(one) })),
      turn: null,
      side: null,
      crossingDeg: null,
      ...how,
      offIn: inches(arcAngle(placed_B, true_B)),
    },
    mark: { name, true_B, placed_B },
  });

  const marks = pairs.flat();
  const same = marks.find((one) => !apart(one.true_B, true_B));
  if (same) return placed([same], same.placed_B, {});
  const usable = pairs.filter(([a, b]) => apart(a.true_B, b.true_B));
  if (usable.length === 0) return placed([marks[0]], toward(marks[0].placed_B, true_B, arcOf(marks[0])), {});

  const crossing = ([a, b]: Pair): number => crossingAngle(a.true_B, b.true_B, true_B);
  const best = usable.reduce((one, other) => (crossing(other) > crossing(one) + TIE ? other : one));
  if (crossing(best) >= FLATTEST) {
    const side = sideOf(best[0].true_B, best[1].true_B, true_B);
    const swing = (one: PlacedMark) => ({ centre_B: one.placed_B, arc: arcOf(one) });
    const crossed_B = crossingOf(swing(best[0]), swing(best[1]), side);
    if (isExact(crossed_B)) return placed(best, crossed_B, { side, crossingDeg: to(crossing(best), DEGREE) });
  }
  const [at, other] = usable[0];
  const turn = clockwiseTurn(at.true_B, other.true_B, true_B);
  const deg = Math.round(to(Math.abs(turn), DEGREE));
  const side: Side = turn > 0 ? 'right' : 'left';
  return placed([at], turned(at.placed_B, other.placed_B, Math.sign(turn) * from(deg, DEGREE), arcOf(at)), {
    turn: { from: other.name, deg },
    side: deg % 180 === 0 ? null : side,
  });
}

/** From one point in the direction of another, by an arc (rad). */
const toward = (u: Vec3, v: Vec3, arc: number): Vec3 => walk(u, tangentToward(u, v), arc);

/** From one point in the direction of another turned clockwise by an angle, by an arc (rad). */
const turned = (u: Vec3, v: Vec3, angle: number, arc: number): Vec3 =>
  walk(u, rotateAbout(tangentToward(u, v), u, -angle), arc);
