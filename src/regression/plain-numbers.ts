import { FOOT } from '../base/units.js';
import { tan } from '../math/sin-cos.js';
import { cornerOf, SHARP_OVER } from '../motion/reaction/hook.js';
import type { Launch } from '../motion/shot/release.js';
import { FEET, type PlainRoll } from './plain-roll.js';

/** Total hook of a plain ball: distance from the launch line, extended to the pins, to the ball there, m. */
export const plainHook = ({ x }: PlainRoll, launch: Launch): number =>
  x[0] + FEET * FOOT * tan(launch.angle) - x[FEET];

/** Hook start, defined as for any shot, m; the pins for a path that does not hook. */
export const plainHookStart = (roll: PlainRoll, launch: Launch): number =>
  cornerOf(
    FEET * FOOT,
    plainHook(roll, launch),
    tan(Math.max(roll.heading[FEET], roll.rollHeading)) + tan(launch.angle),
  );

/** Feet over which the sharpness of a hook is taken. */
const SHARP_FEET = Math.round(SHARP_OVER / FOOT);

/** Sharpness, defined as for any shot: greatest change of heading per distance over ten feet, rad/m. */
export function plainSharpness({ heading }: PlainRoll): number {
  let most = 0;
  for (let foot = SHARP_FEET; foot <= FEET; foot++)
    most = Math.max(most, heading[foot] - heading[foot - SHARP_FEET]);
  return most / SHARP_OVER;
}
