import { teach } from '../answer/learned-answer.js';
import { parseRecord } from '../records/read/read-record.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import { type Night, nightSchema } from '../records/schemas/shot-log.js';
import type { Learned } from '../simulate/worlds/learned.js';
import type { LearnedAnswer } from './answers.js';
import { checkedBall, checkedBowler, checkedLane, checkedLayout } from './checked-inputs.js';
import { type SearchOptions, settingOptions } from './search-options.js';
import { worded } from './worded.js';

/** A drilled ball with the nights it was thrown, each with its lane. */
export interface LoggedBall {
  readonly ball: Ball;
  /** As written, in angles, `70 x 4 1/2 x 30`, or in distances, `4 1/2 x 3 3/8 x 2`. */
  readonly layout: string;
  readonly nights: readonly { readonly night: Night; readonly lane: Lane }[];
}

/** The drilled balls of one bowler, with what was logged of each. */
export interface LearnInputs {
  readonly bowler: Bowler;
  readonly balls: readonly LoggedBall[];
  /** The lane to learn for; that of the latest night when left out. */
  readonly lane?: Lane | undefined;
}

/** What logged shots teach: to be read, and to be handed in as `learned` beside bowler, ball and lane. */
export interface Lesson {
  readonly answer: LearnedAnswer;
  readonly learned: Learned;
}

/**
 * What a bowler's logged shots teach for a lane; null where there is no night to learn from. Nights on lanes of other names count in full
 * for the release, and in part for oil and boards. Some three seconds for thirty shots.
 *
 * @throws {InputError} when a record, a layout or an option cannot be used, or the ball's numbers fit no core
 *
 * @example
 * import { readFileSync } from 'node:fs';
 * import { learn, readBall, roll } from 'flarewise';
 *
 * const bowler = JSON.parse(readFileSync('data/bowlers/average-right.json', 'utf8'));
 * const lane = JSON.parse(readFileSync('data/lanes/house-easy.json', 'utf8'));
 * const ball = readBall('data/balls/plain-medium.json');
 * const layout = '50 x 4 1/2 x 35';
 *
 * const shots = [17, 18, 16.5, 17].map((pinsBoard) => ({ laydownBoard: 22, arrowsBoard: 15, breakpointBoard: 9, pinsBoard }));
 * const night = { lane: 'house-easy', targetBoard: 15, shots };
 * const lesson = learn({ bowler, balls: [{ ball, layout, nights: [{ night, lane }] }] });
 * const { before, after } = lesson!.answer.foretold;
 * console.log(after!.pinsBoard.deviation < before!.pinsBoard.deviation);
 * // → true
 *
 * const { learned } = roll({ bowler, ball, lane, layout, learned: lesson!.learned });
 * console.log(learned?.shots, learned?.nights);
 * // → 4 1
 */
export function learn(
  inputs: LearnInputs,
  options: Pick<SearchOptions, 'seed' | 'practice'> = {},
): Lesson | null {
  const { seed, practiceWeight } = settingOptions(options);
  const bowler = checkedBowler(inputs.bowler);
  const balls = inputs.balls.map(({ ball: given, layout, nights }) => {
    const ball = checkedBall(given);
    return {
      ball,
      layout: checkedLayout(layout, ball),
      nights: nights.map(({ night, lane }) => ({
        night: parseRecord(nightSchema, night, 'night'),
        lane: checkedLane(lane),
      })),
    };
  });
  const lane = inputs.lane === undefined ? undefined : checkedLane(inputs.lane);
  let learned: Learned | undefined;
  const answer = worded(() => {
    const taught = teach({ bowler, balls, lane }, { seed, practiceWeight });
    learned = taught?.learned;
    return taught?.answer ?? null;
  });
  return answer && learned ? { answer, learned } : null;
}
