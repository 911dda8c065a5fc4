import type { TargetAnswer } from '../records/answers/answer.js';
import type { CoachPair } from '../records/answers/coach-answer.js';

/**
 * The ball of a bag that comes nearest to the wish, each with its best layout.
 *
 * Each ball's targets are what its own layouts attain, so its score says nothing about another ball. Here all are held against
 * one target a wish: the number that was asked for, or as far up the range that all of them together attain as the step is from 1 to 5.
 * A miss counts over that range. Without a wish, the one with the greatest mean score.
 *
 * @param pairs  of one bowler on one lane, at least one
 */
export function nearestBall(pairs: readonly CoachPair[]): string {
  const wishes = pairs[0].targets.map((target) => commonTarget(pairs, target));
  const miss = ({ best }: CoachPair): number =>
    wishes.reduce((sum, target) => sum + missOf(best.reaction[target.reading], target) ** 2, 0);
  const byMiss = (a: CoachPair, b: CoachPair): number => miss(a) - miss(b);
  const byScore = (a: CoachPair, b: CoachPair): number => b.best.meanScore - a.best.meanScore;
  const [nearest] = [...pairs].sort((a, b) => byMiss(a, b) || byScore(a, b));
  return nearest.ball;
}

interface CommonTarget extends Pick<TargetAnswer, 'step' | 'reading' | 'value'> {
  readonly range: number;
}

function commonTarget(
  pairs: readonly CoachPair[],
  { wish, step, reading, asked }: TargetAnswer,
): CommonTarget {
  const own = pairs.flatMap(({ targets }) => targets.filter((target) => target.wish === wish));
  const least = Math.min(...own.map(({ attainable }) => attainable.low));
  const range = Math.max(...own.map(({ attainable }) => attainable.high)) - least;
  const value = step === null ? asked! : least + ((step - 1) / 4) * range;
  return { step, reading, value, range };
}

/** Signed, over what is attained; 0 where an extreme wish is outdone. */
function missOf(value: number, { step, value: target, range }: CommonTarget): number {
  const off = range > 0 ? (value - target) / range : 0;
  if (step === 1) return Math.max(0, off);
  if (step === 5) return Math.min(0, off);
  return off;
}
