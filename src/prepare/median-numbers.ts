import { median } from 'simple-statistics';
import type { InertiaNumbers } from '../ball/drill/drilled-numbers.js';
import { INCH, to } from '../base/units.js';
import { hypot } from '../math/hypot.js';

/** The three numbers of a drilled ball that differ between cores with the same published numbers, m. */
export type RgNumbers = Pick<InertiaNumbers, 'lowRg' | 'differential' | 'intermediateDifferential'>;

/** The median of each number over several cores. */
export const medianNumbers = (all: readonly RgNumbers[]): RgNumbers => ({
  lowRg: median(all.map(({ lowRg }) => lowRg)),
  differential: median(all.map(({ differential }) => differential)),
  intermediateDifferential: median(all.map(({ intermediateDifferential }) => intermediateDifferential)),
});

/** How far one core's numbers lie from others, m. */
export const numbersApart = (a: RgNumbers, b: RgNumbers): number =>
  hypot(
    a.lowRg - b.lowRg,
    a.differential - b.differential,
    a.intermediateDifferential - b.intermediateDifferential,
  );

/** The numbers as an answer gives them. */
export const inchesOf = ({ lowRg, differential, intermediateDifferential }: RgNumbers) => ({
  rgIn: to(lowRg, INCH),
  differentialIn: to(differential, INCH),
  intermediateDifferentialIn: to(intermediateDifferential, INCH),
});
