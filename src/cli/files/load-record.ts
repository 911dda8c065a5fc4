import { existsSync } from 'node:fs';
import { InputError, quotedTyped } from '../../base/errors.js';
import { keptIds, pathOf } from '../../records/home/saved-records.js';
import { readBall } from '../../records/read/read-ball.js';
import { readRecord } from '../../records/read/read-record.js';
import { demoBalls, demoBowlers, demoLanes, type Shelved } from '../../records/read/shelf.js';
import type { Ball } from '../../records/schemas/ball.js';
import { type Bowler, bowlerSchema } from '../../records/schemas/bowler.js';
import { type Lane, laneSchema } from '../../records/schemas/lane.js';
import { missingFlag } from '../flags/flags.js';
import { didYouMean } from '../terminal/did-you-mean.js';
import type { Terminal } from '../terminal/terminal.js';
import { homeOf } from './home.js';

/** The bowler named by a flag: the id of a kept record or of a demo, or else a file. */
export const loadBowler = (given: string | undefined, terminal: Terminal, flag?: string): Bowler =>
  find(BOWLERS, given, terminal, flag).record;

/** The ball named by a flag: the id of a kept record or of a demo, or else a file. */
export const loadBall = (given: string | undefined, terminal: Terminal, flag?: string): Ball =>
  find(BALLS, given, terminal, flag).record;

/** The lane named by a flag: the id of a kept record or of a demo, or else a file. */
export const loadLane = (given: string | undefined, terminal: Terminal, flag?: string): Lane =>
  find(LANES, given, terminal, flag).record;

/** What another record calls the bowler named by `--bowler`: by its id, or by its name when it is in a file. */
export const callBowler = (given: string | undefined, terminal: Terminal): string =>
  find(BOWLERS, given, terminal).called;

/** What another record calls the ball named by `--ball`: by its id, or by its name when it is in a file. */
export const callBall = (given: string | undefined, terminal: Terminal): string =>
  find(BALLS, given, terminal).called;

/** Where records of a kind come from. */
interface Source<T> {
  readonly kind: 'bowler' | 'ball' | 'lane';
  readonly readDemos: () => readonly Shelved<T>[];
  readonly read: (path: string) => T;
}

const BOWLERS: Source<Bowler> = {
  kind: 'bowler',
  readDemos: demoBowlers,
  read: (path) => readRecord(bowlerSchema, path),
};
const BALLS: Source<Ball> = { kind: 'ball', readDemos: demoBalls, read: readBall };
const LANES: Source<Lane> = {
  kind: 'lane',
  readDemos: demoLanes,
  read: (path) => readRecord(laneSchema, path),
};

/**
 * The record that was meant, and its id, or its name when it is in a file.
 *
 * @param flag  as it was typed; an error names it
 */
function find<T extends { readonly name: string }>(
  { kind, readDemos, read }: Source<T>,
  given: string | undefined,
  terminal: Terminal,
  flag = `--${kind}`,
): { readonly called: string; readonly record: T } {
  const inFile = (path: string) => {
    const record = read(path);
    return { called: record.name, record };
  };
  if (given !== undefined && !looksLikeId(given)) return inFile(given); // a list of files reads no demos
  const home = homeOf(terminal);
  const kept = keptIds(home, kind);
  const demos = readDemos();
  const ids = [...new Set([...kept, ...demos.map(({ id }) => id)])];
  const remedy = `Give a file, or the id of a ${kind}: ${ids.join(', ')}.`;
  if (given === undefined) throw missingFlag(flag, remedy);
  if (kept.includes(given)) return { called: given, record: read(pathOf(home, { kind, id: given })) };
  const demo = demos.find(({ id }) => id === given);
  if (demo) return { called: given, record: demo.record };
  if (existsSync(given)) return inFile(given);
  throw new InputError('no-such-record', {
    field: flag,
    rule: `must be a file, or the id of a ${kind}`,
    got: quotedTyped(given),
    hint: `${didYouMean(given, ids)}${remedy}`,
  });
}

/** A word without folder or ending; what is meant when there is no such file is an id. */
const looksLikeId = (given: string): boolean => /^[a-z0-9-]+$/i.test(given);
