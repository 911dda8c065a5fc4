import { drilledAnswer } from '../recommend/drilled-answer.js';
import { layoutOnBall } from '../recommend/layout-on-ball.js';
import { drilledReport } from '../report/drilled-report.js';
import { coreFitter } from './core-fitter.js';
import { layoutFlag } from './flags.js';
import { gather } from './gather.js';
import { globalFlags } from './global-flags.js';
import { loadBall, loadBowler } from './load-record.js';
import type { DrilledOptions } from './options.js';
import { ounceFlag } from './ounce-flag.js';
import { printAnswer } from './print-answer.js';
import { rulesFlag } from './rules-flag.js';
import type { Terminal } from './terminal.js';

/** `flarewise drilled`: what one layout makes of a ball. */
export async function drilledCommand(options: DrilledOptions, terminal: Terminal): Promise<void> {
  const {
    ruleSet,
    ounce,
    layout: written,
    ...records
  } = gather({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    layout: () => layoutFlag(options.layout),
    ounce: () => ounceFlag(options.ounce),
    ruleSet: () => rulesFlag(options.rules),
    ...globalFlags(options, terminal),
  });
  const inputs = { ...records, layout: layoutOnBall(written, records.ball) };
  const answer = drilledAnswer(inputs, { ounce, ruleSet, fitter: coreFitter(terminal) });
  printAnswer(answer, (page) => drilledReport(answer, page), options, terminal);
}
