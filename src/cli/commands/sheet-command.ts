import { sheetAnswer } from '../../answer/sheet-answer.js';
import type { Paper } from '../../base/paper.js';
import { visible } from '../../base/visible.js';
import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { singleBlanks } from '../../records/text/single-blanks.js';
import { readLayout } from '../../records/text/written-layout.js';
import { SHEET_KINDS, sheetFile } from '../../report/sheet/sheet-file.js';
import { sheetReport } from '../../report/sheet/sheet-report.js';
import { UNITS, type UnitSystem } from '../../report/text/display-units.js';
import { GOES_ON } from '../answering/answered.js';
import { recordReaders, withRecords } from '../answering/with-records.js';
import { inventedAmong } from '../files/invented.js';
import { loadLane } from '../files/load-record.js';
import { checkedOut, kindOfFile, writeOut } from '../files/out-file.js';
import { askedFlags } from '../flags/asked-flags.js';
import { dateFlag } from '../flags/date-flag.js';
import { layoutFlag } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import type { SheetCommandOptions } from '../flags/options.js';
import { ounceFlag } from '../flags/ounce-flag.js';
import { paperFlag } from '../flags/paper-flag.js';
import { rulesFlag } from '../flags/rules-flag.js';
import { searchFlags } from '../flags/search-flags.js';
import { learnedFor } from '../learned/learned-for.js';
import { nextCommands } from '../print/next-commands.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/** `flarewise sheet`: a page for the person at the drill, on screen or as a file; in a terminal, what the flags leave out is asked for. */
export async function sheetCommand(options: SheetCommandOptions, terminal: Terminal): Promise<void> {
  const needs = askedFlags(options, ['layout', 'bowler', 'ball'], terminal);
  const { records, layout, ...made } = collectFaults({
    records: () =>
      collectFaults({
        ...recordReaders(options, needs, terminal),
        lane: () => (options.lane === undefined ? undefined : loadLane(options.lane, terminal)),
      }),
    layout: () => (needs.layout ? null : layoutFlag(options.layout)),
    out: () =>
      options.out === undefined
        ? null
        : { kind: kindOfFile(options.out, SHEET_KINDS), path: checkedOut(options.out) },
    paper: () => paperFlag(options.paper, terminal),
    date: () => dateFlag(options.date, new Date()),
    seed: searchFlags(options, terminal).seed,
    ruleSet: () => rulesFlag(options.rules),
    ounce: () => ounceFlag(options.ounce),
    ...globalFlags(options, terminal),
  });
  await withRecords({ needs, given: records, isSimulated: false }, options, terminal, {
    async find({ bowler, ball, lane, layout: asked }, { line, isAhead }) {
      const placed = layoutOnBall(layout ?? readLayout(asked), ball);
      const typed = singleBlanks(options.layout ?? asked);
      const { date, seed, ruleSet, ounce, workers, units } = made;
      const learned = lane
        ? await learnedFor({ bowler, lane }, options, { seed, line, isAhead, workers }, terminal)
        : undefined;
      const inputs = { bowler, ball, lane, layout: placed, learned };
      return sheetAnswer(inputs, {
        date,
        seed,
        ruleSet,
        ounce,
        tapeStepIn: UNITS[units].tapeStepIn,
        typed,
        invented: inventedAmong(inputs),
        budget: terminal.budget,
        onProgress: line.show,
      });
    },
    async show(answer) {
      await showSheet(answer, made, options, terminal);
      return GOES_ON;
    },
  });
}

/** Where the sheet goes, and how it is set. */
interface Paging {
  readonly out: { readonly kind: (typeof SHEET_KINDS)[number]; readonly path: string } | null;
  readonly paper: Paper;
  readonly units: UnitSystem;
}

/** Prints the sheet, or writes it to the file that is named for it. */
async function showSheet(
  answer: SheetAnswer,
  { out, paper, units }: Paging,
  options: SheetCommandOptions,
  terminal: Terminal,
): Promise<void> {
  if (!out) {
    await printAnswer(
      answer,
      (page) => sheetReport(answer, page),
      options,
      terminal,
      nextCommands(options, ['keep']),
    );
    return;
  }
  writeOut(out.path, await sheetFile(answer, out.kind, paper, UNITS[units]));
  await printAnswer(answer, () => `${visible(out.path)}\n`, options, terminal);
}
