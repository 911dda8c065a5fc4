import { fromColumns, type Mat3 } from '../math/mat3.js';
import { tangentToward, walk } from '../math/sphere.js';
import { cross, rotateAbout, scale, type Vec3 } from '../math/vec3.js';
import type { Layout } from './layout.js';

/*
 * Frame B of a right-hander's ball: Bo at the geometric centre, z out through the grip centre, y along the
 * centre line toward the fingers, x along the midline toward the PAP. A left-hander's ball is the mirror
 * image in x and uses the same numbers.
 */

/** Unit tangent at the PAP that points up the vertical axis line. */
export const upTheVal = (pap_B: Vec3): Vec3 => tangentToward(pap_B, [0, 1, 0]);

/** Where a layout puts the pin and the marker, and how it turns the core. */
export interface Placement {
  readonly pap_B: Vec3;
  readonly pin_B: Vec3;
  readonly marker_B: Vec3;
  /** Frame C of the core in B: z through the pin (low RG), x toward the marker, y completes it. */
  readonly R_BC: Mat3;
}

/**
 * Puts a layout on the ball.
 *
 * The pin lies at arc pin-to-PAP from the PAP, in the direction VAL angle from the upper VAL toward the
 * grip. From the pin, the marker lies in the direction of the PAP turned clockwise by the drilling angle. When the pin
 * lies on the PAP, "toward the PAP" means back along the direction of the VAL angle.
 *
 * @param layout       angles in rad
 * @param pap_B        unit vector of the PAP
 * @param pinToMarker  arc from pin to marker, rad: a quarter of the ball for a mass-bias mark
 */
export function placeLayout(layout: Layout, pap_B: Vec3, pinToMarker = Math.PI / 2): Placement {
  const towardPin = rotateAbout(upTheVal(pap_B), pap_B, layout.valAngle);
  const pin_B = walk(pap_B, towardPin, layout.pinToPap);
  // The great circle from the PAP runs on past the pin; the opposite direction leads back to the PAP, and exists even at arc 0.
  const onward = walk(towardPin, scale(-1, pap_B), layout.pinToPap);
  const towardPap = scale(-1, onward);
  const towardMarker = rotateAbout(towardPap, pin_B, -layout.drillingAngle);
  return {
    pap_B,
    pin_B,
    marker_B: walk(pin_B, towardMarker, pinToMarker),
    R_BC: fromColumns(towardMarker, cross(pin_B, towardMarker), pin_B),
  };
}
