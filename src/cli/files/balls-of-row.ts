import { basename } from 'node:path';
import { InputError, quotedTyped } from '../../base/errors.js';
import type { Ball } from '../../records/schemas/ball.js';
import { nearestWord } from '../../records/text/nearest-word.js';
import type { Listed, ListedBowler } from './load-list.js';

/**
 * The balls that a row of a coach's list names, by id, file or name, with semicolons, commas or line breaks between; all balls where it
 * names none.
 *
 * @throws {InputError} `unknown-ball`
 */
export function ballsOfRow(
  { balls: typed = '', record: { name } }: ListedBowler,
  balls: readonly Listed<Ball>[],
): readonly Ball[] {
  if (typed.trim() === '') return balls.map(({ record }) => record);
  const namedBy = (word: string) => balls.find((ball) => namesOf(ball).includes(wordIn(word)));
  // a ball's name may have commas in it
  const words = typed.split(/[;\n]/).flatMap((part) => (namedBy(part) ? [part] : part.split(',')));
  const found = words
    .map((word) => word.trim())
    .filter((word) => word !== '')
    .map((word) => {
      const ball = namedBy(word);
      if (ball) return ball.record;
      const known = balls.map((each) => each.word ?? each.record.name);
      const near = nearestWord(word, known);
      throw new InputError('unknown-ball', {
        field: `balls of ${name}`,
        rule: 'must name balls of --balls',
        got: quotedTyped(word),
        hint: near ? `Did you mean ${near}?` : `These are there: ${known.join(', ')}.`,
      });
    });
  return balls.map(({ record }) => record).filter((record) => found.includes(record));
}

const wordIn = (text: string): string => text.trim().toLowerCase();

/** What a ball may be called: its name, its word on the command line, and its file's name alone. */
const namesOf = ({ record, word }: Listed<Ball>): readonly string[] =>
  [record.name, ...(word === null ? [] : [word, basename(word).replace(/\.json$/i, '')])].map(wordIn);
