import { type PublishedNumbers, wantedFirstMoment, wantedMoments } from '../../ball/core/published.js';
import type { MassProperties } from '../../ball/mass/mass-properties.js';
import { from, INCH, OUNCE } from '../../base/units.js';
import { hypot } from '../../math/hypot.js';
import { addMat, diagonal, type Mat3, mulVec, rotateTensor } from '../../math/mat3.js';
import { addScaled, sub, type Vec3 } from '../../math/vec3.js';
import { type BallUncertainty, unsureNumbers } from '../../records/schemas/ball-uncertainty.js';
import type { Draws } from './draws.js';

/** How a made ball differs from the numbers that its record gives. SI. */
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
 * How far made balls lie from their published numbers at most; all between is as likely. Differentials by 3 % (published, a USBC
 * research note on CG placement: made balls lie within 3 % of design); RG, top weight and pin-to-CG by what a scale and a
 * tape at the counter are off (common practice, no source).
 */
export const MADE_WITHIN = { rgIn: 0.004, differentialShare: 0.03, topWeightOz: 0.25, pinToCgIn: 0.25 };

/**
 * One way a ball may be made.
 *
 * A number that was guessed is normal, with the variances of the guess and of the making added; both differentials share one
 * draw, so that a ball with more of the one has more of the other (assumed, no source).
 *
 * @param uncertainty  of guessed numbers, one standard deviation, record units
 */
export function drawMade(
  { within, normal }: Draws,
  { radius, differential, intermediateDifferential }: PublishedNumbers,
  uncertainty: BallUncertainty = {},
): Made {
  const off = (what: 'lowRg' | 'differential' | 'topWeight' | 'pinToCg', most: number, guess: number) =>
    guess > 0 ? hypot(guess, most / Math.sqrt(3)) * normal(what) : within(what, -most, most);
  const { rgIn = 0, differentialIn = 0, intermediateDifferentialIn = 0 } = uncertainty;
  const { topWeightOz = 0, pinToCgIn = 0 } = uncertainty;
  const share = MADE_WITHIN.differentialShare;
  return {
    lowRg: off('lowRg', from(MADE_WITHIN.rgIn, INCH), from(rgIn, INCH)),
    differential: off('differential', share * differential, from(differentialIn, INCH)),
    intermediateDifferential: off(
      'differential',
      share * intermediateDifferential,
      from(intermediateDifferentialIn, INCH),
    ),
    topWeight: off('topWeight', from(MADE_WITHIN.topWeightOz, OUNCE), from(topWeightOz, OUNCE)),
    pinToCg: off('pinToCg', from(MADE_WITHIN.pinToCgIn, INCH) / radius, from(pinToCgIn, INCH) / radius),
  };
}

/** Of a ball's making only what its record guessed. */
export function guessedOf(made: Made, uncertainty: BallUncertainty): Made {
  if (unsureNumbers(uncertainty).length === 0) return AS_PUBLISHED;
  const kept = (key: keyof Made, guess: number | undefined): number => (guess ? made[key] : 0);
  return {
    lowRg: kept('lowRg', uncertainty.rgIn),
    differential: kept('differential', uncertainty.differentialIn),
    intermediateDifferential: kept('intermediateDifferential', uncertainty.intermediateDifferentialIn),
    topWeight: kept('topWeight', uncertainty.topWeightOz),
    pinToCg: kept('pinToCg', uncertainty.pinToCgIn),
  };
}

/**
 * The drilled ball that a slightly different undrilled ball would become.
 *
 * What the making changes of the undrilled ball's moments of inertia and first moment is added to the drilled one's: the holes take the
 * same matter. Its own parallel-axis term, a few hundred-thousandths of the inertia, is left out. Of a guessed differential that is far off, cores
 * fitted again show a tenth to a quarter less once drilled, since holes take more of a heavier core.
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
