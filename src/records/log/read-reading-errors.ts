import { InputError, quotedTyped } from '../../base/errors.js';
import { readingErrorsSchema } from '../schemas/reading-errors.js';
import type { Night } from '../schemas/shot-log.js';
import type { ReadingErrors } from '../shared/reading-errors.js';
import { nearestWord } from '../text/nearest-word.js';
import { readReading } from './read-reading.js';

/** Reading errors as far as they are given. */
type GivenErrors = NonNullable<Night['readingErrors']>;

type ErrorId = keyof ReadingErrors;

/** The word by which each is typed, and which of the units a person reads it is in. */
const ERROR_WORDS = {
  laydownBoards: ['laydown', 'boards'],
  arrowsAgainstTargetBoards: ['arrows', 'boards'],
  arrowsReadOffBoards: ['arrows-read-off', 'boards'],
  breakpointBoards: ['breakpoint', 'boards'],
  breakpointFt: ['breakpoint-ft', 'lane'],
  boardsAt50Ft: ['at-50', 'boards'],
  pinsBoards: ['pins', 'boards'],
  displaySpeedMph: ['display-speed', 'speed'],
  flareIn: ['flare', 'flare'],
} as const satisfies Record<ErrorId, readonly [word: string, quantity: string]>;

const IDS = Object.keys(ERROR_WORDS) as readonly ErrorId[];
const WORDS = IDS.map((id) => ERROR_WORDS[id][0]);

/** Takes back what was said of reading errors before. */
const USUAL_ERRORS = 'usual';

/**
 * Reading errors as they are typed: `arrows=1,pins=0.5`; `usual` for none of one's own.
 *
 * @param field   where a fault says that they stand
 * @param bareOf  the unit of a number that is typed without one
 * @throws {InputError} `reading`
 */
export function readReadingErrors(
  text: string,
  field: string,
  bareOf: (quantity: (typeof ERROR_WORDS)[ErrorId][1]) => string | undefined,
): GivenErrors {
  if (text.trim() === USUAL_ERRORS) return {};
  const errors: { -readonly [K in ErrorId]?: number } = {};
  for (const part of text.slice(0, MOST_SIGNS).split(/[,;\s]+(?=[a-z])/i)) {
    const [word = '', size = ''] = part.split('=', 2).map((each) => each.trim());
    const id = IDS.find((each) => ERROR_WORDS[each][0] === word.toLowerCase());
    if (id === undefined) {
      const near = nearestWord(word, WORDS);
      throw new InputError('reading', {
        field,
        rule: 'must be readings with their errors: arrows=1,pins=0.5',
        got: quotedTyped(part),
        hint: `${near ? `Did you mean ${near}? ` : ''}Known are ${WORDS.join(', ')}; ${USUAL_ERRORS} takes your own back.`,
      });
    }
    errors[id] = readReading(
      size,
      `${field} ${word}`,
      readingErrorsSchema.shape[id].unwrap(),
      bareOf(ERROR_WORDS[id][1]),
    );
  }
  return errors;
}

/** Far more than all of them need. */
const MOST_SIGNS = 500;

/** Reading errors as they are typed, in the units of the record. */
export const formatReadingErrors = (errors: GivenErrors): string =>
  IDS.flatMap((id) => (errors[id] === undefined ? [] : [`${ERROR_WORDS[id][0]}=${errors[id]}`])).join(',');
