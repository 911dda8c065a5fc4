/** Smallest division to which a tape is read, in. */
export const SIXTEENTH = 1 / 16;

/** Smallest division to which a ruler is read, in. */
export const SIXTY_FOURTH = 1 / 64;
