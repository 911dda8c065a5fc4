import type { Ball } from '../records/schemas/ball.js';
import type { Lane } from '../records/schemas/lane.js';
import type { Night } from '../records/schemas/shot-log.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';

/** A night of shots, with the lane it names. */
export interface LoggedNight {
  readonly night: Night;
  readonly lane: Lane;
}

/** A drilled ball with the nights it was thrown. */
export interface LoggedBall {
  readonly ball: Ball;
  readonly layout: LayoutNumbers;
  readonly nights: readonly LoggedNight[];
}
