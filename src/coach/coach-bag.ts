import type { CoachBag, CoachPair } from '../records/answers/coach-answer.js';
import type { Ball } from '../records/schemas/ball.js';
import type { ComparedId } from '../records/schemas/reaction-numbers.js';
import { nearestBall } from './nearest-ball.js';

/** Nearer than this in all three, two balls do the same: about half a standard deviation of a league bowler's shots. */
const ALIKE = { hookStartFt: 0.6, sharpnessDegPerFt: 0.015, totalHookBoards: 1.2 } as const satisfies {
  readonly [K in ComparedId]?: number;
};

/** A step in total hook counts as a gap from this many boards on, when it is also twice the usual step. */
const LEAST_GAP_BOARDS = 4;

/** Balls of one nominal weight differ by less, lb. */
const SAME_WEIGHT_LB = 0.5;

/**
 * Which balls of a bag do the same on a lane, each with its best layout, where a ball is missing, and whether their weights differ.
 *
 * @param pairs  of one bowler on one lane
 * @param balls  the balls of these pairs
 */
export function coachBag(pairs: readonly CoachPair[], balls: readonly Pick<Ball, 'weightLb'>[]): CoachBag {
  const [{ bowler, lane }] = pairs;
  const byHook = [...pairs].sort((a, b) => a.best.reaction.totalHookBoards - b.best.reaction.totalHookBoards);
  const alike = byHook.flatMap((one, i) =>
    byHook
      .slice(i + 1)
      .filter((other) => doesTheSame(one, other))
      .map((other): [string, string] => [one.ball, other.ball]),
  );
  const steps = byHook.slice(1).map((pair, i) => ({
    fromBoards: byHook[i].best.reaction.totalHookBoards,
    toBoards: pair.best.reaction.totalHookBoards,
    below: byHook[i].ball,
    above: pair.ball,
  }));
  const mean = steps.reduce((sum, { fromBoards, toBoards }) => sum + toBoards - fromBoards, 0) / steps.length;
  const gaps = steps.filter(
    ({ fromBoards, toBoards }) =>
      toBoards - fromBoards >= LEAST_GAP_BOARDS && (steps.length === 1 || toBoards - fromBoards > 2 * mean),
  );
  const weightsLb = balls.map(({ weightLb }) => weightLb);
  const [lightestLb, heaviestLb] = [Math.min(...weightsLb), Math.max(...weightsLb)];
  return {
    schema: 'flarewise/coach-bag/3',
    bowler,
    lane,
    best: nearestBall(pairs),
    alike,
    gaps: gaps.map(({ fromBoards, toBoards }) => ({ fromBoards, toBoards })),
    says: [
      ...alike.map(([one, other]) => ({ code: 'balls-do-the-same', params: { one, other } }) as const),
      ...gaps.map(
        ({ below, above, fromBoards, toBoards }) =>
          ({
            code: 'gap-between-balls',
            params: { below, belowBoards: fromBoards, above, aboveBoards: toBoards },
          }) as const,
      ),
      ...(heaviestLb - lightestLb >= SAME_WEIGHT_LB
        ? [{ code: 'weights-differ', params: { lightestLb, heaviestLb } } as const]
        : []),
    ],
  };
}

const doesTheSame = (a: CoachPair, b: CoachPair): boolean =>
  (Object.keys(ALIKE) as (keyof typeof ALIKE)[]).every(
    (key) => Math.abs(a.best.reaction[key] - b.best.reaction[key]) < ALIKE[key],
  );
