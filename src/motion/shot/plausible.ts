import { symmetricEigen } from '../../math/eigen3.js';
import { norm } from '../../math/vec3.js';
import type { RollingBody } from './body.js';
import type { Launch, Release } from './release.js';
import { LONGEST_SHOT, RING_PLACES, type ShotSettings } from './shot-settings.js';

const MOST_STEPS = 1e6;
const FEWEST_RING_PLACES = 8;

/** Whether a shot can be computed at all: finite numbers, a body with mass and inertia, a usable step. */
export function isPlausible(
  body: RollingBody,
  release: Release,
  launch: Launch,
  settings: ShotSettings,
): boolean {
  const { freshSurface, step, gravity = 0, length = 1, halfWidth = 1, longest = LONGEST_SHOT } = settings;
  const { ringPlaces = RING_PLACES } = settings;
  const { speed, spin, axisTilt, axisRotation, spinPhase = 0, pap_B } = release;
  const numbers = [
    body.mass,
    body.radius,
    ...body.p_BoBcm_B,
    ...body.I_Bcm_B.flat(),
    ...[speed, spin, axisTilt, axisRotation, spinPhase, ...pap_B],
    ...[launch.x, launch.angle, step, gravity],
    ...(freshSurface ? [freshSurface.bandWidth, freshSurface.carriedShare, freshSurface.wornPerPass] : []),
  ];
  return (
    numbers.every(Number.isFinite) &&
    body.mass > 0 &&
    norm(body.p_BoBcm_B) < body.radius && // so the radius is above 0
    symmetricEigen(body.I_Bcm_B).values[0] > 0 &&
    norm(pap_B) > 0 &&
    gravity >= 0 &&
    step > 0 &&
    longest > 0 &&
    longest / step <= MOST_STEPS &&
    length > 0 &&
    halfWidth > 0 &&
    Number.isInteger(ringPlaces) &&
    ringPlaces >= FEWEST_RING_PLACES &&
    (!freshSurface ||
      (freshSurface.bandWidth > 0 && freshSurface.carriedShare >= 0 && isShare(freshSurface.wornPerPass)))
  );
}

const isShare = (value: number): boolean => value >= 0 && value <= 1;
