import { sheetAnswer } from '../../answer/sheet-answer.js';
import { PAPER_NAMES } from '../../base/paper.js';
import { visible } from '../../base/visible.js';
import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import { SHEET_KINDS, sheetFile } from '../../report/sheet/sheet-file.js';
import { sheetReport } from '../../report/sheet/sheet-report.js';
import { UNITS } from '../../report/text/display-units.js';
import { coreFitter } from '../files/core-fitter.js';
import { loadBall, loadBowler, loadLane } from '../files/load-record.js';
import { checkedOut, kindOfFile, writeOut } from '../files/out-file.js';
import { dateFlag } from '../flags/date-flag.js';
import { layoutFlag, oneOf } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import type { SheetCommandOptions } from '../flags/options.js';
import { ounceFlag } from '../flags/ounce-flag.js';
import { rulesFlag } from '../flags/rules-flag.js';
import { nextCommands } from '../print/next-commands.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';
import { searchFlags } from './recommend-command.js';

/** `flarewise sheet`: a page for the person at the drill, on screen or as a file. */
export async function sheetCommand(options: SheetCommandOptions, terminal: Terminal): Promise<void> {
  const {
    out,
    paper,
    date,
    seed,
    ruleSet,
    ounce,
    units,
    layout: written,
    ...records
  } = collectFaults({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    lane: () => (options.lane === undefined ? null : loadLane(options.lane, terminal)),
    layout: () => layoutFlag(options.layout),
    out: () =>
      options.out === undefined
        ? null
        : { kind: kindOfFile(options.out, SHEET_KINDS), path: checkedOut(options.out) },
    paper: () =>
      oneOf('--paper', options.paper ?? 'letter', PAPER_NAMES, 'letter: 8 1/2 x 11 in; a4: 210 x 297 mm.'),
    date: () => dateFlag(options.date, new Date()),
    seed: searchFlags(options, terminal).seed,
    ruleSet: () => rulesFlag(options.rules),
    ounce: () => ounceFlag(options.ounce),
    ...globalFlags(options, terminal),
  });
  const inputs = { ...records, layout: layoutOnBall(written, records.ball) };
  const fitter = coreFitter(terminal);
  const answer = await withProgress(terminal, (onProgress) =>
    sheetAnswer(inputs, { date, seed, ruleSet, ounce, fitter, budget: terminal.budget, onProgress }),
  );
  if (!out) {
    printAnswer(
      answer,
      (page) => sheetReport(answer, page),
      options,
      terminal,
      nextCommands(options, ['keep']),
    );
    return;
  }
  writeOut(out.path, await sheetFile(answer, out.kind, paper, UNITS[units]));
  printAnswer(answer, () => `${visible(out.path)}\n`, options, terminal);
}
