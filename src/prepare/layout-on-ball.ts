import { InputError } from '../base/errors.js';
import { DEGREE, to } from '../base/units.js';
import { QUARTER_ARC, toAngles, valAngleOf } from '../layout/layout.js';
import { type Ball, USUAL_CIRCUMFERENCE_IN } from '../records/schemas/ball.js';
import type { DistanceNumbers } from '../records/text/distances-text.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { Mark, WrittenLayout } from '../records/text/written-layout.js';
import { MARK_NAMES, markOf, NO_ANGLE_DEG } from './mark-of.js';

/**
 * A layout as written, in angles on this ball.
 *
 * The drilling angle goes to the one mark whose place about the pin is known (`markOf`); a mass-bias mark lies a quarter
 * of the ball from the pin. On a ball without one any drilling angle is taken, and none is kept.
 *
 * @throws {InputError} `layout-impossible` for distances that no layout of this ball has; `other-mark` for an angle to a mark
 *   whose place is not known
 */
export function layoutOnBall(written: WrittenLayout, ball: Ball): LayoutNumbers {
  const mark = markOf(ball);
  if (mark === null) return withoutMark(written, ball);
  if (written.notation === 'angles') {
    if (written.mark !== null && written.mark !== mark) throw otherMark(written.mark, mark, ball);
    return written.numbers;
  }
  const { numbers, pinSide } = written;
  const radiusIn = radiusInOf(ball);
  const converted = toAngles(
    {
      pinToPap: numbers.pinToPapIn / radiusIn,
      markerToPap: numbers.markerToPapIn / radiusIn,
      pinBuffer: numbers.pinBufferIn / radiusIn,
      pinSide,
    },
    mark === 'cg' ? (ball.pinToCgIn as number) / radiusIn : QUARTER_ARC,
  );
  if (converted.kind === 'impossible') throw impossibleArcs(numbers, converted.why, ball);
  return {
    drillingAngleDeg: to(converted.value.drillingAngle, DEGREE),
    pinToPapIn: numbers.pinToPapIn,
    valAngleDeg: to(converted.value.valAngle, DEGREE),
  };
}

/** A layout on a ball without a mark: where the pin lies, and no drilling angle. */
function withoutMark(written: WrittenLayout, ball: Ball): LayoutNumbers {
  if (written.notation === 'angles') {
    if (written.mark === 'mass-bias') throw otherMark(written.mark, 'cg', ball);
    return { ...written.numbers, drillingAngleDeg: NO_ANGLE_DEG };
  }
  const { numbers, pinSide } = written;
  const radiusIn = radiusInOf(ball);
  const valAngle = valAngleOf(numbers.pinToPapIn / radiusIn, numbers.pinBufferIn / radiusIn, pinSide);
  if (valAngle === null) throw impossibleArcs(numbers, 'the pin buffer exceeds pin-to-PAP', ball);
  return {
    drillingAngleDeg: NO_ANGLE_DEG,
    pinToPapIn: numbers.pinToPapIn,
    valAngleDeg: to(valAngle, DEGREE),
  };
}

const radiusInOf = ({ circumferenceIn }: Ball): number =>
  (circumferenceIn ?? USUAL_CIRCUMFERENCE_IN) / (2 * Math.PI);

const impossibleArcs = (
  { pinToPapIn, markerToPapIn, pinBufferIn }: DistanceNumbers,
  why: string,
  ball: Ball,
): InputError =>
  new InputError('layout-impossible', {
    field: 'layout',
    rule: `must be arcs that go together on ${ball.name}`,
    got: `${pinToPapIn} x ${markerToPapIn} x ${pinBufferIn} in, where ${why}`,
    hint: 'Measure again, or give angles; angles below 7° need their signs: 5° x 4 1/2 x 5°.',
  });

const otherMark = (given: Mark, wanted: Mark, ball: Ball): InputError =>
  new InputError('other-mark', {
    field: 'layout: drilling angle',
    rule: `must be measured to the ${MARK_NAMES[wanted]}`,
    got: `an angle to the ${MARK_NAMES[given]}`,
    hint:
      wanted === 'cg'
        ? `${ball.name} is symmetric and has no mass-bias mark.`
        : `Where the CG of ${ball.name} lies around the pin is not published, so an angle to it says nothing of the core.`,
  });
