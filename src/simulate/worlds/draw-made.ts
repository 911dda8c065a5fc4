import type { PublishedNumbers } from '../../ball/core/published.js';
import { from, INCH, OUNCE } from '../../base/units.js';
import { hypot } from '../../math/hypot.js';
import { type BallUncertainty, unsureNumbers } from '../../records/schemas/ball-uncertainty.js';
import type { Draws } from './draws.js';
import { AS_PUBLISHED, type Made } from './made-ball.js';

/**
 * Greatest difference between a manufactured ball and its published numbers; uniform up to there. Differentials: 3 % (published, a USBC
 * research note on CG placement: manufactured balls lie within 3 % of design). RG, top weight and pin-to-CG: the errors of a scale and a
 * tape in a shop (common practice, no source).
 */
export const MADE_WITHIN = { rgIn: 0.004, differentialShare: 0.03, topWeightOz: 0.25, pinToCgIn: 0.25 };

/**
 * How one ball may be manufactured.
 *
 * A guessed number is normal, with the variances of guess and manufacture added. Both differentials share one
 * draw, so that a ball with more of one has more of the other (assumed, no source).
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

/** The part of a ball's manufacture that concerns numbers guessed in its record. */
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
