import { createHash } from 'node:crypto';
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';
import { CARD_FILE, MODEL_FILE } from '../../src/regression/card.js';
import { MODELS, readWholeModel } from '../../src/regression/model-files.js';
import type { Command } from '../support/killed-command.js';
import { MAIN, runCli, smallMain } from '../support/run-cli.js';

/** A command that writes, and how to see what became of it. */
export interface WritingCommand {
  readonly args: readonly string[];
  /** Command that prints what it changes: in this process, the program just killed left it there. */
  readonly seenBy?: readonly string[];
  /** File that it writes, where it changes no record. */
  readonly file?: string;
  /** What is there, where neither a command nor one file tells. */
  readonly seen?: (folder: string) => Promise<string>;
  /** How often it is killed at random moments beside the aimed ones. */
  readonly times: number;
  /** Whether it searches, for which the small budget does. */
  readonly isLong?: true;
  /** A program of its own, in place of flarewise. */
  readonly main?: readonly string[];
}

const BALL = ['--bowler', 'average-right', '--ball', 'plain-medium'];
const LAYOUT = ['--layout', '70 x 4 1/2 x 30'];
const NIGHT = ['--night', '2026-03-31', '--lane', 'house-easy'];
const EXPORT = ['shelf', 'export'];
const COACH = [
  'coach',
  '--bowlers',
  'average-right,slow-straight',
  '--balls',
  'plain-low',
  '--lanes',
  'short',
];

/** All commands that write. */
export const WRITING: Readonly<Record<string, WritingCommand>> = {
  'shelf import': { args: ['shelf', 'import', 'new.json'], seenBy: EXPORT, times: 30 },
  'shelf import --replace': {
    args: ['shelf', 'import', 'kept.json', '--replace'],
    seenBy: EXPORT,
    times: 40,
  },
  'shelf add': { args: ['shelf', 'add', 'second', ...BALL, ...LAYOUT], seenBy: EXPORT, times: 30 },
  'shelf rename': { args: ['shelf', 'rename', 'lane/league', 'friday'], seenBy: EXPORT, times: 30 },
  'shelf remove': {
    args: ['shelf', 'remove', 'lane/league', 'lane/other', '--yes'],
    seenBy: EXPORT,
    times: 40,
  },
  'log, a shot': { args: ['log', 'first', '20', '14', '8', '17', ...NIGHT], seenBy: EXPORT, times: 30 },
  'log --undo': { args: ['log', 'first', '--undo'], seenBy: EXPORT, times: 30 },
  'log --edit': { args: ['log', 'first', '--edit', '1', '20', '14', '8', '18'], seenBy: EXPORT, times: 30 },
  'log --import': { args: ['log', 'first', '--import', 'shots.csv'], seenBy: EXPORT, times: 30 },
  'sheet --out': {
    args: ['sheet', ...BALL, ...LAYOUT, '--date', '2026-03-31', '--out', 'out.svg'],
    file: 'out.svg',
    times: 40,
  },
  'map --out': { args: ['map', ...BALL, ...LAYOUT, '--out', 'out.html'], file: 'out.html', times: 30 },
  'core --out': { args: ['core', 'own-solids', '--out', 'out.svg'], file: 'out.svg', times: 30 },
  'judge --report': {
    args: ['judge', ...BALL, ...LAYOUT, '--lane', 'house-easy', '--report', 'out.html'],
    file: 'out.html',
    times: 4,
    isLong: true,
  },
  'recommend --report': {
    args: ['recommend', ...BALL, '--lane', 'house-easy', '--report', 'out.html'],
    file: 'out.html',
    times: 4,
    isLong: true,
  },
  'adjust --report': {
    args: ['adjust', '--ball', 'first', '--hook-start', '3 ft later', '--report', 'out.html'],
    file: 'out.html',
    times: 4,
    isLong: true,
  },
  'learned --report': {
    args: ['learned', '--bowler', 'average-right', '--report', 'out.html'],
    file: 'out.html',
    times: 4,
    isLong: true,
  },
  'learned --forget': {
    args: ['learned', '--bowler', 'average-right', '--forget', 'march.json', '--yes'],
    seenBy: EXPORT,
    times: 4,
    isLong: true,
  },
  'compare --report': {
    args: [
      ...['compare', '--bowler', 'average-right', '--ball', 'plain-medium', '--lane', 'house-easy'],
      ...[...LAYOUT, '--layout', '50 x 4 1/2 x 35', '--report', 'out.html'],
    ],
    file: 'out.html',
    times: 4,
    isLong: true,
  },
  'fit, its model': {
    args: ['fitted', 'kept'],
    seen: async (folder) => {
      const stored = await readWholeModel(join(folder, 'kept'));
      return stored.kind === 'ready' ? stored.card.file.sha256 : stored.why.code;
    },
    times: 40,
    main: [
      '--import',
      import.meta.resolve('tsx'),
      fileURLToPath(new URL('../fit/write-model-main.ts', import.meta.url)),
    ],
  },
  'coach --out': {
    args: [...COACH, '--out', 'coach.jsonl'],
    seenBy: [...COACH, '--out', 'coach.jsonl', '--jsonl'],
    times: 4,
    isLong: true,
  },
};

/** A writing command as it runs in a folder, where the records lie too. */
export const commandIn = (folder: string, { args, isLong, main }: WritingCommand): Command => ({
  args,
  cwd: folder,
  env: { FLAREWISE_HOME: join(folder, 'home') },
  main: main ?? (isLong ? smallMain() : [MAIN]),
});

/** Makes the folder in which a command is run: records, a log, lists to import, an old file where one is written. */
export async function prepareFolder(folder: string, { file }: WritingCommand): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const lane = readFileSync(new URL('../../data/lanes/house-easy.json', import.meta.url), 'utf8');
  const renamed = (name: string): string => JSON.stringify({ ...JSON.parse(lane), name });
  for (const [id, name] of [
    ['league', 'League'],
    ['other', 'Other'],
    ['new', 'New'],
  ] as const)
    writeFileSync(join(folder, `${id}.json`), renamed(name));
  const records = ['league', 'other'].map((id) => ({
    kind: 'lane',
    id,
    record: JSON.parse(renamed('Again')),
  }));
  writeFileSync(join(folder, 'kept.json'), JSON.stringify({ schema: 'flarewise/shelf/1', records }));
  writeFileSync(
    join(folder, 'shots.csv'),
    'lane,on,laydownBoard,arrowsBoard,pinsBoard\nhouse-easy,2026-04-07,20,14,17\nhouse-easy,2026-04-07,20,14,18\n',
  );
  if (file) writeFileSync(join(folder, file), 'old');
  writeModels(folder);
  for (const args of [
    ['shelf', 'import', 'league.json', 'other.json'],
    ['shelf', 'add', 'first', ...BALL, ...LAYOUT],
    ['log', 'first', '20', '14', '8', '16', ...NIGHT],
  ])
    expect((await runCli(args, commandIn(folder, { args, times: 0 }))).err).toBe('');
}

/** A model that is kept, and one that was fitted anew. */
function writeModels(folder: string): void {
  for (const name of ['kept', 'fitted']) cpSync(MODELS, join(folder, name), { recursive: true });
  const [file, card] = [MODEL_FILE, CARD_FILE].map((name) => join(folder, 'fitted', name)) as [
    string,
    string,
  ];
  const bytes = Buffer.concat([readFileSync(file), Buffer.of(0)]);
  writeFileSync(file, bytes);
  const told = JSON.parse(readFileSync(card, 'utf8'));
  told.file.sha256 = createHash('sha256').update(bytes).digest('hex');
  writeFileSync(card, JSON.stringify(told));
}
