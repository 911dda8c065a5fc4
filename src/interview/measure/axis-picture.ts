import { acos } from '../../math/atan.js';
import { clamp } from '../../math/clamp.js';
import { cos } from '../../math/sin-cos.js';
import type { Measured } from './measured.js';

/** How exactly a place is read from a picture, as a share of the ball's radius: camera and reading (assumed). */
const READING_DEVIATION = 0.06;

/**
 * Axis rotation, rad, from a picture taken straight behind the bowler as the ball leaves the hand.
 *
 * Seen along the lane, a mark on the PAP stands aside from the ball's centre by cos tilt · cos rotation of the ball's
 * radius: all the way out when the ball rolls straight, in the middle when it spins sideways.
 *
 * @param aside      how far the mark stands aside from the ball's centre, in any unit
 * @param ballWidth  of the ball in the picture, in the same unit
 * @returns null when no axis of this tilt shows its mark so far aside, within what a reading may be off
 */
export function rotationFromPicture(aside: number, ballWidth: number, tilt: number): Measured | null {
  const rotation = (share: number): number => acos(clamp(share / cos(tilt), -1, 1));
  const share = (2 * aside) / ballWidth;
  if (share > cos(tilt) + READING_DEVIATION) return null;
  const spread = (rotation(share - READING_DEVIATION) - rotation(share + READING_DEVIATION)) / 2;
  return { value: rotation(share), deviation: spread };
}
