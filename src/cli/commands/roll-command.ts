import { rollAnswer } from '../../answer/roll-answer.js';
import { USUAL_SEED } from '../../base/search-limits.js';
import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import { rollReport } from '../../report/screens/roll-report.js';
import { loadBall, loadBowler, loadLane } from '../files/load-record.js';
import { layoutFlag } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import type { RollOptions } from '../flags/options.js';
import { withLearned } from '../learned/learned-for.js';
import { nextCommands } from '../print/next-commands.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/** `flarewise roll`: one shot with one layout. */
export async function rollCommand(options: RollOptions, terminal: Terminal): Promise<void> {
  const { layout: written, ...records } = collectFaults({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    lane: () => loadLane(options.lane, terminal),
    layout: () => layoutFlag(options.layout),
    ...globalFlags(options, terminal),
  });
  const layout = layoutOnBall(written, records.ball);
  const inputs = await withLearned({ ...records, layout }, options, { seed: USUAL_SEED }, terminal);
  const answer = rollAnswer(inputs, terminal.budget);
  await printAnswer(
    answer,
    (page) => rollReport(answer, inputs.bowler.hand, inputs.lane, page),
    options,
    terminal,
    nextCommands(options, ['recommend', 'sheet']),
  );
}
