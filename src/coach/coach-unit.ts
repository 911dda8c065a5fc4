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
  /** What this bowler's logged shots say for this lane; nothing when left out. */
  readonly learned?: Learned | undefined;
}

/** The lines of a unit: one for each ball, in order, then one for the bag. A ball that cannot be says why. */
export async function coachUnit(
  { bowler, lane, balls, want, learned }: CoachUnit,
  options: CoachOptions,
): Promise<CoachLine[]> {
  const lines: CoachLine[] = [];
  for (const ball of balls) {
    const others = balls.filter((each) => each !== ball);
    try {
      lines.push(await coachPair({ bowler, ball, lane, want, learned }, others, options));
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
  return pairs.length > 1 ? [...lines, coachBag(pairs)] : lines;
}
