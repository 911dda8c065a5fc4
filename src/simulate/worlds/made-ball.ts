import { type PublishedNumbers, wantedFirstMoment, wantedMoments } from '../../ball/core/published.js';
import type { MassProperties } from '../../ball/mass/mass-properties.js';
import { addMat, diagonal, type Mat3, mulVec, rotateTensor } from '../../math/mat3.js';
import { addScaled, sub, type Vec3 } from '../../math/vec3.js';

/** How a manufactured ball differs from the numbers in its record. SI. */
export interface Made {
  /** Added to the low RG, m. */
  readonly lowRg: number;
  /** Added to the total differential, and to the intermediate one, m. */
  readonly differential: number;
  readonly intermediateDifferential: number;
  /** Added to the top weight, kg, an ounce being moment over radius. */
  readonly topWeight: number;
  /** Added to the arc from the pin to the CG, rad. */
  readonly pinToCg: number;
}

export const AS_PUBLISHED: Made = {
  lowRg: 0,
  differential: 0,
  intermediateDifferential: 0,
  topWeight: 0,
  pinToCg: 0,
};

/**
 * The drilled ball that a slightly different undrilled ball becomes.
 *
 * The differences in the undrilled ball's moments of inertia and first moment are added to those of the drilled ball, as if the holes
 * took the same matter. The change of the parallel-axis term, a few hundred-thousandths of the inertia, is neglected. For a guessed
 * differential that is far off, cores fitted again give a tenth to a quarter less after drilling, since holes take more of a heavier core.
 *
 * @param R_BC  the core's orientation in the ball
 */
export function asMade(
  drilled: MassProperties,
  R_BC: Mat3,
  published: PublishedNumbers,
  made: Made,
): MassProperties {
  if (made === AS_PUBLISHED) return drilled;
  const differential = Math.max(0, published.differential + made.differential);
  const other: PublishedNumbers = {
    ...published,
    lowRg: published.lowRg + made.lowRg,
    differential,
    intermediateDifferential: Math.min(
      differential,
      Math.max(0, published.intermediateDifferential + made.intermediateDifferential),
    ),
    topMoment: Math.max(0, published.topMoment + made.topWeight * published.radius),
    pinToCg: Math.max(0, published.pinToCg + made.pinToCg),
  };
  const [low, middle, high]: Vec3 = sub(wantedMoments(other), wantedMoments(published));
  const first_C = sub(wantedFirstMoment(other), wantedFirstMoment(published));
  return {
    mass: drilled.mass,
    p_BoBcm_B: addScaled(drilled.p_BoBcm_B, 1 / drilled.mass, mulVec(R_BC, first_C)),
    I_Bcm_B: addMat(drilled.I_Bcm_B, rotateTensor(R_BC, diagonal([high, middle, low]))), // C: x marker, z pin
  };
}
