import { laneAnswer } from '../recommend/lane-answer.js';
import { laneReport } from '../report/lane-report.js';
import { HANDS } from './flag-table.js';
import { oneOf } from './flags.js';
import { gather } from './gather.js';
import { globalFlags } from './global-flags.js';
import { loadLane } from './load-record.js';
import type { LaneOptions } from './options.js';
import { printAnswer } from './print-answer.js';
import type { Terminal } from './terminal.js';

/** `flarewise lane`: checks a lane file, draws its oil and says what it means. */
export async function laneCommand(options: LaneOptions, terminal: Terminal): Promise<void> {
  const { lane, hand } = gather({
    lane: () => loadLane(options.lane, terminal),
    ...globalFlags(options, terminal),
    hand: () => oneOf('--hand', options.hand ?? 'right', HANDS, 'The side from which boards are counted.'),
  });
  const answer = laneAnswer(lane, hand);
  printAnswer(answer, (page) => laneReport(answer, page), options, terminal);
}
