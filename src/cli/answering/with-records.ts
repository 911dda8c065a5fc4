import type { Given, Interviewed } from '../../interview/made-records.js';
import type { Needs } from '../../interview/questions/needs.js';
import { loadBall, loadBowler, loadLane } from '../files/load-record.js';
import { isAnyAsked } from '../flags/asked-flags.js';
import type { GlobalOptions, RecommendCommandOptions, WishOptions } from '../flags/options.js';
import { wantFlags } from '../flags/want-flags.js';
import { withProgress } from '../print/progress.js';
import type { Terminal } from '../terminal/terminal.js';
import type { Answerer } from './answered.js';
import type { Wanted } from './with-interview.js';

/** Readers of the records that flags name; undefined for one that is asked for. */
export const recordReaders = (
  options: Pick<RecommendCommandOptions, 'bowler' | 'ball' | 'lane' | keyof WishOptions>,
  needs: Needs,
  terminal: Terminal,
) => ({
  bowler: () => (needs.bowler ? undefined : loadBowler(options.bowler, terminal)),
  ball: () => (needs.ball ? undefined : loadBall(options.ball, terminal)),
  lane: () => (needs.lane ? undefined : loadLane(options.lane, terminal)),
  want: () => (needs.want ? undefined : wantFlags(options)),
});

/** Answers with the records that flags name, or asks first for those that they leave out. */
export async function withRecords<Found>(
  wanted: Wanted,
  options: GlobalOptions,
  terminal: Terminal,
  answerer: Answerer<Found>,
): Promise<void> {
  if (isAnyAsked(wanted.needs)) {
    const { withInterview } = await import('./with-interview.js');
    return withInterview(wanted, options, terminal, answerer);
  }
  await answerAtOnce(named(wanted.given), answerer, terminal);
}

/** Answers with records for which nothing has to be asked. */
export async function answerAtOnce<Found>(
  records: Interviewed,
  { find, show }: Answerer<Found>,
  terminal: Terminal,
): Promise<void> {
  await show(await withProgress(terminal, (line) => find(records, { line, isAhead: false })));
}

/** The records where flags name all that are needed. @throws {Error} when they do not, which is a mistake of the command */
function named({ bowler, ball, lane, want }: Given): Interviewed {
  if (!bowler || !ball) throw new Error('neither named nor asked for');
  return { bowler, ball, lane: lane ?? null, want: want ?? {}, layout: '', keep: {} };
}

/**
 * The same with the lane that a shot needs.
 *
 * @throws {Error} when none was asked for or given, which is a mistake of the command
 */
export function withLane({ bowler, ball, lane, want }: Interviewed) {
  if (!lane) throw new Error('no lane was asked for');
  return { bowler, ball, lane, want };
}
