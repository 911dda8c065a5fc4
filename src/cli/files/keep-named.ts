import { isDeepStrictEqual } from 'node:util';
import type { Interviewed } from '../../interview/made-records.js';
import { keepAll, type NewRecord } from '../../records/home/change-records.js';
import { keepCore } from '../../records/home/kept-core.js';
import { allKept } from '../../records/home/saved-records.js';
import { type Ball, type BallRecord, ballRecord, hasOwnCore } from '../../records/schemas/ball.js';
import { idFrom } from '../../records/text/record-id.js';
import type { Terminal } from '../terminal/terminal.js';
import { homeOf } from './home.js';

/**
 * Keeps the bowler and the ball of an interview, where the person gave a name for them, and says as what. Both or none.
 *
 * An interview that is gone on with ends here again; what it kept the first time is not kept twice.
 */
export async function keepNamed(
  keep: Interviewed['keep'],
  { bowler, ball }: Pick<Interviewed, 'bowler' | 'ball'>,
  terminal: Terminal,
): Promise<void> {
  const home = homeOf(terminal);
  const ifTaken = 'number';
  const wanted: NewRecord[] = [];
  if (keep.bowler) wanted.push({ kind: 'bowler', id: idFrom(keep.bowler), record: bowler, ifTaken });
  if (keep.ball)
    wanted.push({ kind: 'ball', id: idFrom(keep.ball), record: ballToKeep(home, ball), ifTaken });
  if (wanted.length === 0) return;
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
}

/** A ball's record, its core kept beside it if it has one of its own. */
const ballToKeep = (home: string, ball: Ball): BallRecord =>
  hasOwnCore(ball) ? { ...ballRecord(ball), core: keepCore(home, ball.coreFile) } : ball;
