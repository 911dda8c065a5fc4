/** The drilled numbers a person compares, each in inches. */
export const DRILLED_ROWS = [
  { key: 'rgIn', name: 'RG' },
  { key: 'differentialIn', name: 'total differential' },
  { key: 'intermediateDifferentialIn', name: 'intermediate diff.' },
] as const;
