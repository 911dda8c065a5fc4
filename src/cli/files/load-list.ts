import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { InputError } from '../../base/errors.js';
import { shortened } from '../../base/visible.js';
import { readCoachList } from '../../records/read/bowler-list.js';
import { isListFile, readListText } from '../../records/read/list-text.js';
import { LIST_FILE, namesIn } from '../../records/read/read-file.js';
import type { Ball } from '../../records/schemas/ball.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { Lane } from '../../records/schemas/lane.js';
import { missingFlag } from '../flags/flags.js';
import { printGuessedEncoding } from '../print/print-guessed-encoding.js';
import { collectAll } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';
import { loadBall, loadBowler, loadLane } from './load-record.js';

/** A record, and what it is called on a command line; null for a row of a coach's list, which has no word of its own. */
export interface Listed<T> {
  readonly record: T;
  readonly word: string | null;
}

/** A bowler, and the balls that a row of a coach's list names for it, as typed. */
export interface ListedBowler extends Listed<Bowler> {
  readonly balls?: string;
}

/** Bowlers named by `--bowlers`: a folder of records, a coach's list, or files and ids with commas between. */
export const loadBowlers = (given: string | undefined, terminal: Terminal): readonly ListedBowler[] =>
  given !== undefined && isListFile(given)
    ? withOwnNames(
        '--bowlers',
        readCoachList(readListText(given, LIST_FILE, printGuessedEncoding(terminal)), given).map(
          ({ bowler, balls }) => ({ record: bowler, word: null, balls }),
        ),
      )
    : loadList('--bowlers', given, loadBowler, terminal);

/** Balls named by `--balls`: a folder of records, or files and ids with commas between. */
export const loadBalls = (given: string | undefined, terminal: Terminal): readonly Listed<Ball>[] =>
  loadList('--balls', given, loadBall, terminal);

/** Lanes named by `--lanes`: a folder of records, or files and ids with commas between. */
export const loadLanes = (given: string | undefined, terminal: Terminal): readonly Listed<Lane>[] =>
  loadList('--lanes', given, loadLane, terminal);

function loadList<T extends { readonly name: string }>(
  flag: string,
  given: string | undefined,
  load: (given: string | undefined, terminal: Terminal, flag: string) => T,
  terminal: Terminal,
): readonly Listed<T>[] {
  if (given === undefined)
    throw missingFlag(flag, 'Give a folder of records, or files and ids with commas between: kim,lee.');
  const names = wordsOf(given);
  if (names.length === 0)
    throw new InputError('empty-list', {
      field: flag,
      rule: 'must be a folder with records in it',
      got: `no .json file in ${given}`,
    });
  return withOwnNames(
    flag,
    collectAll(names, (word) => ({ record: load(word, terminal, flag), word })),
  );
}

/** What each record of a folder or of a list with commas is called on a command line, in its order. */
const wordsOf = (given: string): readonly string[] =>
  isFolder(given)
    ? namesIn(given)
        .filter((file) => /^[^.].*\.json$/i.test(file)) // other systems leave hidden files beside those they copy
        .sort()
        .map((file) => join(given, file))
    : given.split(',').map((name) => name.trim());

function withOwnNames<L extends Listed<{ readonly name: string }>>(
  flag: string,
  listed: readonly L[],
): readonly L[] {
  const seen = new Set<string>();
  const twice = new Set(
    listed.map(({ record }) => record.name).filter((name) => seen.has(name) || !seen.add(name)),
  );
  if (twice.size > 0)
    throw new InputError('same-name', {
      field: flag,
      rule: 'must have a name of its own for each record',
      got: `more than one called ${shortened([...twice].map((name) => JSON.stringify(name)).join(', '), 400)}`,
      hint: 'The answer tells them apart by name.',
    });
  return listed;
}

const isFolder = (path: string): boolean => existsSync(path) && statSync(path).isDirectory();
