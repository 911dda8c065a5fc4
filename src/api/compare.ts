import { compare as comparison } from '../answer/compare.js';
import { entrantsOf } from '../answer/parts/entrants-of.js';
import { InputError } from '../base/errors.js';
import { LEAST_COMPARED, MOST_COMPARED, VARIED, type Varied } from '../records/answers/compare-answer.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import type { Want } from '../records/schemas/want.js';
import { readLayout } from '../records/text/written-layout.js';
import type { Learned } from '../simulate/worlds/learned.js';
import type { CompareAnswer } from './answers.js';
import { checkedBall, checkedBowler, checkedLane, checkedWant } from './checked-inputs.js';
import { type SearchOptions, settingOptions } from './search-options.js';
import { wordedLater } from './worded.js';

/** Of balls, layouts and finishes one is several, two to six: that is compared, all else is the same. */
export interface CompareInputs {
  readonly bowler: Bowler;
  readonly lane: Lane;
  /** The wanted reaction; without it, only differences are given. */
  readonly want?: Want | undefined;
  readonly balls: readonly Ball[];
  /** As written, in angles or in distances; the usual middle layout when left out. */
  readonly layouts?: readonly string[] | undefined;
  /** Of the one ball's cover, grit, 220 to 6000; the balls' own when left out. */
  readonly finishes?: readonly number[] | undefined;
  /** What the bowler's logged shots say, as `learn` hands it back; nothing when left out. */
  readonly learned?: Learned | undefined;
}

/**
 * Layouts of one ball, balls with one layout, or finishes of one ball side by side: how each differs from the first in
 * the same plausible worlds, whether that would be seen beside the scatter of the bowler's shots, and, with a wish, how often
 * it comes nearer to it. Some seconds of one core.
 *
 * @throws {InputError} when a record, a layout or an option cannot be used, when not exactly one thing varies, or the ball's
 *   numbers fit no core
 * @throws the signal's reason once it is aborted
 *
 * @example
 * import { readFileSync } from 'node:fs';
 * import { compare, readBall } from 'flarewise';
 *
 * const { rows, verdict } = await compare({
 *   bowler: JSON.parse(readFileSync('data/bowlers/average-right.json', 'utf8')),
 *   lane: JSON.parse(readFileSync('data/lanes/house-easy.json', 'utf8')),
 *   balls: [readBall('data/balls/plain-medium.json')],
 *   finishes: [500, 4000],
 * });
 * for (const { name, fromFirst } of rows) console.log(name, fromFirst?.weighed.visibility.hookStartFt ?? 'first');
 * // → 500 grit first
 * // → 4000 grit seen
 * console.log(verdict[0]?.code);
 * // → looks-beside-first
 */
export async function compare(inputs: CompareInputs, options: SearchOptions = {}): Promise<CompareAnswer> {
  options.signal?.throwIfAborted();
  return wordedLater(() => {
    const { balls: given = [], layouts = [], finishes = [], learned } = inputs;
    const bowler = checkedBowler(inputs.bowler);
    const lane = checkedLane(inputs.lane);
    const want = checkedWant(inputs.want ?? {});
    const varies = variedIn({ layout: layouts, ball: given, finish: finishes });
    const balls = given.map(checkedBall) as [Ball, ...Ball[]];
    const written = layouts.map((text) => readLayout(String(text)));
    const entrants = entrantsOf(varies, { balls, layouts: written, finishes });
    for (const { ball } of entrants) checkedBall(ball); // with the finish that it is given here
    return comparison({ bowler, lane, want, varies, entrants, learned }, settingOptions(options));
  });
}

/** The one thing of which there are several. @throws {InputError} `compared` where it is not one, or they are too many */
function variedIn(given: Readonly<Record<Varied, readonly unknown[]>>): Varied {
  const [varies, another] = VARIED.filter((each) => given[each].length >= LEAST_COMPARED);
  const isOne = varies !== undefined && another === undefined && given[varies].length <= MOST_COMPARED;
  if (isOne && given.ball.length > 0 && (varies === 'finish' || given.finish.length === 0)) return varies;
  throw new InputError('compared', {
    field: 'balls, layouts, finishes',
    rule: `must be ${LEAST_COMPARED} to ${MOST_COMPARED} of one kind, and at most one of each other`,
    got: VARIED.map((each) => `${given[each].length} of ${each}`).join(', '),
    hint: 'Balls are compared with the finishes in their records.',
  });
}
