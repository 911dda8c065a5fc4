/** The finest that a tape is read to, in. */
export const SIXTEENTH = 1 / 16;
