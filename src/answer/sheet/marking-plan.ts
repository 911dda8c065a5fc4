import { DEGREE, from, INCH, to } from '../../base/units.js';
import { readBack } from '../../layout/read-back.js';
import { ballPoint } from '../../math/ball-point.js';
import { arcAngle } from '../../math/sphere.js';
import type { Vec3 } from '../../math/vec3.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { MarkingPlan, MarkingStep, MarkingWay } from '../../records/answers/sheet/marking-plan.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { GRIP_CENTRE, placedOn } from '../parts/mark-answer.js';
import { type ByArcs, markWays, type Pair, type PlacedMark, type WayTo } from './mark-ways.js';
import { squareToVal, valWay } from './val-way.js';

/** Arcs that cross at less than the first are named after the protractor; at less than the second they are not swung, degrees. */
const FLAT_DEG = 30;
const FLATTEST_DEG = 15;

/** What an angle laid off by arcs may be wrong by; a protractor does as well, degrees. */
const NEAR_ENOUGH_DEG = 0.5;

const FOOT = 'VAL on the midline';

/**
 * How to lay out a ball with tape and protractor, and what comes of rounding every number to what these are read to.
 *
 * An undrilled ball has its pin and its marker. From them comes the PAP, from these the grip centre and the VAL: by arcs where they
 * cross well and put the mark where it is wanted, by the layout's own angles where they do not. The layout is then read
 * back off the marks as the first way of each step places them, each from the others as placed: errors add up as they do on a ball.
 *
 * @param tapeStepIn  smallest division to which the tape is read, in
 */
export function markingPlan(
  numbers: LayoutNumbers,
  bowler: Bowler,
  ball: BallProblem,
  tapeStepIn: number,
): MarkingPlan {
  const { radius } = ball.published;
  const ways = markWays(radius, tapeStepIn);
  const { pap_B, pin_B, marker_B } = placedOn(ball, numbers);
  const arc = (inches: number): number => from(inches, INCH) / radius;
  const [over, up] = [arc(bowler.pap.overIn), arc(bowler.pap.upIn)];
  const pin: PlacedMark = { name: 'pin', true_B: pin_B, placed_B: pin_B };
  const marker: PlacedMark =
    ball.marker === null ? pin : { name: ball.marker, true_B: marker_B, placed_B: marker_B };
  const steps: MarkingStep[] = [];
  const mark = (
    name: string,
    true_B: Vec3,
    found: readonly WayTo[],
    draw: MarkingStep['draw'],
  ): PlacedMark => {
    const fromPinIn = to(arcAngle(pin_B, true_B) * radius, INCH);
    steps.push({ mark: name, ways: found.map(({ way }) => way), draw, fromPinIn });
    return { name, true_B, placed_B: found[0].placed_B };
  };
  const readOff = (foundPap: Vec3, gripCentre: Vec3) =>
    readBack({ pin: pin_B, marker: marker_B, pap: foundPap, gripCentre }, up);

  const isOnPin = !ways.areApart(pin_B, pap_B);
  const pap = mark(
    'PAP',
    pap_B,
    inOrder(ways.byArcs(pap_B, [[pin, marker]]), ways.oneArc(pap_B, pin, marker), (placed_B) =>
      isNear(readOff(placed_B, GRIP_CENTRE).drillingAngle, numbers.drillingAngleDeg),
    ),
    isOnPin ? [] : ['pin-to-pap'],
  );
  const pairs: readonly Pair[] = [
    [pap, pin],
    [pap, marker],
    [pin, marker],
  ];
  const gripCentre = placeGripCentre(isOnPin ? marker : pin);

  const found = readOff(pap.placed_B, gripCentre.placed_B);
  const drillingAngleDeg = marker === pin ? null : degrees(found.drillingAngle);
  const valAngleDeg = degrees(found.valAngle);
  const pinToPapIn = to(found.pinToPap * radius, INCH);
  return {
    given: marker === pin ? [pin.name] : [pin.name, marker.name],
    steps: bowler.hand === 'right' ? steps : steps.map(mirrored),
    readBack: { drillingAngleDeg, pinToPapIn, valAngleDeg },
    error: {
      drillingAngleDeg: turnLess(drillingAngleDeg, numbers.drillingAngleDeg),
      pinToPapIn: pinToPapIn - numbers.pinToPapIn,
      valAngleDeg: turnLess(valAngleDeg, numbers.valAngleDeg),
    },
  };

  /** Grip centre and VAL, whichever is found better from the other. @param seenFrom  what angles at the PAP are taken from */
  function placeGripCentre(seenFrom: PlacedMark): PlacedMark {
    const hasFoot = ways.onTape(Math.abs(up)) > 0;
    const foot_B = ballPoint(over, 0);
    const arcs = ways.byArcs(GRIP_CENTRE, pairs);
    const isExact = (placed_B: Vec3): boolean =>
      isNear(readOff(pap.placed_B, placed_B).valAngle, numbers.valAngleDeg);
    const isAngleSeen = ways.areApart(pap_B, seenFrom.true_B);
    const val = isAngleSeen ? valWay(ways, pap, seenFrom, foot_B, hasFoot ? up : 0) : null;
    if (!val || (arcs && arcs.way.crossingDeg >= FLAT_DEG && isExact(arcs.placed_B))) {
      const turn = ways.oneArc(GRIP_CENTRE, pap, seenFrom);
      const grip = mark(
        'grip centre',
        GRIP_CENTRE,
        inOrder(arcs, turn, isExact),
        hasFoot ? [] : ['midline', 'val', 'centre-line'],
      );
      if (!hasFoot) return grip;
      const byArcs = ways.byArcs(foot_B, [[grip, pap]]);
      mark(
        FOOT,
        foot_B,
        [byArcs, val].filter((way) => way !== null),
        ['val', 'midline', 'centre-line'],
      );
      return grip;
    }
    const foot = mark(hasFoot ? FOOT : 'VAL', foot_B, [val], ['val']);
    const start = hasFoot ? foot : pap;
    const square = squareToVal(ways, start, val.up_B, GRIP_CENTRE, arcAngle(start.true_B, GRIP_CENTRE));
    return mark('grip centre', GRIP_CENTRE, inOrder(arcs, square, isExact), ['midline', 'centre-line']);
  }
}

/** Arcs and the other way, the better one first, arcs only where they cross well enough and put the mark where it is wanted. */
function inOrder(arcs: ByArcs | null, other: WayTo, isExact: (placed_B: Vec3) => boolean): readonly WayTo[] {
  if (!arcs || arcs.way.crossingDeg < FLATTEST_DEG || !isExact(arcs.placed_B)) return [other];
  return arcs.way.crossingDeg < FLAT_DEG ? [other, arcs] : [arcs, other];
}

/** Whether an angle (rad) is the wanted one; so is one that is not defined, since nothing else would define it. */
const isNear = (angle: number, wantedDeg: number): boolean =>
  !(Math.abs(turnLess(degrees(angle), wantedDeg) ?? 0) > NEAR_ENOUGH_DEG);

const OTHER_SIDE = { left: 'right', right: 'left' } as const;

/** A left-hander's ball is the mirror image. */
const mirrored = (step: MarkingStep): MarkingStep => ({
  ...step,
  ways: step.ways.map(
    (way): MarkingWay => ('side' in way && way.side ? { ...way, side: OTHER_SIDE[way.side] } : way),
  ),
});

/** Null where two marks coincide and no angle is there to read. */
const degrees = (angle: number): number | null => (Number.isFinite(angle) ? to(angle, DEGREE) : null);

/** Difference of two directions, within half a turn. */
const turnLess = (deg: number | null, wantedDeg: number): number | null =>
  deg === null ? null : ((((deg - wantedDeg + 180) % 360) + 360) % 360) - 180;
