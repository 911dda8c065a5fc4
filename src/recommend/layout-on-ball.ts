import { InputError } from '../errors.js';
import { QUARTER_ARC, toAngles } from '../layout/layout.js';
import { type Ball, hasOwnCore, USUAL_CIRCUMFERENCE_IN } from '../records/ball.js';
import type { LayoutNumbers } from '../records/layout-text.js';
import type { Mark, WrittenLayout } from '../records/written-layout.js';
import { DEGREE, to } from '../units.js';
import { familiesOf } from './published-numbers.js';

/**
 * A layout as written, in angles on this ball.
 *
 * The drilling angle goes to the one mark whose place about the pin is known: the mass-bias mark of an asymmetric ball, a
 * quarter of the ball from the pin, else the CG mark. Around an own core the marker takes the mass-bias mark's place.
 *
 * @throws {InputError} `layout-impossible` for distances that no layout of this ball has; `other-mark` for an angle to a mark
 *   whose place is not known
 */
export function layoutOnBall(written: WrittenLayout, ball: Ball): LayoutNumbers {
  const mark: Mark = hasOwnCore(ball) || familiesOf(ball)[0] === 'asymmetric' ? 'mass-bias' : 'cg';
  if (written.notation === 'angles') {
    if (written.mark !== null && written.mark !== mark) throw otherMark(written.mark, mark, ball);
    return written.numbers;
  }
  const { numbers, pinSide } = written;
  const radiusIn = (ball.circumferenceIn ?? USUAL_CIRCUMFERENCE_IN) / (2 * Math.PI);
  const converted = toAngles(
    {
      pinToPap: numbers.pinToPapIn / radiusIn,
      markerToPap: numbers.markerToPapIn / radiusIn,
      pinBuffer: numbers.pinBufferIn / radiusIn,
      pinSide,
    },
    mark === 'cg' ? (ball.pinToCgIn as number) / radiusIn : QUARTER_ARC,
  );
  if (converted.kind === 'impossible')
    throw new InputError('layout-impossible', {
      field: 'layout',
      rule: `must be arcs that go together on ${ball.name}`,
      got: `${numbers.pinToPapIn} x ${numbers.markerToPapIn} x ${numbers.pinBufferIn} in, where ${converted.why}`,
      hint: 'Measure again, or give angles; angles below 7° need their signs: 5° x 4 1/2 x 5°.',
    });
  return {
    drillingAngleDeg: to(converted.value.drillingAngle, DEGREE),
    pinToPapIn: numbers.pinToPapIn,
    valAngleDeg: to(converted.value.valAngle, DEGREE),
  };
}

const NAMES: Readonly<Record<Mark, string>> = { cg: 'CG mark', 'mass-bias': 'mass-bias mark' };

const otherMark = (given: Mark, wanted: Mark, ball: Ball): InputError =>
  new InputError('other-mark', {
    field: 'layout: drilling angle',
    rule: `must be measured to the ${NAMES[wanted]}`,
    got: `an angle to the ${NAMES[given]}`,
    hint:
      wanted === 'cg'
        ? `${ball.name} is symmetric and has no mass-bias mark.`
        : `Where the CG of ${ball.name} lies around the pin is not published, so an angle to it says nothing of the core.`,
  });
