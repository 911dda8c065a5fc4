import { laneAnswer } from '../../answer/lane-answer.js';
import { laneReport } from '../../report/screens/lane-report.js';
import { loadLane } from '../files/load-record.js';
import { HANDS } from '../flags/flag-table.js';
import { oneOf } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import type { LaneOptions } from '../flags/options.js';
import { nextCommands } from '../print/next-commands.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/** `flarewise lane`: checks a lane file, draws its oil and says what it means. */
export async function laneCommand(options: LaneOptions, terminal: Terminal): Promise<void> {
  const { lane, hand } = collectFaults({
    lane: () => loadLane(options.lane, terminal),
    ...globalFlags(options, terminal),
    hand: () => oneOf('--hand', options.hand ?? 'right', HANDS, 'The side from which boards are counted.'),
  });
  const answer = laneAnswer(lane, hand);
  await printAnswer(
    answer,
    (page) => laneReport(answer, page),
    options,
    terminal,
    nextCommands(options, ['lane']),
  );
}
