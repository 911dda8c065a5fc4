/** Names of the inputs and outputs of the fitted regression's graph. */
export const INPUT = 'features';
export const TUNING = 'tuning';
export const TUNING_BIAS = 'tuning-bias';
export const OUTPUT = 'reaction';
export const BASIS = 'basis';
