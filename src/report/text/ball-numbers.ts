import type { BallUncertainty, UncertainBallKey } from '../../records/schemas/ball-uncertainty.js';
import { type Quantity, type Units, withUnit } from './display-units.js';
import { listed } from './listed.js';

/** What numbers of a ball are called that may be guessed, and what they are measured in. */
export const BALL_NUMBERS: Readonly<
  Record<UncertainBallKey, { readonly name: string; readonly quantity: Quantity }>
> = {
  rgIn: { name: 'RG', quantity: 'gyration' },
  differentialIn: { name: 'differential', quantity: 'gyration' },
  intermediateDifferentialIn: { name: 'mass bias', quantity: 'gyration' },
  pinToCgIn: { name: 'pin to CG', quantity: 'arc' },
  topWeightOz: { name: 'top weight', quantity: 'ounce' },
};

/** Names of numbers: `RG and differential`. */
export const ballNames = (keys: readonly UncertainBallKey[]): string =>
  listed(keys.map((key) => BALL_NUMBERS[key].name));

/** How far off each number may be that is not known: `RG ± 0.030 in, top weight ± 0.5 oz`. */
export const ballDeviations = (
  keys: readonly UncertainBallKey[],
  uncertainty: BallUncertainty,
  units: Units,
): string =>
  keys
    .map((key) => {
      const { name, quantity } = BALL_NUMBERS[key];
      return `${name} ± ${withUnit(uncertainty[key] ?? 0, units[quantity])}`;
    })
    .join(', ');
