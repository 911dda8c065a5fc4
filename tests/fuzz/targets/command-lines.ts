import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { InputError } from '../../../src/base/errors.js';
import { COMMANDS } from '../../../src/cli/command-table.js';
import { type Flag, GLOBAL_FLAGS } from '../../../src/cli/flags/flag-table.js';
import { EXIT } from '../../../src/cli/terminal/exit-codes.js';
import { fakeTerminal } from '../../support/fake-terminal.js';
import { TINY_BUDGET } from '../../support/small-budget.js';
import { anyText } from '../spoiled-text.js';
import { target } from '../target.js';

/* Command lines of all commands, run in this process as the built program has them. */

const BUILT = new URL('../../../dist/cli/run.js', import.meta.url).href;

const VALUES = [
  ...[
    'average-right',
    'plain-medium',
    'house-easy',
    'own-solids',
    'no-such',
    'data/lanes/house-easy.json',
    '.',
    '/dev/null',
  ],
  ...[
    '70 x 4 1/2 x 30',
    '4 1/2 x 3 3/8 x 2',
    '4',
    'late',
    '41 ft',
    '1',
    '0',
    '-1',
    '2026-03-31',
    '20 14 8 17',
    'pins=1',
  ],
  ...['a.svg', 'a.html', 'a.png', 'a.csv', 'metric', 'right', 'first', '1/2', 'flare', 'path,why'],
];
const value = anyText(VALUES);
const named = fc.oneof({ weight: 5, arbitrary: fc.constantFrom(...VALUES) }, { weight: 2, arbitrary: value });

/** Commands that compute for seconds: they are given one value that none takes, so that they end at what they read. */
const LONG: readonly string[] = ['recommend', 'judge', 'compare', 'adjust', 'coach', 'sheet', 'map', 'roll'];

/** A flag, with what it takes: one of its own words, or anything. */
function flagWords([flag, , words]: Flag): fc.Arbitrary<readonly string[]> {
  const [name = '', takes] = flag.split(' ');
  if (takes === undefined) return fc.constant([name]);
  const given = words?.length ? fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...words) }, named) : named;
  return given.map((each) => [name, each]);
}

const line: fc.Arbitrary<readonly string[]> = fc.constantFrom(...COMMANDS).chain((entry) =>
  fc
    .record({
      name: fc.oneof({ weight: 30, arbitrary: fc.constant(entry.name) }, { weight: 1, arbitrary: value }),
      words: entry.words
        ? fc.array(fc.oneof(named, fc.constantFrom(...(entry.words[2] ?? ['x']))), { maxLength: 5 })
        : fc.constant([]),
      flags: fc.array(fc.constantFrom(...entry.flags, ...GLOBAL_FLAGS).chain(flagWords), { maxLength: 4 }),
      odd: fc.option(value, { freq: 1 }),
    })
    .map(({ name, words, flags, odd }) => [
      name,
      ...words,
      ...flags.flat(),
      ...(odd === null ? [] : [odd]),
      ...(LONG.includes(name) ? ['--workers', 'none'] : ['--workers', '1']),
    ]),
);

let folder: string | undefined;

export const COMMAND_LINES = [
  target({
    name: 'command lines',
    what: 'flags, words and values of every command, right and wrong; those that compute for seconds up to what they read',
    inputs: 30_000,
    chunk: 1000,
    arbitrary: line,
    take: async (args) => {
      const { run } = (await import(BUILT)) as typeof import('../../../src/cli/run.js');
      folder ??= mkdtempSync(join(tmpdir(), 'flarewise-fuzz-'));
      const before = process.cwd();
      const terminal = {
        ...fakeTerminal({ env: { FLAREWISE_HOME: join(folder, 'home') } }),
        cores: 1,
        budget: TINY_BUDGET,
      };
      process.chdir(folder);
      const code = await run(args, terminal).finally(() => process.chdir(before));
      return sound(code, terminal.written.out(), terminal.written.err());
    },
  }),
];

/** Throws for an end that no command line should have. */
function sound(code: number, out: string, err: string): unknown {
  if (code !== EXIT.fine && code !== EXIT.input) throw new Error(`exit code ${code}\n${err}`);
  if (/\b(NaN|Infinity|undefined)\b/.test(out)) throw new Error(`not finite on stdout:\n${out}`);
  if (code === EXIT.fine) return null;
  const isWorded = err.includes('--help') || /^ {2}\S.*/m.test(err);
  throw isWorded
    ? new InputError('command-line', {
        field: 'command line',
        rule: 'must be one',
        got: 'another',
        hint: 'See what it says.',
      })
    : new Error(`refused without a remedy:\n${err}`);
}
