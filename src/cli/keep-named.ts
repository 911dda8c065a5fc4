import { isDeepStrictEqual } from 'node:util';
import type { Interviewed } from '../interview/interview.js';
import { ballRecord } from '../records/ball.js';
import type { RecordKind, RecordOf } from '../records/record-kinds.js';
import { allKept, keepNew } from '../records/saved-records.js';
import { homeOf } from './home.js';
import type { Terminal } from './terminal.js';

/** Keeps the bowler and the ball of an interview, where the person gave a name for them, and says as what. */
export async function keepNamed(
  keep: Interviewed['keep'],
  { bowler, ball }: Pick<Interviewed, 'bowler' | 'ball'>,
  terminal: Terminal,
): Promise<void> {
  const home = homeOf(terminal);
  const kept = [
    ...(keep.bowler ? [`bowler/${await keepOnce(home, 'bowler', keep.bowler, bowler)}`] : []),
    ...(keep.ball ? [`ball/${await keepOnce(home, 'ball', keep.ball, ballRecord(ball))}`] : []),
  ];
  if (kept.length > 0) terminal.stderr.write(`Kept as ${kept.join(' and ')}.\n`);
}

/** An interview that is gone on with ends here again; what it kept the first time is not kept twice. */
async function keepOnce<K extends RecordKind>(
  home: string,
  kind: K,
  wanted: string,
  record: RecordOf[K],
): Promise<string> {
  const same = allKept(home).find(
    (each) => each.kind === kind && 'record' in each && isDeepStrictEqual(each.record, record),
  );
  return same?.id ?? (await keepNew(home, kind, wanted, record));
}
