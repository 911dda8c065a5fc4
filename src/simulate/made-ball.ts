import { type PublishedNumbers, wantedFirstMoment, wantedMoments } from '../ball/core/published.js';
import type { MassProperties } from '../ball/mass/mass-properties.js';
import { from, INCH, OUNCE } from '../base/units.js';
import { addMat, diagonal, type Mat3, mulVec, rotateTensor } from '../math/mat3.js';
import { addScaled, sub, type Vec3 } from '../math/vec3.js';
import type { Draws } from './draws.js';

/** How a made ball differs from its published numbers. SI. */
export interface Made {
  /** Added to the low RG, m. */
  readonly lowRg: number;
  /** Share by which both differentials are greater. */
  readonly differential: number;
  /** Added to the top weight, kg, an ounce being moment over radius. */
  readonly topWeight: number;
  /** Added to the arc from the pin to the CG, rad. */
  readonly pinToCg: number;
}

export const AS_PUBLISHED: Made = { lowRg: 0, differential: 0, topWeight: 0, pinToCg: 0 };

/**
 * How far made balls lie from their published numbers at most; all between is as likely. Differentials by 3 % (published, a USBC
 * research note on CG placement: made balls lie within 3 % of design); RG, top weight and pin-to-CG by what a scale and a
 * tape at the counter are off (common practice, no source).
 */
export const MADE_WITHIN = { rgIn: 0.004, differentialShare: 0.03, topWeightOz: 0.25, pinToCgIn: 0.25 };

const MOST_OFF = {
  lowRg: from(MADE_WITHIN.rgIn, INCH),
  differential: MADE_WITHIN.differentialShare,
  topWeight: from(MADE_WITHIN.topWeightOz, OUNCE),
  pinToCg: from(MADE_WITHIN.pinToCgIn, INCH),
};

/** One way a ball may be made. @param radius  m */
export const drawMade = ({ within }: Pick<Draws, 'within'>, radius: number): Made => ({
  lowRg: within('lowRg', -MOST_OFF.lowRg, MOST_OFF.lowRg),
  differential: within('differential', -MOST_OFF.differential, MOST_OFF.differential),
  topWeight: within('topWeight', -MOST_OFF.topWeight, MOST_OFF.topWeight),
  pinToCg: within('pinToCg', -MOST_OFF.pinToCg / radius, MOST_OFF.pinToCg / radius),
});

/**
 * The drilled ball as it would be had the undrilled one been made a little otherwise.
 *
 * What the making changes of the undrilled ball's moments of inertia and first moment is added to the drilled one's: the holes take the
 * same matter. Its own parallel-axis term, a few hundred-thousandths of the inertia, is left out.
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
  const other: PublishedNumbers = {
    ...published,
    lowRg: published.lowRg + made.lowRg,
    differential: published.differential * (1 + made.differential),
    intermediateDifferential: published.intermediateDifferential * (1 + made.differential),
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
