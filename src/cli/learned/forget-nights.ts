import { existsSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { InputError } from '../../base/errors.js';
import { visible, visibleJson } from '../../base/visible.js';
import { bundled, bundleOf } from '../../records/home/bundle.js';
import { shotCount } from '../../records/log/add-shot.js';
import type { Shelved } from '../../records/read/shelf.js';
import type { DrilledLayout } from '../../records/schemas/drilled-layout.js';
import type { Night } from '../../records/schemas/shot-log.js';
import { countOf } from '../../report/text/count-of.js';
import { homeOf } from '../files/home.js';
import { checkedOut, kindOfFile, writeOut } from '../files/out-file.js';
import { changeNights } from '../files/shot-log.js';
import type { LearnedCommandOptions } from '../flags/options.js';
import { isSure } from '../print/is-sure.js';
import type { Terminal } from '../terminal/terminal.js';
import { forgetLessons } from './kept-lesson.js';

const FORGET_FLAG = '--forget';

/**
 * The file that takes what is forgotten; null where none is named.
 *
 * @throws {InputError} `flag` for one that is there already: what it holds would be lost
 */
export function forgetFlag(path: string | undefined): string | null {
  if (path === undefined) return null;
  kindOfFile(path, ['json'], FORGET_FLAG);
  if (!existsSync(path)) return checkedOut(path, FORGET_FLAG);
  throw new InputError('flag', {
    field: FORGET_FLAG,
    rule: 'must name a file that is not there yet',
    got: JSON.stringify(path),
    hint: 'What is forgotten is written there first, and nothing else is to be lost.',
  });
}

/**
 * Asks, and takes nights out of the log, after they were written to a file. A night that has changed meanwhile stays.
 *
 * @param forgotten  drilled layouts with the nights to forget alone
 * @throws {InputError} `no-access` when the file cannot be written: then nothing is taken out
 */
export async function forgetNights(
  forgotten: readonly Shelved<DrilledLayout>[],
  path: string,
  options: LearnedCommandOptions,
  terminal: Terminal,
): Promise<void> {
  const what = forgotten.map(({ id, record: { nights } }) => `${shotsOn(nights)} with ${id}`).join(', ');
  if (!options.yes && !(await isSure(`Forget ${what}?`, options, terminal))) {
    terminal.stderr.write('Nothing was forgotten.\n');
    return;
  }
  const entries = forgotten.map(({ id, record }) => bundled({ kind: 'layout', id, record }));
  writeOut(path, Buffer.from(`${visibleJson(bundleOf(entries), 2)}\n`), FORGET_FLAG);
  for (const { id, record: gone } of forgotten)
    await changeNights(id, terminal, (nights) =>
      nights.filter((night) => !gone.nights.some((each) => isDeepStrictEqual(each, night))),
    );
  forgetLessons(homeOf(terminal));
  terminal.stdout.write(`Written to ${visible(path)} and taken out of the log: ${what}.\n`);
}

const shotsOn = (nights: readonly Night[]): string =>
  `${countOf(shotCount(nights), 'shot')} on ${countOf(nights.length, 'night')}`;
