import { bodyMoments } from '../ball/drill/ball-body.js';
import { inertiaNumbers } from '../ball/drill/drilled-numbers.js';
import { fromMoments } from '../ball/mass/mass-properties.js';
import type { DrilledAnswer } from '../records/answers/answer.js';
import { type Ball, hasOwnCore } from '../records/schemas/ball.js';
import type { BallProblem } from './ball-problem.js';
import { inchesOf, medianNumbers, type RgNumbers } from './median-numbers.js';

/** Numbers of a ball as made: medians over its possible cores, m. */
export const undrilledNumbers = ({ bodies }: Pick<BallProblem, 'bodies'>): RgNumbers =>
  medianNumbers(bodies.map((body) => inertiaNumbers(fromMoments(bodyMoments(body)))));

/**
 * A ball's numbers as made, for comparison with the drilled ones. RG and differential are those of its record, if it has them. The
 * intermediate differential is that of the cores: top weight gives a symmetric ball a little, which no maker publishes.
 */
export function undrilledAnswer(record: Ball, ball: BallProblem): DrilledAnswer['undrilled'] {
  const made = inchesOf(undrilledNumbers(ball));
  const { rgIn, differentialIn } = hasOwnCore(record) ? made : record;
  return { massLb: record.weightLb, ...made, rgIn, differentialIn };
}
