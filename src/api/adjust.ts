import { adjust as adjustment } from '../answer/adjust/adjust.js';
import { type AdjustInputs, adjustedInputs } from './adjusted-inputs.js';
import type { AdjustAnswer } from './answers.js';
import { type SearchOptions, settingOptions } from './search-options.js';
import { wordedLater } from './worded.js';

/**
 * What to change where a drilled ball does not do what was wanted: moves on the lane, finishes, speed, other drilled balls, plugging and
 * redrilling, each simulated in the same worlds. Some four seconds of one core.
 *
 * @throws {InputError} when a record, a layout, a wish or an option cannot be used, or the ball's numbers fit no core
 * @throws the signal's reason once it is aborted
 *
 * @example
 * import { readFileSync } from 'node:fs';
 * import { adjust, readBall } from 'flarewise';
 *
 * const { remedies } = await adjust({
 *   bowler: JSON.parse(readFileSync('data/bowlers/average-right.json', 'utf8')),
 *   ball: readBall('data/balls/plain-medium.json'),
 *   lane: JSON.parse(readFileSync('data/lanes/house-easy.json', 'utf8')),
 *   layout: '70 x 4 1/2 x 30',
 *   want: { totalHook: '4 boards less' },
 * });
 * const [first] = remedies.filter(({ rank }) => rank !== null);
 * console.log(first.remedy.code, first.isUndone);
 * // → speed-by true
 */
export async function adjust(inputs: AdjustInputs, options: SearchOptions = {}): Promise<AdjustAnswer> {
  options.signal?.throwIfAborted();
  return wordedLater(() => adjustment(adjustedInputs(inputs), settingOptions(options)));
}
