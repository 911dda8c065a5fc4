import { fitEnsemble } from '../ball/ensemble.js';
import type { Ball } from '../records/ball.js';
import { impossibleCore } from './impossible-core.js';
import { publishedNumbers } from './published-numbers.js';

/**
 * Makes sure that some core can have a ball's published numbers, before anyone answers more questions.
 *
 * @throws {InputError} `no-such-core`, with the nearest RG that works
 */
export function checkBall(ball: Ball): void {
  const published = publishedNumbers(ball, 'moment');
  const { bodies, misfits } = fitEnsemble(published, 1);
  if (bodies.length === 0) throw impossibleCore(published, misfits);
}
