import { layoutOnBall } from '../recommend/layout-on-ball.js';
import { sheetAnswer } from '../recommend/sheet-answer.js';
import { UNITS } from '../report/display-units.js';
import { SHEET_KINDS, sheetFile } from '../report/sheet/sheet-file.js';
import { sheetReport } from '../report/sheet/sheet-report.js';
import { visible } from '../visible.js';
import { coreFitter } from './core-fitter.js';
import { dateFlag } from './date-flag.js';
import { PAPERS } from './flag-table.js';
import { layoutFlag, oneOf } from './flags.js';
import { gather } from './gather.js';
import { globalFlags } from './global-flags.js';
import { loadBall, loadBowler, loadLane } from './load-record.js';
import type { SheetCommandOptions } from './options.js';
import { ounceFlag } from './ounce-flag.js';
import { checkedOut, kindOfFile, writeOut } from './out-file.js';
import { printAnswer } from './print-answer.js';
import { withProgress } from './progress.js';
import { searchFlags } from './recommend-command.js';
import { rulesFlag } from './rules-flag.js';
import type { Terminal } from './terminal.js';

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
  } = gather({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    lane: () => (options.lane === undefined ? null : loadLane(options.lane, terminal)),
    layout: () => layoutFlag(options.layout),
    out: () =>
      options.out === undefined
        ? null
        : { kind: kindOfFile(options.out, SHEET_KINDS), path: checkedOut(options.out) },
    paper: () =>
      oneOf('--paper', options.paper ?? 'letter', PAPERS, 'letter: 8 1/2 x 11 in; a4: 210 x 297 mm.'),
    date: () => dateFlag(options.date, new Date()),
    seed: searchFlags(options, terminal).seed,
    ruleSet: () => rulesFlag(options.rules),
    ounce: () => ounceFlag(options.ounce),
    ...globalFlags(options, terminal),
  });
  const inputs = { ...records, layout: layoutOnBall(written, records.ball) };
  const fitter = coreFitter(terminal);
  const answer = await withProgress(terminal, (onProgress) =>
    sheetAnswer(inputs, { date, seed, ruleSet, ounce, fitter, onProgress }),
  );
  if (!out) {
    printAnswer(answer, (page) => sheetReport(answer, page), options, terminal);
    return;
  }
  writeOut(out.path, await sheetFile(answer, out.kind, paper, UNITS[units]));
  printAnswer(answer, () => `${visible(out.path)}\n`, options, terminal);
}
