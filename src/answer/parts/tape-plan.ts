import { DEGREE, from, INCH, to } from '../../base/units.js';
import { placeLayout } from '../../layout/placement.js';
import { readBack } from '../../layout/read-back.js';
import { ballPoint } from '../../math/ball-point.js';
import type { Vec3 } from '../../math/vec3.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import { SIXTEENTH } from '../../prepare/tape-reading.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { TapePlan, TapeStep } from '../../records/answers/sheet-answer.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { holeName } from './face-answer.js';
import { type Pair, type PlacedMark, placeMark } from './place-mark.js';

const GRIP_CENTRE: Vec3 = [0, 0, 1];

/**
 * How to lay out a ball with a tape, and what comes of rounding every arc to a sixteenth.
 *
 * An undrilled ball has its pin and its marker. From them comes the PAP, from these the grip centre, from both
 * the point where the VAL meets the midline, and each hole of a known fit from the grip centre and one more mark, so
 * that the grip keeps its size. An angle that two arcs would miss by a degree is laid off with a protractor. The layout is
 * then read back off the marks as the rounded arcs place them,
 * each from the others as placed: errors add up as they do on a ball.
 */
export function tapePlan(numbers: LayoutNumbers, bowler: Bowler, ball: BallProblem): TapePlan {
  const { radius } = ball.published;
  const { pap_B, pin_B, marker_B } = placeLayout(toLayout(numbers, radius), ball.pap_B, ball.pinToMarker);
  const pin: PlacedMark = { name: 'pin', true_B: pin_B, placed_B: pin_B };
  const marker: PlacedMark =
    ball.marker === null ? pin : { name: ball.marker, true_B: marker_B, placed_B: marker_B };
  const steps: TapeStep[] = [];
  const place = (
    name: string,
    true_B: Vec3,
    pairs: readonly Pair[],
    isExact?: (placed_B: Vec3) => boolean,
  ): PlacedMark => {
    const { step, mark } = placeMark(name, true_B, pairs, radius, isExact);
    steps.push(bowler.hand === 'right' ? step : mirrored(step));
    return mark;
  };

  const arc = (inches: number): number => from(inches, INCH) / radius;
  const readOff = (foundPap: Vec3, gripCentre: Vec3) =>
    readBack({ pin: pin_B, marker: marker_B, pap: foundPap, gripCentre }, arc(bowler.pap.upIn));
  const pap = place('PAP', pap_B, [[pin, marker]], (placed_B) =>
    isNear(readOff(placed_B, GRIP_CENTRE).drillingAngle, numbers.drillingAngleDeg),
  );
  const gripCentre = place(
    'grip centre',
    GRIP_CENTRE,
    [
      [pap, pin],
      [pap, marker],
      [pin, marker],
    ],
    (placed_B) => isNear(readOff(pap.placed_B, placed_B).valAngle, numbers.valAngleDeg),
  );
  if (Math.abs(bowler.pap.upIn) >= SIXTEENTH)
    place('VAL on the midline', ballPoint(arc(bowler.pap.overIn), 0), [[gripCentre, pap]]);
  // where no fit is known its holes are not marked: the shop does so by the fit it measures
  for (const hole of bowler.grip ? ball.holes : [])
    place(
      hole.into ? holeName(hole) : `${hole.name} hole`,
      hole.mouth_B,
      [pap, pin, marker].map((other): Pair => [gripCentre, other]),
    );

  const found = readOff(pap.placed_B, gripCentre.placed_B);
  const drillingAngleDeg = ball.marker === null ? null : degrees(found.drillingAngle);
  const valAngleDeg = degrees(found.valAngle);
  const pinToPapIn = to(found.pinToPap * radius, INCH);
  return {
    given: ball.marker === null ? [pin.name] : [pin.name, marker.name],
    steps,
    readBack: { drillingAngleDeg, pinToPapIn, valAngleDeg },
    error: {
      drillingAngleDeg: turnLess(drillingAngleDeg, numbers.drillingAngleDeg),
      pinToPapIn: pinToPapIn - numbers.pinToPapIn,
      valAngleDeg: turnLess(valAngleDeg, numbers.valAngleDeg),
    },
  };
}

/** What an angle laid off by arcs may be wrong by; a protractor does as well, degrees. */
const NEAR_ENOUGH_DEG = 0.5;

/** Whether an angle (rad) is the wanted one; so is one that is not defined, since nothing else would define it. */
const isNear = (angle: number, wantedDeg: number): boolean =>
  !(Math.abs(turnLess(degrees(angle), wantedDeg) ?? 0) > NEAR_ENOUGH_DEG);

/** A left-hander's ball is the mirror image: what lies to the left of a way lies to the right of it. */
const mirrored = (step: TapeStep): TapeStep => ({
  ...step,
  side: step.side && (step.side === 'left' ? 'right' : 'left'),
});

/** Null where two marks coincide and no angle is there to read. */
const degrees = (angle: number): number | null => (Number.isFinite(angle) ? to(angle, DEGREE) : null);

/** Difference of two directions, within half a turn. */
const turnLess = (deg: number | null, wantedDeg: number): number | null =>
  deg === null ? null : ((((deg - wantedDeg + 180) % 360) + 360) % 360) - 180;
