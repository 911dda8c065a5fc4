import { createHash } from 'node:crypto';
import { type BallProblem, ballProblem } from './ball-problem.js';

/** What is kept: balls made ready for one bowler and the next. */
const MOST_KEPT = 80;

/**
 * A `ballProblem` that remembers its results, so that a bowler's balls are drilled and sorted once for all lanes and for all
 * comparisons with one another. Impossible balls are refused each time.
 */
export function sharedBalls(): typeof ballProblem {
  const kept = new Map<string, BallProblem>();
  return (...asked) => {
    const [ball, bowler, ounce, , budget] = asked;
    const key = createHash('sha256')
      .update(JSON.stringify([ball, bowler, ounce, budget]))
      .digest('hex');
    const problem = kept.get(key) ?? ballProblem(...asked);
    kept.delete(key);
    kept.set(key, problem); // the most recently used is last
    if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value as string);
    return problem;
  };
}
