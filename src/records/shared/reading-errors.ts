import { z } from 'zod';
import { readShared } from './shared-data.js';

const deviation = z.number().positive();

const errorsSchema = z.strictObject({
  laydownBoards: deviation,
  arrowsAgainstTargetBoards: deviation,
  arrowsReadOffBoards: deviation,
  breakpointBoards: deviation,
  breakpointFt: deviation,
  boardsAt50Ft: deviation,
  pinsBoards: deviation,
  displaySpeedMph: deviation,
  flareIn: deviation,
});

/** How far off what a person reads of a shot may be: one standard deviation of each reading. */
export type ReadingErrors = z.infer<typeof errorsSchema>;

/** What is taken where a night says nothing else (assumed, no source). */
export const USUAL_READING_ERRORS: ReadingErrors = z
  .strictObject({ about: z.string(), errors: errorsSchema })
  .parse(readShared('reading-errors.json')).errors;
