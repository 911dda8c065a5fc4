import { z } from 'zod';
import { WISHED_IDS } from '../../schemas/reaction-numbers.js';
import { READING_IDS } from '../../schemas/shot-log.js';

/* What params of statements are made of. */

export const n = z.number();

/** From the least to the greatest. */
export const range = z.strictObject({ least: n, most: n });

/** A reaction number that a wish is about; its name carries its unit. */
export const wishReading = z.enum(WISHED_IDS);

export const gripHole = z.enum(['thumb', 'middle', 'ring']);

/** A reading of a logged shot that is learned from. */
export const logReading = z.enum(READING_IDS).exclude(['displaySpeedMph']);
