import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import type { Command } from '../support/killed-command.js';
import { MAIN, runCli, smallMain } from '../support/run-cli.js';

/** A command that writes, and how to see what became of it. */
export interface WritingCommand {
  readonly args: readonly string[];
  /** Command that prints what it changes: in this process, the program just killed left it there. */
  readonly seenBy?: readonly string[];
  /** File that it writes, where it changes no record. */
  readonly file?: string;
  /** How often it is killed at random moments beside the aimed ones. */
  readonly times: number;
  readonly isLong?: true;
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
  'shelf import': { args: ['shelf', 'import', 'new.json'], seenBy: EXPORT, times: 40 },
  'shelf import --replace': {
    args: ['shelf', 'import', 'kept.json', '--replace'],
    seenBy: EXPORT,
    times: 40,
  },
  'shelf add': { args: ['shelf', 'add', 'second', ...BALL, ...LAYOUT], seenBy: EXPORT, times: 40 },
  'shelf rename': { args: ['shelf', 'rename', 'lane/league', 'friday'], seenBy: EXPORT, times: 40 },
  'shelf remove': {
    args: ['shelf', 'remove', 'lane/league', 'lane/other', '--yes'],
    seenBy: EXPORT,
    times: 40,
  },
  'log, a shot': { args: ['log', 'first', '20', '14', '8', '17', ...NIGHT], seenBy: EXPORT, times: 40 },
  'log --undo': { args: ['log', 'first', '--undo'], seenBy: EXPORT, times: 40 },
  'log --edit': { args: ['log', 'first', '--edit', '1', '20', '14', '8', '18'], seenBy: EXPORT, times: 40 },
  'log --import': { args: ['log', 'first', '--import', 'shots.csv'], seenBy: EXPORT, times: 40 },
  'sheet --out': {
    args: ['sheet', ...BALL, ...LAYOUT, '--date', '2026-03-31', '--out', 'out.svg'],
    file: 'out.svg',
    times: 20,
  },
  'map --out': { args: ['map', ...BALL, ...LAYOUT, '--out', 'out.html'], file: 'out.html', times: 20 },
  'core --out': { args: ['core', 'own-solids', '--out', 'out.svg'], file: 'out.svg', times: 20 },
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
  'the cache of fitted cores': {
    args: ['drilled', ...BALL, ...LAYOUT],
    seenBy: ['drilled', ...BALL, ...LAYOUT],
    times: 40,
  },
  'coach --out': {
    args: [...COACH, '--out', 'coach.jsonl'],
    seenBy: [...COACH, '--out', 'coach.jsonl', '--jsonl'],
    times: 4,
    isLong: true,
  },
};

/** A writing command as it runs in a folder, where records and cache lie too. */
export const commandIn = (folder: string, { args, isLong }: WritingCommand): Command => ({
  args,
  cwd: folder,
  env: { FLAREWISE_HOME: join(folder, 'home'), FLAREWISE_CACHE: join(folder, 'cache') },
  main: isLong ? smallMain() : [MAIN],
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
  for (const args of [
    ['shelf', 'import', 'league.json', 'other.json'],
    ['shelf', 'add', 'first', ...BALL, ...LAYOUT],
    ['log', 'first', '20', '14', '8', '16', ...NIGHT],
  ])
    expect((await runCli(args, commandIn(folder, { args, times: 0 }))).err).toBe('');
}
