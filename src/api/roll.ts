import { rollAnswer } from '../answer/roll-answer.js';
import type { Lane } from '../records/schemas/lane.js';
import type { Learned } from '../simulate/worlds/learned.js';
import type { RollAnswer } from './answers.js';
import { checkedBall, checkedBowler, checkedLane, checkedLayout } from './checked-inputs.js';
import type { DrilledInputs } from './drilled.js';
import { worded } from './worded.js';

/** A drilled ball, and the lane it is rolled on. */
export interface RollInputs extends DrilledInputs {
  readonly lane: Lane;
  /** What the bowler's logged shots say, as `learn` hands it back; nothing when left out. */
  readonly learned?: Learned | undefined;
}

/**
 * One shot with one layout, on the line that brings it to the pocket: path, reaction, oil rings. About a second.
 *
 * @throws {InputError} when a record or the layout cannot be used, the ball's numbers fit no core, or the ball would hop
 *
 * @example
 * import { readFileSync } from 'node:fs';
 * import { readBall, roll } from 'flarewise';
 *
 * const { line, reaction, path } = roll({
 *   bowler: JSON.parse(readFileSync('data/bowlers/average-right.json', 'utf8')),
 *   ball: readBall('data/balls/plain-medium.json'),
 *   lane: JSON.parse(readFileSync('data/lanes/house-easy.json', 'utf8')),
 *   layout: '70 x 4 1/2 x 30',
 * });
 * console.log(line.reachesPocket, reaction.outcome, path.at(-1)?.distanceFt);
 * // → true pins 60
 */
export function roll({ bowler, ball: given, lane, layout, learned }: RollInputs): RollAnswer {
  return worded(() => {
    const ball = checkedBall(given);
    return rollAnswer({
      bowler: checkedBowler(bowler),
      ball,
      lane: checkedLane(lane),
      layout: checkedLayout(layout, ball),
      learned,
    });
  });
}
