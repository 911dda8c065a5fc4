import { drilledAnswer } from '../../answer/drilled-answer.js';
import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import { drilledReport } from '../../report/screens/drilled-report.js';
import { loadBall, loadBowler } from '../files/load-record.js';
import { layoutFlag } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import type { DrilledOptions } from '../flags/options.js';
import { ounceFlag } from '../flags/ounce-flag.js';
import { rulesFlag } from '../flags/rules-flag.js';
import { nextCommands } from '../print/next-commands.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/** `flarewise drilled`: what one layout makes of a ball. */
export async function drilledCommand(options: DrilledOptions, terminal: Terminal): Promise<void> {
  const {
    ruleSet,
    ounce,
    layout: written,
    ...records
  } = collectFaults({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    layout: () => layoutFlag(options.layout),
    ounce: () => ounceFlag(options.ounce),
    ruleSet: () => rulesFlag(options.rules),
    ...globalFlags(options, terminal),
  });
  const inputs = { ...records, layout: layoutOnBall(written, records.ball) };
  const answer = drilledAnswer(inputs, {
    ounce,
    ruleSet,
    budget: terminal.budget,
  });
  await printAnswer(
    answer,
    (page) => drilledReport(answer, page),
    options,
    terminal,
    nextCommands(options, ['sheet', 'map']),
  );
}
