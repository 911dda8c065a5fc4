import { InputError } from '../../base/errors.js';
import { visible, visibleJson } from '../../base/visible.js';
import type { ShelfAnswer } from '../../records/answers/shelf-answer.js';
import { type Bundled, bundled, bundleOf, type Imported, importedFrom } from '../../records/home/bundle.js';
import { keepAll, removeKept, renameKept } from '../../records/home/change-records.js';
import { keepCore } from '../../records/home/kept-core.js';
import { allKept, type KeptRecord, pathOf, readKept } from '../../records/home/saved-records.js';
import { formatBowlerList } from '../../records/read/bowler-list.js';
import { readCore } from '../../records/read/read-core.js';
import { BUNDLE_FILE, fileBeside } from '../../records/read/read-file.js';
import type { RecordOf } from '../../records/read/record-kinds.js';
import { demoShelf } from '../../records/read/shelf.js';
import { ballRecord } from '../../records/schemas/ball.js';
import { RECORD_KINDS } from '../../records/schemas/kept-record.js';
import { VERSION } from '../../records/shared/version.js';
import { checkedId, idFrom } from '../../records/text/record-id.js';
import { shelfReport } from '../../report/screens/shelf-report.js';
import { homeOf } from '../files/home.js';
import { keptName } from '../files/kept-name.js';
import { layoutFromFlags } from '../files/layout-flags.js';
import { SHELF_ACTIONS } from '../flags/flag-table.js';
import { missingFlag, oneOf } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import { oneFormat } from '../flags/one-format.js';
import type { ShelfOptions } from '../flags/options.js';
import { isSure } from '../print/is-sure.js';
import { printAnswer } from '../print/print-answer.js';
import { printGuessedEncoding } from '../print/print-guessed-encoding.js';
import { collectFaults, InputErrors } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';
import { notOneRecord, notTwoIds } from './shelf-words.js';

/** What an action is given: the words after it, the flags, where things are kept, the terminal. */
interface Given {
  readonly words: readonly string[];
  readonly options: ShelfOptions;
  readonly home: string;
  readonly terminal: Terminal;
}

/** `flarewise shelf`: the records a person keeps. */
export async function shelfCommand(
  options: ShelfOptions,
  terminal: Terminal,
  [action = 'list', ...words]: readonly string[],
): Promise<void> {
  const name = oneOf('the action', action, SHELF_ACTIONS, 'flarewise shelf --help tells what each does.');
  collectFaults(globalFlags(options, terminal));
  await ACTIONS[name]({ words, options, home: homeOf(terminal), terminal });
}

const ACTIONS: Record<(typeof SHELF_ACTIONS)[number], (given: Given) => void | Promise<void>> = {
  list: async ({ options, home, terminal }) => {
    const { bowlers, balls, lanes } = demoShelf();
    const records = balls.map(({ id, record }) => ({ id, record: ballRecord(record) }));
    const demos = { bowler: bowlers, ball: records, lane: lanes, layout: [] };
    const rows = [
      ...allKept(home).map((kept) => ({ ...kept, demo: false })),
      ...RECORD_KINDS.flatMap((kind) => demos[kind].map((row) => ({ kind, ...row, demo: true }))),
    ];
    const answer: ShelfAnswer = {
      schema: 'flarewise/shelf-answer/1',
      version: VERSION,
      folder: home,
      records: rows.map((row) => ('error' in row ? { ...row, error: row.error.message } : row)),
    };
    await printAnswer(answer, (page) => shelfReport(answer, page), options, terminal);
  },

  show: ({ words, home, terminal }) => {
    const { kind, id } = keptName(home, theOne(words, 'flarewise shelf show kim'));
    terminal.stderr.write(`${visible(pathOf(home, { kind, id }))}\n`);
    terminal.stdout.write(json(readKept(home, kind, id)));
  },

  rename: async (given) => {
    const { words, home } = given;
    if (words.length !== 2) throw notTwoIds(words);
    const name = keptName(home, words[0]);
    await renameKept(home, name, checkedId(words[1]));
    printNames([`${name.kind}/${words[1]}`], given);
  },

  remove: async (given) => {
    const { words, options, home, terminal } = given;
    if (words.length === 0) throw missingFlag('the record', 'Such as: flarewise shelf remove kim');
    const names = words.map((word) => keptName(home, word));
    const removed = names.map(({ kind, id }) => `${kind}/${id}`);
    const what = removed.join(', ');
    if (!options.yes && !(await isSure(`Remove ${what}?`, options, terminal))) {
      terminal.stderr.write('Nothing was removed.\n');
      return;
    }
    await removeKept(home, names);
    terminal.stderr.write(`Moved to the folder removed in ${visible(home)}: ${what}.\n`);
    if (options.json) printNames(removed, given);
  },

  import: async (given) => {
    const { words, options, home, terminal } = given;
    if (words.length === 0) throw missingFlag('the file', 'Such as: flarewise shelf import kim.json');
    const records = words.flatMap((file) =>
      importedFrom(file, printGuessedEncoding(terminal), () =>
        terminal.stderr.write(
          `${visible(file)}: the column balls is not kept. flarewise coach reads it from the list.\n`,
        ),
      ),
    );
    if (options.as !== undefined && records.length !== 1)
      throw new InputError('flag', {
        field: '--as',
        rule: 'goes with one record',
        got: `${records.length} records`,
        hint: 'Leave it out: each gets an id made from its name.',
      });
    const as = options.as === undefined ? undefined : checkedId(options.as);
    const wanted = records.map(({ id, record }) => as ?? id ?? idFrom(record.name));
    const ids = await keepAll(
      home,
      records.map(({ kind, record, coreFile }, i) => ({
        kind,
        id: wanted[i],
        record: coreFile ? { ...record, core: keepCore(home, coreFile) } : record,
        ifTaken: ifTaken(options.as, options.replace),
      })),
    );
    records.forEach(({ kind }, i) => {
      if (ids[i] !== wanted[i]) terminal.stderr.write(`${kind}/${wanted[i]} is taken: kept as ${ids[i]}.\n`);
    });
    printNames(
      records.map(({ kind }, i) => `${kind}/${ids[i]}`),
      given,
    );
  },

  export: ({ words, options, home, terminal }) => {
    oneFormat(options);
    const chosen = words.length > 0 ? words.map((word) => keptName(home, word)) : undefined;
    const kept = allKept(home).filter(
      ({ kind, id }) => !chosen || chosen.some((name) => name.kind === kind && name.id === id),
    );
    const wanted = options.csv ? kept.filter(({ kind }) => kind === 'bowler') : kept;
    const { entries, damaged } = bundledAmong(home, wanted);
    if (damaged.length > 0 && entries.length === 0) throw new InputErrors(damaged);
    if (options.csv) terminal.stderr.write(leftOut(entries));
    terminal.stdout.write(
      options.csv
        ? formatBowlerList(entries.map(({ record }) => record as RecordOf['bowler']))
        : bundleText(entries),
    );
    if (damaged.length > 0) throw new InputErrors(damaged);
  },

  add: async (given) => {
    const { words, options, home, terminal } = given;
    const record = layoutFromFlags(words.join(' '), options, terminal);
    const wanted = options.as === undefined ? idFrom(record.name) : checkedId(options.as);
    const [id] = await keepAll(home, [{ kind: 'layout', id: wanted, record, ifTaken: ifTaken(options.as) }]);
    printNames([`layout/${id}`], given);
    if (terminal.stdout.isTTY) terminal.stderr.write(`Next, log its shots: flarewise log ${id}\n`);
  },
};

/** What is to happen to a record whose id is taken: an id that was typed is never changed. */
const ifTaken = (as: string | undefined, replace = false) =>
  replace ? 'replace' : as === undefined ? 'number' : 'refuse';

/** What can be handed on, and for each record that cannot an error by its name that says why. */
function bundledAmong(home: string, kept: readonly KeptRecord[]) {
  const entries: Bundled[] = [];
  const damaged: InputError[] = [];
  for (const each of kept)
    try {
      if ('error' in each) throw each.error;
      entries.push(bundled(withCore(home, each)));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const { code, faults, more } = error;
      damaged.push(
        new InputError(code, faults, `${each.kind}/${each.id}, which is left out`, faults.length + more),
      );
    }
  return { entries, damaged };
}

/** @throws {InputError} `too-large` for a bundle that could not be read back */
function bundleText(entries: readonly Bundled[]): string {
  const text = json(bundleOf(entries));
  if (text.length <= BUNDLE_FILE.mostMb * 1e6) return text;
  throw new InputError('too-large', {
    field: 'the bundle',
    rule: `must be at most ${BUNDLE_FILE.mostMb} MB`,
    got: `${Math.ceil(text.length / 1e6)} MB`,
    hint: 'Name some of the records, and export the others after them.',
  });
}

/** What a list of bowlers has no columns for: whose grip or scatter it leaves out; empty where it holds all. */
function leftOut(entries: readonly Bundled[]): string {
  const without = (['grip', 'scatter'] as const).flatMap((field) => {
    const ids = entries.flatMap(({ id, record }) => (field in (record as object) ? [id] : []));
    return ids.length === 0 ? [] : [`${field} of ${ids.join(', ')}`];
  });
  return without.length === 0
    ? ''
    : `A list has no columns for these, so they are left out: ${visible(without.join('; '))}. Without --csv they go along.\n`;
}

/** A kept record, with its core where it names one. */
function withCore(home: string, { kind, id, record }: Extract<KeptRecord, { record: unknown }>): Imported {
  return 'core' in record
    ? { kind, id, record, coreFile: readCore(fileBeside(pathOf(home, { kind, id }), record.core)) }
    : { kind, id, record };
}

/** The one word an action takes. @throws {InputError} with an example */
function theOne(words: readonly string[], example: string): string {
  if (words.length === 1) return words[0];
  throw notOneRecord(words, example);
}

/** What was kept, renamed or removed: a line for each, or with `--json` a list. */
const printNames = (names: readonly string[], { options, terminal }: Given): void => {
  terminal.stdout.write(options.json ? json(names) : names.map((name) => `${name}\n`).join(''));
};

const json = (value: unknown): string => `${visibleJson(value, 2)}\n`;
