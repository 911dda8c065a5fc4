/** The gripping holes that an oil ring may run over. */
export const RING_OVER = ['thumb', 'middle', 'ring'] as const;
