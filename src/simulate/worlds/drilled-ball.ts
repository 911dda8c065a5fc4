import type { PublishedNumbers } from '../../ball/core/published.js';
import { DEGREE, from, INCH } from '../../base/units.js';
import type { BallUncertainty } from '../../records/schemas/ball-uncertainty.js';
import { drawMade } from './draw-made.js';
import type { Draws } from './draws.js';
import type { Made } from './made-ball.js';

/** What belongs to one drilled ball: errors of marking the layout, rad; which of the fitted cores it has; how it was manufactured. */
export interface DrilledBall {
  readonly drillingAngle: number;
  readonly pinToPap: number;
  readonly valAngle: number;
  readonly body: number;
  readonly made: Made;
}

/** Errors of marking a layout by hand (one standard deviation): 1/16 in and 2°. Assumed, no source. */
export const MARKING_IN = 1 / 16;
export const MARKING_DEG = 2;

/**
 * One drilled ball, drawn.
 *
 * @param bodyCount    how many fitted cores there are to choose from
 * @param uncertainty  of the ball's guessed numbers, record units
 */
export const drawDrilledBall = (
  draw: Draws,
  published: PublishedNumbers,
  bodyCount: number,
  uncertainty?: BallUncertainty,
): DrilledBall => ({
  drillingAngle: from(MARKING_DEG, DEGREE) * draw.normal('drillingAngle'),
  pinToPap: (from(MARKING_IN, INCH) / published.radius) * draw.normal('pinToPap'),
  valAngle: from(MARKING_DEG, DEGREE) * draw.normal('valAngle'),
  body: Math.min(bodyCount - 1, Math.floor(draw.within('body', 0, bodyCount))),
  made: drawMade(draw, published, uncertainty),
});
