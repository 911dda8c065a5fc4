import { BOARD, LANE_LENGTH } from '../base/constants.js';
import { DEGREE, FOOT, INCH, MPH, RPM, to } from '../base/units.js';
import { xToBoard } from '../motion/lane/boards.js';
import type { Shot } from '../motion/shot/shot.js';
import type { PathPoint, ReactionAnswer } from '../records/answers/answer.js';
import type { Outcome } from './simulator.js';
import { staysOnLane } from './stays-on-lane.js';

/** Degrees per foot in rad/m. */
const DEGREE_PER_FOOT = DEGREE / FOOT;

/** A reaction in the units people use; boards from the bowler's own side. */
export function reactionAnswer({ shot, reaction, ringClearance }: Outcome): ReactionAnswer {
  return {
    outcome: staysOnLane(shot),
    hookStartFt: to(reaction.hookStart, FOOT),
    rollStartFt: to(reaction.rollStart, FOOT),
    rollsBeforePins: reaction.rollsBeforePins,
    sharpnessDegPerFt: to(reaction.sharpness, DEGREE_PER_FOOT),
    breakpointFt: to(reaction.breakpointY, FOOT),
    breakpointBoard: xToBoard(reaction.breakpointX),
    totalHookBoards: to(reaction.totalHook, BOARD),
    entryAngleDeg: to(reaction.entryAngle, DEGREE),
    pinsBoard: xToBoard(reaction.pinsX),
    flareIn: to(reaction.flare, INCH),
    ringClearanceIn: to(ringClearance, INCH),
    turns: reaction.turns,
    speedAtPinsMph: to(reaction.speedAtPins, MPH),
    revRateAtPinsRpm: to(reaction.spinAtPins, RPM),
  };
}

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
    const part = span > 0 ? Math.min(1, Math.max(0, (y - shot.y[i]) / span)) : 0;
    const at = (values: Float64Array): number => values[i] + part * (values[i + 1] - values[i]);
    const vx = at(shot.vx);
    const vy = at(shot.vy);
    points.push({
      timeS: at(shot.time),
      distanceFt: foot,
      board: xToBoard(at(shot.x)),
      speedMph: to(Math.hypot(vx, vy), MPH),
      revRateRpm: to(at(shot.spin), RPM),
      headingDeg: to(Math.atan2(-vx, vy), DEGREE),
      slipMps: at(shot.slip),
    });
  }
  return points;
}
