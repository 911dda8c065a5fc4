import type { Ball } from '../records/ball.js';
import { fitCores } from './fit-cores.js';
import { publishedNumbers } from './published-numbers.js';

/**
 * Makes sure that some core can have a ball's published numbers, before anyone answers more questions.
 *
 * @throws {InputError} `no-such-core`, with the nearest RG that works
 */
export function checkBall(ball: Ball): void {
  fitCores(ball, publishedNumbers(ball, 'moment'), 1);
}
