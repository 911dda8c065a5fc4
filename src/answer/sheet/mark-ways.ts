import { SIXTEENTH } from '../../base/tape-reading.js';
import { DEGREE, from, INCH, to } from '../../base/units.js';
import { crossingAngle, crossingOf, type Side, sideOf } from '../../math/crossing.js';
import { arcAngle, clockwiseTurn, tangentToward, walk } from '../../math/sphere.js';
import { rotateAbout, type Vec3 } from '../../math/vec3.js';
import type { MarkingWay } from '../../records/answers/sheet/marking-plan.js';

/** A mark: where it should lie, and where the work put it; unit vectors in B. */
export interface PlacedMark {
  readonly name: string;
  readonly true_B: Vec3;
  readonly placed_B: Vec3;
}

/** Two marks that another one is found from. */
export type Pair = readonly [PlacedMark, PlacedMark];

/** A way to a mark, and where it puts it. */
export interface WayTo<Way extends MarkingWay = MarkingWay> {
  readonly way: Way;
  readonly placed_B: Vec3;
}
export type ByArcs = WayTo<Extract<MarkingWay, { kind: 'arcs' }>>;
export type ByTurn = WayTo<Extract<MarkingWay, { kind: 'turn' }>>;

/** Marks nearer to each other than this are one mark, in. */
const SAME_PLACE = SIXTEENTH / 2;

/** Crossing angles this near to each other count as one, so that rounding does not choose the pair, rad. */
const TIE = 1e-9;

/**
 * Ways to marks of a right-hander's ball: numbers from true places, applied to where the marks came to lie.
 *
 * @param radius      m
 * @param tapeStepIn  smallest division to which a tape is read, in
 */
export function markWays(radius: number, tapeStepIn: number) {
  const inches = (arc: number): number => to(arc * radius, INCH);
  const onTape = (arc: number): number => Math.round(inches(arc) / tapeStepIn) * tapeStepIn;
  const arcOf = (tapeIn: number): number => from(tapeIn, INCH) / radius;
  const areApart = (a: Vec3, b: Vec3): boolean => inches(arcAngle(a, b)) > SAME_PLACE;
  const offIn = (placed_B: Vec3, true_B: Vec3): number => inches(arcAngle(placed_B, true_B));

  /** By two tape arcs from the pair whose arcs cross nearest to square; null where no two marks serve. */
  function byArcs(true_B: Vec3, pairs: readonly Pair[]): ByArcs | null {
    const usable = pairs.filter(
      ([a, b]) => areApart(a.true_B, b.true_B) && areApart(a.true_B, true_B) && areApart(b.true_B, true_B),
    );
    if (usable.length === 0) return null;
    const crossing = ([a, b]: Pair): number => crossingAngle(a.true_B, b.true_B, true_B);
    const best = usable.reduce((one, other) => (crossing(other) > crossing(one) + TIE ? other : one));
    const [a, b] = best;
    const side = sideOf(a.true_B, b.true_B, true_B);
    const arcs = best.map((one) => ({ from: one.name, inches: onTape(arcAngle(one.true_B, true_B)) }));
    const [first, second] = best.map((one, i) => ({ centre_B: one.placed_B, arc: arcOf(arcs[i].inches) }));
    const placed_B = crossingOf(first, second, side);
    return {
      way: {
        kind: 'arcs',
        arcs,
        ...heldFor(true_B, a, b),
        crossingDeg: to(crossing(best), DEGREE),
        offIn: offIn(placed_B, true_B),
      },
      placed_B,
    };
  }

  /** By a protractor on one mark, an angle from the way to another, and one arc. */
  function byTurn(true_B: Vec3, at: PlacedMark, other: PlacedMark): ByTurn {
    const turn = clockwiseTurn(at.true_B, other.true_B, true_B);
    const deg = Math.round(to(Math.abs(turn), DEGREE));
    const tapeIn = onTape(arcAngle(at.true_B, true_B));
    const placed_B = turned(at.placed_B, other.placed_B, Math.sign(turn) * from(deg, DEGREE), arcOf(tapeIn));
    return {
      way: {
        kind: 'turn',
        at: at.name,
        from: other.name,
        deg,
        inches: tapeIn,
        way: 'on',
        ...heldFor(true_B, at, other),
        ...(deg % 180 === 0 ? { side: null } : {}),
        offIn: offIn(placed_B, true_B),
      },
      placed_B,
    };
  }

  /** By one arc from a mark, in the direction that another one shows where it shows any. */
  function oneArc(true_B: Vec3, at: PlacedMark, other: PlacedMark): WayTo {
    if (!areApart(at.true_B, true_B))
      return {
        way: { kind: 'same-point', as: at.name, offIn: offIn(at.placed_B, true_B) },
        placed_B: at.placed_B,
      };
    if (areApart(at.true_B, other.true_B)) return byTurn(true_B, at, other);
    const tapeIn = onTape(arcAngle(at.true_B, true_B));
    const placed_B = walk(at.placed_B, tangentToward(at.placed_B, true_B), arcOf(tapeIn));
    return {
      way: { kind: 'any-direction', from: at.name, inches: tapeIn, offIn: offIn(placed_B, true_B) },
      placed_B,
    };
  }

  return { byArcs, byTurn, oneArc, areApart, onTape, arcOf, offIn };
}

export type MarkWays = ReturnType<typeof markWays>;

/**
 * How to hold the ball for a mark beside the way between two others, and on which side of it the eye then sees it.
 *
 * The one nearer the fingers is held away, as in a picture with the fingers up. Walked from the mark toward you to the one away,
 * left and right are as the eye sees them.
 */
function heldFor(true_B: Vec3, one: PlacedMark, other: PlacedMark): { hold: Hold; side: Side } {
  const [away, toward] = one.true_B[1] > other.true_B[1] ? [one, other] : [other, one];
  return {
    hold: { away: away.name, toward: toward.name },
    side: sideOf(toward.true_B, away.true_B, true_B),
  };
}

type Hold = Extract<MarkingWay, { kind: 'arcs' }>['hold'];

/** From one point in the direction of another turned clockwise by an angle, by an arc (rad). */
const turned = (u: Vec3, v: Vec3, angle: number, arc: number): Vec3 =>
  walk(u, rotateAbout(tangentToward(u, v), u, -angle), arc);
