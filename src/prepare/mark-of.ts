import { SIXTEENTH } from '../base/tape-reading.js';
import type { LayoutAnswer } from '../records/answers/answer.js';
import { type Ball, hasOwnCore } from '../records/schemas/ball.js';
import { hasMassBias } from '../records/schemas/core-families.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { Mark } from '../records/text/written-layout.js';
import { MIDDLE_LAYOUT } from './middle-layout.js';
import { familiesOf } from './published-numbers.js';

/**
 * The mark that a ball's drilling angles are measured to, which is the one whose place about the pin is known: the mass-bias mark of a
 * ball with a mass bias, the marker of the ball's own core, otherwise the CG mark. Null where the CG lies on the
 * pin: then nothing on the ball shows a direction, and there is no drilling angle.
 */
export function markOf(ball: Ball): Mark | null {
  if (hasOwnCore(ball) || familiesOf(ball).every(hasMassBias)) return 'mass-bias';
  return ball.pinToCgIn < SIXTEENTH ? null : 'cg';
}

/** Stands in the place of a drilling angle that a ball does not have. */
export const NO_ANGLE_DEG = MIDDLE_LAYOUT.drillingAngleDeg;

/** The numbers of a layout that was answered. */
export const numbersOf = ({
  drillingAngleDeg,
  pinToPapIn,
  valAngleDeg,
}: Pick<LayoutAnswer, 'drillingAngleDeg' | 'pinToPapIn' | 'valAngleDeg'>): LayoutNumbers => ({
  drillingAngleDeg: drillingAngleDeg ?? NO_ANGLE_DEG,
  pinToPapIn,
  valAngleDeg,
});
