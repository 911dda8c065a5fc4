import { existsSync } from 'node:fs';
import { InputError } from '../errors.js';
import type { Ball } from '../records/ball.js';
import { type Bowler, bowlerSchema } from '../records/bowler.js';
import { type Lane, laneSchema } from '../records/lane.js';
import { nearestWord } from '../records/nearest-word.js';
import { readBall } from '../records/read-ball.js';
import { readRecord } from '../records/read-record.js';
import { keptIds, pathOf } from '../records/saved-records.js';
import { demoBalls, demoBowlers, demoLanes, type Shelved } from '../records/shelf.js';
import { missingFlag } from './flags.js';
import { homeOf } from './home.js';
import type { Terminal } from './terminal.js';

/** The bowler named by `--bowler`: the id of a kept record or of a demo, or else a file. */
export const loadBowler = (given: string | undefined, terminal: Terminal): Bowler =>
  load('bowler', given, demoBowlers, (path) => readRecord(bowlerSchema, path), terminal);

/** The ball named by `--ball`: the id of a kept record or of a demo, or else a file. */
export const loadBall = (given: string | undefined, terminal: Terminal): Ball =>
  load('ball', given, demoBalls, readBall, terminal);

/** The lane named by `--lane`: the id of a kept record or of a demo, or else a file. */
export const loadLane = (given: string | undefined, terminal: Terminal): Lane =>
  load('lane', given, demoLanes, (path) => readRecord(laneSchema, path), terminal);

function load<T>(
  kind: 'bowler' | 'ball' | 'lane',
  given: string | undefined,
  readDemos: () => readonly Shelved<T>[],
  read: (path: string) => T,
  terminal: Terminal,
): T {
  if (given !== undefined && !looksLikeId(given)) return read(given); // a list of files reads no demos
  const flag = `--${kind}`;
  const home = homeOf(terminal);
  const kept = keptIds(home, kind);
  const demos = readDemos();
  const ids = [...kept, ...demos.map(({ id }) => id)];
  const remedy = `Give a file, or the id of a ${kind}: ${ids.join(', ')}.`;
  if (given === undefined) throw missingFlag(flag, remedy);
  if (kept.includes(given)) return read(pathOf(home, { kind, id: given }));
  const demo = demos.find(({ id }) => id === given);
  if (demo) return demo.record;
  if (!existsSync(given)) {
    const near = nearestWord(given, ids);
    throw new InputError('no-such-record', {
      field: flag,
      rule: `must be a file, or the id of a ${kind}`,
      got: JSON.stringify(given),
      hint: `${near ? `Did you mean ${near}? ` : ''}${remedy}`,
    });
  }
  return read(given);
}

/** A word without folder or ending; what is meant when there is no such file is an id. */
const looksLikeId = (given: string): boolean => /^[a-z0-9-]+$/i.test(given);
