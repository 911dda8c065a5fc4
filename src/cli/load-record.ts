import { existsSync } from 'node:fs';
import { InputError } from '../errors.js';
import type { Ball } from '../records/ball.js';
import { ballSchema } from '../records/ball.js';
import { type Bowler, bowlerSchema } from '../records/bowler.js';
import { type Lane, laneSchema } from '../records/lane.js';
import { readRecord } from '../records/read-record.js';
import { demoShelf } from '../records/shelf.js';
import { missingFlag } from './flags.js';

/** The bowler named by `--bowler`: a demo id, or else a file. */
export const loadBowler = (given: string | undefined): Bowler =>
  load('bowler', given, demoShelf().bowlers, (path) => readRecord(bowlerSchema, path));

/** The ball named by `--ball`: a demo id, or else a file. */
export const loadBall = (given: string | undefined): Ball =>
  load('ball', given, demoShelf().balls, (path) => readRecord(ballSchema, path));

/** The lane named by `--lane`: a demo id, or else a file. */
export const loadLane = (given: string | undefined): Lane =>
  load('lane', given, demoShelf().lanes, (path) => readRecord(laneSchema, path));

function load<T>(
  kind: string,
  given: string | undefined,
  demos: readonly { readonly id: string; readonly record: T }[],
  read: (path: string) => T,
): T {
  const flag = `--${kind}`;
  const remedy = `Give a file, or the id of a demo ${kind}: ${demos.map(({ id }) => id).join(', ')}.`;
  if (given === undefined) throw missingFlag(flag, remedy);
  const demo = demos.find(({ id }) => id === given);
  if (demo) return demo.record;
  if (looksLikeId(given) && !existsSync(given))
    throw new InputError('no-such-record', {
      field: flag,
      rule: `must be a file, or the id of a demo ${kind}`,
      got: JSON.stringify(given),
      hint: remedy,
    });
  return read(given);
}

/** A word without folder or ending; what is meant when there is no such file is a demo's id. */
const looksLikeId = (given: string): boolean => /^[a-z0-9-]+$/i.test(given);
