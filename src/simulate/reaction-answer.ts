import { LANE_LENGTH } from '../base/constants.js';
import { fromKeys } from '../base/from-keys.js';
import { DEGREE, FOOT, MPH, RPM, to } from '../base/units.js';
import { atan2 } from '../math/atan.js';
import { clamp } from '../math/clamp.js';
import { hypot } from '../math/hypot.js';
import { xToBoard } from '../motion/lane/boards.js';
import type { Shot } from '../motion/shot/shot.js';
import type { PathPoint, ReactionAnswer } from '../records/answers/answer.js';
import { REACTION_IDS } from '../records/schemas/reaction-numbers.js';
import { reader } from './readings.js';
import type { Outcome } from './simulator.js';
import { staysOnLane } from './stays-on-lane.js';

/** A reaction in the units people use; boards from the bowler's own side. */
export const reactionAnswer = (outcome: Outcome): ReactionAnswer => ({
  outcome: staysOnLane(outcome.shot),
  ...fromKeys(REACTION_IDS, (id) => reader(id)(outcome)),
  rollsBeforePins: outcome.reaction.rollsBeforePins,
});

/** The path at every foot and at the pins; heading is positive toward the side the ball hooks to. */
export function pathAnswer(shot: Shot): PathPoint[] {
  const points: PathPoint[] = [];
  const last = shot.time.length - 1;
  let i = 0;
  for (let foot = 0; foot <= to(LANE_LENGTH, FOOT) + 1e-9; foot++) {
    const y = foot * FOOT;
    if (y > shot.y[last] + 1e-9) break;
    while (i < last - 1 && shot.y[i + 1] < y) i += 1;
    const span = shot.y[i + 1] - shot.y[i];
    const part = span > 0 ? clamp((y - shot.y[i]) / span, 0, 1) : 0;
    const at = (values: Float64Array): number => values[i] + part * (values[i + 1] - values[i]);
    const vx = at(shot.vx);
    const vy = at(shot.vy);
    points.push({
      timeS: at(shot.time),
      distanceFt: foot,
      board: xToBoard(at(shot.x)),
      speedMph: to(hypot(vx, vy), MPH),
      revRateRpm: to(at(shot.spin), RPM),
      headingDeg: to(atan2(-vx, vy), DEGREE),
      slipMps: at(shot.slip),
    });
  }
  return points;
}
