import { type Fault, InputError } from '../../base/errors.js';
import type { LoggedShot } from '../schemas/shot-log.js';
import { readReading } from './read-reading.js';
import { LINE_READINGS, READINGS, readingSchema } from './readings.js';

/** The four boards of a shot as they are in one line; one that was not seen is left out. */
export type ShotLine = Pick<LoggedShot, (typeof LINE_READINGS)[number] | 'gutter'>;

export const NOT_SEEN = /^[-–—?]$/;
export const IN_GUTTER = /^g(utter)?$/i;

/** The form of a line, for messages. */
export const LINE_RULE =
  'Four boards from the bowler’s own side, in this order: laydown, arrows, breakpoint, pins. A dash stands for not seen, g at the pins for a gutter ball.';

/**
 * The line of one shot: laydown, arrows, breakpoint, pins: `20 14 8 17`, `20 14 - g`.
 *
 * @throws {InputError} `shot-line`, with all faults at once
 */
export function readLine(words: readonly string[]): ShotLine {
  if (words.length !== LINE_READINGS.length)
    throw new InputError('shot-line', {
      field: 'the shot',
      rule: 'must be four boards: laydown, arrows, breakpoint, pins',
      got: `${words.length}: ${words.join(' ')}`,
      hint: 'Such as 20 14 8 17. A dash stands for not seen, g at the pins for a gutter ball.',
    });
  const line: { -readonly [K in keyof ShotLine]: ShotLine[K] } = {};
  const faults: Fault[] = [];
  LINE_READINGS.forEach((id, i) => {
    const word = words[i];
    if (NOT_SEEN.test(word)) return;
    if (id === 'pinsBoard' && IN_GUTTER.test(word)) {
      line.gutter = true;
      return;
    }
    try {
      line[id] = readReading(word, `the ${READINGS[id].name}`, readingSchema(id));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      faults.push(...error.faults);
    }
  });
  if (faults.length > 0) throw new InputError('shot-line', faults);
  return line;
}

/** A shot as the line that gives its boards: `20 14 8 17`. */
export const formatLine = ({ gutter, ...shot }: ShotLine): string =>
  LINE_READINGS.map((id) => (id === 'pinsBoard' && gutter ? 'g' : (shot[id] ?? '-'))).join(' ');
