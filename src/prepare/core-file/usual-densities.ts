import { HEAVIEST_COVER, LIGHTEST_COVER } from '../../ball/core/build.js';
import { GRAM_PER_CC, to } from '../../base/units.js';

/** Densities of core parts that are usual, g/cc (common practice, no source). */
export const USUAL_PART_GCC = { least: 1.6, most: 3.5 };

/** Densities that a cover may have, g/cc: those of all builds that are tried for published numbers. */
export const USUAL_COVER_GCC = {
  least: to(LIGHTEST_COVER, GRAM_PER_CC),
  most: to(HEAVIEST_COVER, GRAM_PER_CC),
};
