import { isDeepStrictEqual } from 'node:util';
import type { Interviewed } from '../../interview/made-records.js';
import { keepAll, type NewRecord } from '../../records/home/change-records.js';
import { keepCore } from '../../records/home/kept-core.js';
import { allKept } from '../../records/home/saved-records.js';
import { type Ball, type BallRecord, ballRecord, hasOwnCore } from '../../records/schemas/ball.js';
import { idFrom } from '../../records/text/record-id.js';
import type { Terminal } from '../terminal/terminal.js';
import { homeOf } from './home.js';

/** What may be kept of what an answer is about. */
export const KEPT_KINDS = ['bowler', 'ball', 'lane'] as const;
export type KeptKind = (typeof KEPT_KINDS)[number];

/**
 * Keeps those of an answer's bowler, ball and lane that the person named, and says under which ids. All of them or none.
 *
 * An interview that is gone on with ends here again; what it kept the first time is not kept twice.
 *
 * @returns the ids they got
 */
export async function keepNamed(
  names: { readonly [K in KeptKind]?: string | undefined },
  records: Pick<Interviewed, KeptKind>,
  terminal: Terminal,
): Promise<{ readonly [K in KeptKind]?: string }> {
  const home = homeOf(terminal);
  const wanted = KEPT_KINDS.flatMap((kind): NewRecord[] => {
    const name = names[kind];
    const record = kind === 'ball' ? ballToKeep(home, records.ball) : records[kind];
    return name && record ? [{ kind, id: idFrom(name), record: { ...record, name }, ifTaken: 'number' }] : [];
  });
  if (wanted.length === 0) return {};
  const there = allKept(home);
  const known = wanted.map(
    ({ kind, record }) =>
      there.find((each) => each.kind === kind && 'record' in each && isDeepStrictEqual(each.record, record))
        ?.id,
  );
  const fresh = wanted.filter((_, i) => known[i] === undefined);
  const freshIds = await keepAll(home, fresh);
  const ids = wanted.map((each, i) => known[i] ?? freshIds[fresh.indexOf(each)]);
  terminal.stderr.write(`Kept as ${wanted.map(({ kind }, i) => `${kind}/${ids[i]}`).join(' and ')}.\n`);
  return Object.fromEntries(wanted.map(({ kind }, i) => [kind, ids[i]]));
}

/** A ball's record, its core kept beside it if it has one of its own. */
const ballToKeep = (home: string, ball: Ball): BallRecord =>
  hasOwnCore(ball) ? { ...ballRecord(ball), core: keepCore(home, ball.coreFile) } : ball;
