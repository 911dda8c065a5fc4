/** Names of what goes into the fitted regression's graph, and of what comes out. */
export const INPUT = 'features';
export const TUNING = 'tuning';
export const TUNING_BIAS = 'tuning-bias';
export const OUTPUT = 'reaction';
export const BASIS = 'basis';
