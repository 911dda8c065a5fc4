import { type LearnedInputs, teach } from '../answer/learned-answer.js';
import type { CoachLine, CoachPair } from '../records/answers/coach-answer.js';
import { Refusal } from '../records/refusals/refusal.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import type { Want } from '../records/schemas/want.js';
import type { Learned } from '../simulate/worlds/learned.js';
import { coachBag } from './coach-bag.js';
import { type CoachOptions, coachPair } from './coach-pair.js';

/** One bowler on one lane with every ball of the bag: what is worked out in one go, apart from all others. */
export interface CoachUnit {
  readonly bowler: Bowler;
  readonly lane: Lane;
  readonly balls: readonly Ball[];
  readonly want: Want;
  /** This bowler's logged shots, to learn from; none when left out. */
  readonly log?: Pick<LearnedInputs, 'balls' | 'leftOut'> | undefined;
}

/** The lines of a unit: one for each ball, in order, then one for the bag. A ball that cannot be says why. */
export async function coachUnit(unit: CoachUnit, options: CoachOptions): Promise<CoachLine[]> {
  const { bowler, lane, balls, want } = unit;
  const lines: CoachLine[] = [];
  let taught: { readonly learned: Learned | undefined } | undefined;
  for (const ball of balls) {
    const others = balls.filter((each) => each !== ball);
    try {
      taught ??= { learned: learnedIn(unit, options) };
      lines.push(await coachPair({ bowler, ball, lane, want, ...taught }, others, options));
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      lines.push({
        schema: 'flarewise/coach-fault/2',
        bowler: bowler.name,
        ball: ball.name,
        lane: lane.name,
        refusals: error.statements,
      });
    }
  }
  const pairs = lines.filter((line): line is CoachPair => line.schema === 'flarewise/coach-pair/4');
  const answered = balls.filter(({ name }) => pairs.some(({ ball }) => ball === name));
  return pairs.length > 1 ? [...lines, coachBag(pairs, answered)] : lines;
}

/** What the logged shots say for this lane. @throws {Refusal} as `teach` does */
const learnedIn = ({ bowler, lane, log }: CoachUnit, options: CoachOptions): Learned | undefined =>
  log && teach({ bowler, lane, ...log }, options)?.learned;
