import { layoutOnBall } from '../recommend/layout-on-ball.js';
import { rollAnswer } from '../recommend/roll-answer.js';
import { rollReport } from '../report/roll-report.js';
import { coreFitter } from './core-fitter.js';
import { layoutFlag } from './flags.js';
import { gather } from './gather.js';
import { globalFlags } from './global-flags.js';
import { loadBall, loadBowler, loadLane } from './load-record.js';
import type { RollOptions } from './options.js';
import { printAnswer } from './print-answer.js';
import type { Terminal } from './terminal.js';

/** `flarewise roll`: one shot with one layout. */
export async function rollCommand(options: RollOptions, terminal: Terminal): Promise<void> {
  const { layout: written, ...records } = gather({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    lane: () => loadLane(options.lane, terminal),
    layout: () => layoutFlag(options.layout),
    ...globalFlags(options, terminal),
  });
  const inputs = { ...records, layout: layoutOnBall(written, records.ball) };
  const answer = rollAnswer(inputs, coreFitter(terminal));
  printAnswer(answer, (page) => rollReport(answer, inputs.bowler.hand, inputs.lane, page), options, terminal);
}
