import { z } from 'zod';
import { type ReadingErrors, USUAL_READING_ERRORS } from '../shared/reading-errors.js';
import { quantity } from './quantity.js';

const deviation = (most: number, unit: string, what: string) =>
  quantity(0.05, most, { unit, what: `${what} (one standard deviation)` }).optional();

/** How far off the readings of a night may be; what is left out is taken from `shared/reading-errors.json` and said. */
export const readingErrorsSchema = z
  .strictObject({
    laydownBoards: deviation(5, 'boards', 'Of the laydown board'),
    arrowsAgainstTargetBoards: deviation(5, 'boards', 'Of the board at the arrows, read against a target'),
    arrowsReadOffBoards: deviation(5, 'boards', 'Of the board at the arrows, read off without a target'),
    breakpointBoards: deviation(8, 'boards', 'Of the board of the breakpoint'),
    breakpointFt: deviation(15, 'ft', 'Of the distance of the breakpoint'),
    boardsAt50Ft: deviation(8, 'boards', 'Of the board at 50 ft'),
    pinsBoards: deviation(5, 'boards', 'Of the board at the pins'),
    displaySpeedMph: deviation(5, 'mph', 'Of the speed on the display'),
    flareIn: deviation(3, 'in', 'Of the flare by tape'),
  } satisfies Record<keyof ReadingErrors, z.ZodType>)
  .meta({ id: 'reading-errors', description: 'How far off what a person reads may be.' });

/** How far off the readings of a night are taken to be. */
export const readingErrorsOf = ({
  readingErrors,
}: {
  readonly readingErrors?: z.infer<typeof readingErrorsSchema> | undefined;
}): ReadingErrors => ({ ...USUAL_READING_ERRORS, ...(readingErrors as Partial<ReadingErrors>) });
