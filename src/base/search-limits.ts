/* What a person may ask of a search, on the command line and of the package alike. */

export const USUAL_SEED = 1;
export const GREATEST_SEED = 2 ** 31 - 1;

export const MOST_WORKERS = 64;

/** Layouts that are listed. */
export const USUAL_TOP = 4;
export const MOST_TOP = 10;
