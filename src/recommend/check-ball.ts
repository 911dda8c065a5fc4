import type { Ball } from '../records/ball.js';
import { coresOf } from './cores-of.js';

/**
 * Makes sure that some core can have a ball's published numbers, or that its own can be, before anyone answers more questions.
 *
 * @throws {InputError} `no-such-core`, `bad-core` or `bad-stl`
 */
export function checkBall(ball: Ball): void {
  coresOf(ball, 'right', 'moment', 1);
}
