/** Densities of core parts that are usual, g/cc (common practice, no source). */
export const USUAL_PART_GCC = { least: 1.6, most: 3.5 };

/** Densities that a cover may have, g/cc: those of all builds that are tried for published numbers (`build.ts`). */
export const USUAL_COVER_GCC = { least: 1.1, most: 1.4 };
