/** The finest that a tape is read to, in. */
export const SIXTEENTH = 1 / 16;

/** The finest that a rule is read to, in. */
export const SIXTY_FOURTH = 1 / 64;
