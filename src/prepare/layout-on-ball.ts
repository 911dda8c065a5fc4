import { DEGREE, to } from '../base/units.js';
import { type ArcsClash, bufferTooLong, QUARTER_ARC, toAngles, valAngleOf } from '../layout/layout.js';
import { Refusal } from '../records/refusals/refusal.js';
import { type Ball, USUAL_CIRCUMFERENCE_IN } from '../records/schemas/ball.js';
import type { DrilledLayout } from '../records/schemas/drilled-layout.js';
import type { DistanceNumbers } from '../records/text/distances-text.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import {
  type BufferNumbers,
  type Mark,
  readLayout,
  type WrittenLayout,
} from '../records/text/written-layout.js';
import { clashInDegrees } from './clash-in-degrees.js';
import { markOf, NO_ANGLE_DEG } from './mark-of.js';

/**
 * A layout as written, in angles on this ball.
 *
 * The drilling angle is measured to the one mark whose place about the pin is known (`markOf`); a mass-bias mark lies a quarter
 * of the ball from the pin. On a ball without such a mark any drilling angle is accepted, and none is kept.
 *
 * @throws {Refusal} `arcs-clash` for distances that no layout of this ball has; `other-mark` for an angle to a mark
 *   whose place is not known
 */
export function layoutOnBall(written: WrittenLayout, ball: Ball): LayoutNumbers {
  const mark = markOf(ball);
  if (mark === null) return withoutMark(written, ball);
  if (written.notation !== 'distances') {
    if (written.mark !== null && written.mark !== mark) throw otherMark(written.mark, mark, ball);
    if (written.notation === 'angles') return written.numbers;
    const { drillingAngleDeg, pinToPapIn } = written.numbers;
    return { drillingAngleDeg, pinToPapIn, valAngleDeg: valAngleDegOf(written, ball) };
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
  if (converted.kind === 'impossible') throw impossibleArcs(numbers, converted.clash, ball);
  return {
    drillingAngleDeg: to(converted.value.drillingAngle, DEGREE),
    pinToPapIn: numbers.pinToPapIn,
    valAngleDeg: to(converted.value.valAngle, DEGREE),
  };
}

/** The layout that a record holds as text; null for one that this ball cannot have. */
export function keptLayoutOn({ layout }: Pick<DrilledLayout, 'layout'>, ball: Ball): LayoutNumbers | null {
  try {
    return layoutOnBall(readLayout(layout), ball);
  } catch (error) {
    if (error instanceof Refusal) return null;
    throw error;
  }
}

/** A layout on a ball without a mark: where the pin lies, and no drilling angle. */
function withoutMark(written: WrittenLayout, ball: Ball): LayoutNumbers {
  if (written.notation !== 'distances' && written.mark === 'mass-bias')
    throw otherMark(written.mark, 'cg', ball);
  const { pinToPapIn } = written.numbers;
  const valAngleDeg =
    written.notation === 'angles' ? written.numbers.valAngleDeg : valAngleDegOf(written, ball);
  return { drillingAngleDeg: NO_ANGLE_DEG, pinToPapIn, valAngleDeg };
}

/** The VAL angle that a pin buffer amounts to on this ball, degrees. */
function valAngleDegOf(
  { numbers, pinSide }: Exclude<WrittenLayout, { readonly notation: 'angles' }>,
  ball: Ball,
): number {
  const radiusIn = radiusInOf(ball);
  const pinToPap = numbers.pinToPapIn / radiusIn;
  const pinBuffer = numbers.pinBufferIn / radiusIn;
  const valAngle = valAngleOf(pinToPap, pinBuffer, pinSide);
  if (valAngle === null) throw impossibleArcs(numbers, bufferTooLong({ pinToPap, pinBuffer }), ball);
  return to(valAngle, DEGREE);
}

const radiusInOf = ({ circumferenceIn }: Ball): number =>
  (circumferenceIn ?? USUAL_CIRCUMFERENCE_IN) / (2 * Math.PI);

const impossibleArcs = (
  { pinToPapIn, pinBufferIn, ...others }: DistanceNumbers | BufferNumbers,
  clash: ArcsClash,
  { name }: Ball,
): Refusal =>
  new Refusal([
    {
      code: 'arcs-clash',
      params: {
        ball: name,
        pinToPapIn,
        markerToPapIn: 'markerToPapIn' in others ? others.markerToPapIn : null,
        pinBufferIn,
        clash: clashInDegrees(clash),
      },
    },
  ]);

const otherMark = (given: Mark, wanted: Mark, { name }: Ball): Refusal =>
  new Refusal([{ code: 'other-mark', params: { ball: name, given, wanted } }]);
