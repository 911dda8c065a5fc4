import { CM, DEGREE, from, INCH, MM } from '../../base/units.js';
import { fromColumns, type Mat3, mulMat } from '../../math/mat3.js';
import { cos, sin } from '../../math/sin-cos.js';
import { addScaled, cross, dot, scale, unit } from '../../math/vec3.js';
import { type Core, type CorePart, coreDirections } from '../../records/schemas/core.js';

/** m per unit a core may be drawn in. */
export const LENGTH = { in: INCH, mm: MM, cm: CM } as const;

/**
 * Frame F of a core file in C: its pin becomes z, its marker the half plane of x. For a left-hander's ball, which
 * is computed as its mirror image, a reflection.
 */
export function coreFrame(core: Core, mirrored: boolean): Mat3 {
  const { pin, marker } = coreDirections(core);
  const z_F = unit(pin);
  const x_F = unit(addScaled(marker, -dot(marker, z_F), z_F));
  const y_F = cross(z_F, x_F);
  return [x_F, mirrored ? scale(-1, y_F) : y_F, z_F];
}

/** A part's own frame in F: turned about z, then tilted toward an azimuth. */
export function poseOf({ turnDeg = 0, tiltDeg = 0, towardDeg = 0 }: CorePart): Mat3 {
  const toward = from(towardDeg, DEGREE);
  const about = (angle: number): Mat3 =>
    fromColumns([cos(angle), sin(angle), 0], [-sin(angle), cos(angle), 0], [0, 0, 1]);
  const tilt = from(tiltDeg, DEGREE);
  const lean = fromColumns([cos(tilt), 0, -sin(tilt)], [0, 1, 0], [sin(tilt), 0, cos(tilt)]);
  const turn = from(turnDeg, DEGREE);
  return mulMat(mulMat(about(toward), lean), about(turn - toward));
}
