import { acos } from '../math/atan.js';
import { clamp } from '../math/clamp.js';
import { sin } from '../math/sin-cos.js';
import { arcAngle, clockwiseTurn } from '../math/sphere.js';
import { addScaled, dot, norm, rotateAbout, unit, type Vec3 } from '../math/vec3.js';
import type { Layout } from './layout.js';

/** Marks as they were found on a ball, in any frame: unit vectors. */
interface MarksFound {
  readonly pin: Vec3;
  readonly marker: Vec3;
  readonly pap: Vec3;
  readonly gripCentre: Vec3;
}

/**
 * Reads a layout off a marked ball with tape and protractor: the inverse of `placeLayout`.
 *
 * The grip is turned so that the PAP lies `up` from the midline, as a bowler's PAP is measured; or as far up as possible, where the
 * marks lie too near to each other for that.
 *
 * @param up  arc from the midline to the PAP along the VAL, rad
 * @returns angles in rad; NaN where two marks coincide
 */
export function readBack({ pin, marker, pap, gripCentre }: MarksFound, up: number): Layout {
  const finger = towardFingers(gripCentre, pap, up);
  return {
    drillingAngle: clockwiseTurn(pin, pap, marker),
    pinToPap: arcAngle(pin, pap),
    valAngle: -clockwiseTurn(pap, finger, pin),
  };
}

/** The point a quarter of the ball up the centre line from the grip centre: the y axis of B. */
function towardFingers(gripCentre: Vec3, pap: Vec3, up: number): Vec3 {
  const across = addScaled(pap, -dot(pap, gripCentre), gripCentre);
  const cosine = clamp(sin(up) / norm(across), -1, 1);
  return rotateAbout(unit(across), gripCentre, acos(cosine));
}
