import { INCH, MM } from './units.js';

/** Smallest division to which a tape is read, in. */
export const SIXTEENTH = 1 / 16;

/** The same of a metric tape, in. */
export const MILLIMETRE_IN = MM / INCH;

/** Smallest division to which a ruler is read, in. */
export const SIXTY_FOURTH = 1 / 64;
