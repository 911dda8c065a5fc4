import { COMMANDS } from '../../src/cli/command-table.js';
import type { CommandEntry } from '../../src/cli/flags/command-entry.js';
import { type Flag, GLOBAL_FLAGS } from '../../src/cli/flags/flag-table.js';
import { EXIT } from '../../src/cli/terminal/exit-codes.js';

/* The README's reference, made from the tables that the program itself is built from. */

const EXIT_CODES: Readonly<Record<keyof typeof EXIT, string>> = {
  fine: 'an answer, or help',
  input:
    'something typed or read cannot be used, or a file cannot be written: one message names every fault, its rule and the remedy',
  bug: 'a fault of flarewise: its stack is printed; please report it',
  system:
    'the system refused: a full disk, a missing permission; one sentence names the cause and the remedy',
  cancelled: 'stopped with ctrl-C; 143 and 129 mean SIGTERM and SIGHUP, as in shells',
};

const ENVIRONMENT: readonly (readonly [name: string, what: string])[] = [
  ['FLAREWISE_HOME', 'folder of what you keep, in place of the platform’s data folder'],
  ['NO_COLOR', 'any value: no colours'],
  ['TERM', '`dumb`: no colours, and questions are written line by line'],
  ['COLUMNS', 'width of an answer that goes to a pipe or a file (80 when not set), 40 to 200'],
  ['LC_ALL, LC_CTYPE, LANG', 'with a character set other than UTF-8: ASCII characters only'],
];

const FILES: readonly (readonly [name: string, what: string])[] = [
  [
    '`bowlers/`, `balls/`, `lanes/`, `layouts/` in `FLAREWISE_HOME`',
    'what you keep, a JSON file each; the id is the file’s name; a layout holds the log of its shots',
  ],
  ['`cores/` in `FLAREWISE_HOME`', 'cores of balls that you keep, with their meshes'],
  [
    '`lessons/` in `FLAREWISE_HOME`',
    'what your logs taught, so that it is not learned anew for each command; may be deleted at any time',
  ],
  ['`removed/` in `FLAREWISE_HOME`', 'what was replaced or removed'],
  [
    '`interview-draft.json` in `FLAREWISE_HOME`',
    'answers of an interview left with ctrl-C, until it is finished',
  ],
  ['`data/` in the package', 'the demo bowlers, balls, lanes and cores, to copy'],
  ['`shared/schemas/` in the package', 'JSON Schemas of all records and answers'],
  ['`shared/rules/` in the package', 'rule sets, by id, with edition and source'],
];

/** All commands, flags, exit codes, variables and files, as Markdown. */
export const reference = (): string =>
  [
    '`flarewise [command] [flags]`; without a command it asks what it needs.',
    '### Flags of every command',
    flagTable(GLOBAL_FLAGS),
    ...COMMANDS.flatMap(commandParts),
    '### Exit codes',
    table(
      ['code', 'means'],
      (Object.keys(EXIT) as (keyof typeof EXIT)[]).map((name) => [String(EXIT[name]), EXIT_CODES[name]]),
    ),
    '### Environment',
    table(
      ['variable', 'what it does'],
      ENVIRONMENT.map(([name, what]) => [`\`${name.replaceAll(', ', '`, `')}\``, what]),
    ),
    '### Files',
    table(['where', 'what'], FILES),
  ].join('\n\n');

const commandParts = ({ name, words, description, flags, examples }: CommandEntry): string[] => [
  `### \`flarewise ${name}${words ? ` ${words[0]}` : ''}\``,
  description,
  ...(flags.length > 0 ? [flagTable(flags)] : []),
  `\`\`\`\n${examples.join('\n')}\n\`\`\``,
];

const flagTable = (flags: readonly Flag[]): string =>
  table(
    ['flag', 'what it does'],
    flags.map(([flag, what]) => [`\`${flag}\``, what]),
  );

function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n');
}

const START = '<!-- reference: written by npm run reference -->';
const END = '<!-- end of reference -->';

/** A README with its reference as it is now. */
export function withReference(readme: string): string {
  const [before, rest] = readme.split(START);
  const [, after] = (rest ?? '').split(END);
  if (before === undefined || after === undefined) throw new Error(`README.md has no ${START} … ${END}`);
  return `${before}${START}\n\n${reference()}\n\n${END}${after}`;
}
