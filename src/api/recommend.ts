import { recommend as recommendation } from '../answer/recommend.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import type { Want } from '../records/schemas/want.js';
import type { Learned } from '../simulate/worlds/learned.js';
import type { RecommendAnswer } from './answers.js';
import { checkedBall, checkedBowler, checkedLane, checkedWant } from './checked-inputs.js';
import { type SearchOptions, settingOptions } from './search-options.js';
import { wordedLater } from './worded.js';

/** For whom, which ball, where, and what it should do: records as `data/` has them. */
export interface RecommendInputs {
  readonly bowler: Bowler;
  readonly ball: Ball;
  readonly lane: Lane;
  /** The wanted reaction; a preference left out is ignored. */
  readonly want: Want;
  /** What the bowler's logged shots say, as `learn` hands it back; nothing when left out. */
  readonly learned?: Learned | undefined;
}

/** How to search, and what else to try. */
export interface RecommendOptions extends SearchOptions {
  /** How many layouts to answer with, 1 to 10; 4 when left out. */
  readonly top?: number | undefined;
  /** Balls the bowler has besides this one, to try where layout is not enough. */
  readonly otherBalls?: readonly Ball[] | undefined;
}

/**
 * Ranked, explained layouts for one bowler, ball, lane and wanted reaction. Some five seconds of one core.
 *
 * Every number of a layout comes from the physics engine. Units are in the names of the answer's fields; boards are counted
 * from the bowler's own side. The same inputs, options and version give the same answer.
 *
 * @throws {InputError} when a record or an option cannot be used, the ball's numbers fit no core, or every layout breaks a rule
 * @throws the signal's reason once it is aborted
 *
 * @example
 * import { recommend } from 'flarewise';
 *
 * const answer = await recommend(
 *   {
 *     bowler: {
 *       schema: 'flarewise/bowler/1',
 *       name: 'Kim',
 *       hand: 'right',
 *       thumbHole: true,
 *       speedMph: 17,
 *       revRateRpm: 320,
 *       axisTiltDeg: 13,
 *       axisRotationDeg: 48,
 *       pap: { overIn: 5, upIn: 0.5 },
 *     },
 *     ball: {
 *       schema: 'flarewise/ball/1',
 *       name: 'New ball',
 *       weightLb: 15,
 *       rgIn: 2.53,
 *       differentialIn: 0.041,
 *       intermediateDifferentialIn: 0,
 *       coreShape: 'plain',
 *       pinToCgIn: 3,
 *       topWeightOz: 3,
 *     },
 *     lane: {
 *       schema: 'flarewise/lane/1',
 *       name: 'Club, house oil',
 *       patternFt: 40,
 *       zones: [{ fromFt: 0, toFt: 40, fromBoard: 0, toBoard: 39, units: 30, unitsAtEnd: 5 }],
 *     },
 *     want: { hookStart: 4, totalHook: 4 },
 *   },
 *   { top: 2, seed: 1, workers: 2 },
 * );
 * for (const { rank, text, score } of answer.layouts) console.log(`${rank}. ${text}: ${score.toFixed(0)} of 100`);
 * // → 1. 50 x 4 7/8 x 45: 89 of 100
 * // → 2. 50 x 4 1/8 x 63: 88 of 100
 */
export async function recommend(
  { bowler, ball, lane, want, learned }: RecommendInputs,
  { otherBalls = [], ...options }: RecommendOptions = {},
): Promise<RecommendAnswer> {
  options.signal?.throwIfAborted();
  return wordedLater(() => {
    const inputs = {
      bowler: checkedBowler(bowler),
      ball: checkedBall(ball),
      lane: checkedLane(lane),
      want: checkedWant(want),
      learned,
    };
    const others = otherBalls.map(checkedBall);
    return recommendation(inputs, { ...settingOptions(options), otherBalls: others });
  });
}
