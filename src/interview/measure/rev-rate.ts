import { hypot } from '../../math/hypot.js';
import type { Measured } from './measured.js';

/** How exactly the beginning and end of a counted turn are seen: an eighth of a turn together, rad (assumed). */
const TURN_DEVIATION = Math.PI / 4;

/** Frames by which beginning and end together may be off (rounding to whole frames: 1/√6). */
const FRAME_DEVIATION = 1 / Math.sqrt(6);

/**
 * Rev rate at release, rad/s, from a video of the first turns after the release.
 *
 * @param turns            turns of a mark on the ball
 * @param frames           frames they took
 * @param framesPerSecond  of the video
 */
export function spinFromFrames(turns: number, frames: number, framesPerSecond: number): Measured {
  const value = (2 * Math.PI * turns * framesPerSecond) / frames;
  return {
    value,
    deviation: value * hypot(TURN_DEVIATION / (2 * Math.PI * turns), FRAME_DEVIATION / frames),
  };
}
