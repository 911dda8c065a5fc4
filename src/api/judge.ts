import { judge as judgement } from '../answer/judge.js';
import type { JudgeAnswer } from './answers.js';
import { checkedBall, checkedBowler, checkedLane, checkedLayout, checkedWant } from './checked-inputs.js';
import type { RecommendInputs, RecommendOptions } from './recommend.js';
import { settingOptions } from './search-options.js';
import { wordedLater } from './worded.js';

/** What `recommend` takes, and the layout to judge. */
export interface JudgeInputs extends RecommendInputs {
  /** As written, in angles, `70 x 4 1/2 x 30`, or in distances, `4 1/2 x 3 3/8 x 2`. */
  readonly layout: string;
}

/** How to search, and what else to try. */
export type JudgeOptions = Omit<RecommendOptions, 'top'>;

/**
 * A second opinion on one layout: a verdict, its place among all, what the best one does differently, and what marking errors
 * cost. Some four seconds of one core.
 *
 * @throws {InputError} as `recommend` does, and for a layout that cannot be read or that no ball of this kind has
 * @throws the signal's reason once it is aborted
 *
 * @example
 * import { readFileSync } from 'node:fs';
 * import { judge, readBall } from 'flarewise';
 *
 * const answer = await judge(
 *   {
 *     bowler: JSON.parse(readFileSync('data/bowlers/average-right.json', 'utf8')),
 *     ball: readBall('data/balls/plain-medium.json'),
 *     lane: JSON.parse(readFileSync('data/lanes/house-easy.json', 'utf8')),
 *     want: { hookStart: 4 },
 *     layout: '70 x 4 1/2 x 30',
 *   },
 *   { workers: 2, onProgress: ({ stage, done, total }) => console.error(`${stage}: ${done} of ${total}`) },
 * );
 * console.log(answer.verdict, answer.best.text);
 * // → no-difference-seen 55 x 4 1/4 x 66
 */
export async function judge(
  { bowler, ball: given, lane, want, layout, learned }: JudgeInputs,
  { otherBalls = [], ...options }: JudgeOptions = {},
): Promise<JudgeAnswer> {
  options.signal?.throwIfAborted();
  return wordedLater(() => {
    const ball = checkedBall(given);
    const inputs = {
      bowler: checkedBowler(bowler),
      ball,
      lane: checkedLane(lane),
      want: checkedWant(want),
      learned,
      layout: checkedLayout(layout, ball),
    };
    const others = otherBalls.map(checkedBall);
    return judgement(inputs, { ...settingOptions(options), otherBalls: others });
  });
}
