import { fromColumns, type Mat3, mulMat, transpose } from '../../math/mat3.js';
import { cos, sin } from '../../math/sin-cos.js';
import { addScaled, cross, dot, norm, rotateAbout, scale, unit, type Vec3 } from '../../math/vec3.js';

/** How a right-hander releases the ball: m/s, rad/s, rad. */
export interface Release {
  readonly speed: number;
  readonly spin: number;
  /** Elevation of the axis (the PAP) over the lane. */
  readonly axisTilt: number;
  /** Turn of the axis out of the foul line's direction: 0 rolls straight down the lane, 90° all to the left. */
  readonly axisRotation: number;
  /** Positive axis point: unit vector from Bo, expressed in B. */
  readonly pap_B: Vec3;
  /** Turn of the ball about its axis at release, right-handed about the PAP; 0 when left out. */
  readonly spinPhase?: number;
}

/** Line of the centre of mass at the foul line: lateral position (m, W) and heading (rad, positive toward the right). */
export interface Launch {
  readonly x: number;
  readonly angle: number;
}

/**
 * The PAP at release, unit vector expressed in W. The ball spins by +spin about it.
 *
 * With the fingers up, the PAP lies to the right of a right-hander's grip. But the ball leaves the hand with
 * the fingers down and the hand behind it, so the PAP lies to the left and, by the axis rotation,
 * back toward the bowler, who sees the ball turn counterclockwise about it. With the other pole the axis would migrate away from
 * the mass bias instead of toward it, and every ring would cross the thumb hole.
 */
export const releaseAxis = ({ axisTilt, axisRotation }: Release): Vec3 => [
  -cos(axisTilt) * cos(axisRotation),
  -cos(axisTilt) * sin(axisRotation),
  sin(axisTilt),
];

/**
 * Orientation of the ball at release, `R_WB`.
 *
 * The PAP lies on the release axis. The ball is turned about it so that the direction up along the VAL, in which
 * the fingers point, is as nearly down as possible, and then by the spin phase. A bowler's hand fixes that angle only roughly.
 */
export function releaseOrientation(release: Release): Mat3 {
  const { axisTilt, axisRotation, spinPhase = 0 } = release;
  const p_W = releaseAxis(release);
  const steepest_W: Vec3 = [
    -sin(axisTilt) * cos(axisRotation),
    -sin(axisTilt) * sin(axisRotation),
    -cos(axisTilt),
  ];
  const up_W = rotateAbout(steepest_W, p_W, spinPhase);
  const p_B = unit(release.pap_B);
  const up_B = upAlongVal(p_B);
  const frame_W = fromColumns(p_W, up_W, cross(p_W, up_W));
  const frame_B = fromColumns(p_B, up_B, cross(p_B, up_B));
  return mulMat(frame_W, transpose(frame_B));
}

/** Unit tangent at the PAP toward the fingers (y of B), or toward the grip centre where the PAP lies on that axis itself. */
function upAlongVal(p_B: Vec3): Vec3 {
  const toward = (u: Vec3): Vec3 => addScaled(u, -dot(u, p_B), p_B);
  const up = toward([0, 1, 0]);
  const length = norm(up);
  return length > 1e-9 ? scale(1 / length, up) : unit(toward([0, 0, 1]));
}
