import { bodyMoments } from '../ball/drill/ball-body.js';
import { inertiaNumbers } from '../ball/drill/drilled-numbers.js';
import { fromMoments } from '../ball/mass/mass-properties.js';
import type { DrilledAnswer } from '../records/answers/answer.js';
import { type Ball, hasOwnCore } from '../records/schemas/ball.js';
import type { BallProblem } from './ball-problem.js';
import { inchesOf, medianNumbers, type RgNumbers } from './median-numbers.js';

/** Numbers of a ball as made: medians of the cores that stand for its, m. */
export const undrilledNumbers = ({ bodies }: Pick<BallProblem, 'bodies'>): RgNumbers =>
  medianNumbers(bodies.map((body) => inertiaNumbers(fromMoments(bodyMoments(body)))));

/**
 * A ball's numbers as made, beside the drilled ones: RG and differential as they are in its file, where they do. The
 * intermediate differential is the cores': top weight leaves a symmetric ball a little, which no maker publishes.
 */
export function undrilledAnswer(record: Ball, ball: BallProblem): DrilledAnswer['undrilled'] {
  const made = inchesOf(undrilledNumbers(ball));
  const { rgIn, differentialIn } = hasOwnCore(record) ? made : record;
  return { massLb: record.weightLb, ...made, rgIn, differentialIn };
}
