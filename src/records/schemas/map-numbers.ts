/** The drilled numbers that a map follows: three in inches, and the intermediate as a share of the total differential. */
export const MAP_NUMBERS = ['rgIn', 'differentialIn', 'intermediateDifferentialIn', 'asymmetry'] as const;
export type MapNumber = (typeof MAP_NUMBERS)[number];
