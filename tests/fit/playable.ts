import { BOARD } from '../../src/base/constants.js';
import { DEGREE, from } from '../../src/base/units.js';
import type { Launch } from '../../src/motion/shot/release.js';
import { plainHook } from '../../src/regression/plain-numbers.js';
import { FEET, type PlainRoll } from '../../src/regression/plain-roll.js';

/**
 * What a bowler would play, judged by the plain roll: the ball is sent out at a usual angle, skids through the heads, and
 * comes back. Outside, the regression was not fitted and must not be asked. Common practice, no source.
 */
export const PLAYABLE = {
  launchAngle: [from(-1.5, DEGREE), from(7.5, DEGREE)],
  hook: [BOARD, 70 * BOARD],
  entryAngle: [from(-2, DEGREE), from(10, DEGREE)],
  /** Mean friction over the heads to the greatest met. */
  headsShare: [0, 0.62],
} as const;

/** The heads, ft. */
const HEADS = 15;

export function isPlayable(plain: PlainRoll, launch: Launch): boolean {
  const { friction, heading } = plain;
  const most = friction.reduce((a, b) => Math.max(a, b), 0);
  const heads = friction.subarray(0, HEADS).reduce((sum, value) => sum + value, 0) / HEADS;
  const inside = (value: number, [least, most]: readonly [number, number]): boolean =>
    value >= least && value <= most;
  return (
    inside(launch.angle, PLAYABLE.launchAngle) &&
    inside(plainHook(plain, launch), PLAYABLE.hook) &&
    inside(heading[FEET], PLAYABLE.entryAngle) &&
    inside(heads / most, PLAYABLE.headsShare)
  );
}
