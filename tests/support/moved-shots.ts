import { diagonal, type Mat3, mulMat, mulVec, rotateTensor, transpose } from '../../src/math/mat3.js';
import { tangentToward } from '../../src/math/sphere.js';
import { cross, dot, type Vec3 } from '../../src/math/vec3.js';
import { GRID } from '../../src/motion/lane/film-grid.js';
import type { Surface } from '../../src/motion/lane/surface.js';
import { releaseAxis, releaseOrientation } from '../../src/motion/shot/release.js';
import type { RandomShot } from './random-shots.js';

const MIRROR = diagonal([-1, 1, 1]);

/** The shot in a mirror along the lane: the axis points the other way across and the spin about it is reversed. */
export const mirroredShot = (shot: RandomShot): RandomShot => ({
  ...shot,
  body: movedBody(MIRROR, shot),
  release: {
    ...shot.release,
    spin: -shot.release.spin,
    axisRotation: Math.PI - shot.release.axisRotation,
    spinPhase: -(shot.release.spinPhase ?? 0),
    pap_B: mulVec(MIRROR, shot.release.pap_B),
  },
  launch: { x: -shot.launch.x, angle: -shot.launch.angle },
  surface: mirroredSurface(shot.surface),
});

/** The same shot with the ball described in a frame that is turned in the ball: nothing of it happens otherwise. */
export function turnedShot(shot: RandomShot, Q: Mat3): RandomShot {
  const release = { ...shot.release, pap_B: mulVec(Q, shot.release.pap_B), spinPhase: 0 };
  const wanted = mulMat(releaseOrientation(shot.release), transpose(Q));
  const spinPhase = turnAbout(releaseAxis(release), mulMat(wanted, transpose(releaseOrientation(release))));
  return { ...shot, body: movedBody(Q, shot), release: { ...release, spinPhase } };
}

const movedBody = (Q: Mat3, { body }: RandomShot): RandomShot['body'] => ({
  ...body,
  p_BoBcm_B: mulVec(Q, body.p_BoBcm_B),
  I_Bcm_B: rotateTensor(Q, body.I_Bcm_B),
});

/** Angle of a rotation that keeps an axis, rad, right-handed about it. */
function turnAbout(axis: Vec3, R: Mat3): number {
  const across = tangentToward(axis, Math.abs(axis[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0]);
  const there = mulVec(R, across);
  return Math.atan2(dot(axis, cross(across, there)), dot(across, there));
}

const mirrored = new WeakMap<Surface, Surface>();

/** Columns of the grid in the other order; one for each lane, as many shots share it. */
function mirroredSurface(surface: Surface): Surface {
  const { film } = surface;
  const other = mirrored.get(surface) ?? {
    ...surface,
    film: film?.map((_, i) => film[i + GRID.COLUMNS - 1 - 2 * (i % GRID.COLUMNS)]) ?? null,
  };
  mirrored.set(surface, other);
  return other;
}
