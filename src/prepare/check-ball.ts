import type { Ball } from '../records/schemas/ball.js';
import { coresOf } from './cores-of.js';
import { oldHoles } from './old-holes.js';

/**
 * Checks that some core fits a ball's published numbers, or that its own core is possible, and that its earlier drillings are possible,
 * before the person answers more questions.
 *
 * @throws {Refusal} as `coresOf` and `oldHoles` do
 */
export function checkBall(ball: Ball): void {
  const { numbers, pinToMarker } = coresOf(ball, 'right', 'moment', 1);
  oldHoles(ball, 'right', numbers.radius, pinToMarker);
}
