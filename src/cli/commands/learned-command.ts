import { learnedReport } from '../../report/screens/learned-report.js';
import { UNITS } from '../../report/text/display-units.js';
import { homeOf } from '../files/home.js';
import { inventedAmong } from '../files/invented.js';
import { keptName } from '../files/kept-name.js';
import { loadBowler, loadLane } from '../files/load-record.js';
import { reportFlag, writeReport } from '../files/report-flag.js';
import { dayFlag } from '../flags/date-flag.js';
import type { LearnedCommandOptions } from '../flags/options.js';
import { searchFlags } from '../flags/search-flags.js';
import { bowlerLog, keptLogs } from '../learned/bowler-log.js';
import { forgetFlag, forgetNights } from '../learned/forget-nights.js';
import { taughtBy } from '../learned/learned-for.js';
import { noLog } from '../learned/no-log.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/** `flarewise learned`: what the logged shots of a bowler teach. */
export async function learnedCommand(options: LearnedCommandOptions, terminal: Terminal): Promise<void> {
  const { seed, practiceWeight, units, workers } = searchFlags(options, terminal);
  const { bowler, forget, report, ...given } = collectFaults({
    bowler: () => loadBowler(options.bowler, terminal),
    lane: () => (options.lane === undefined ? undefined : loadLane(options.lane, terminal)),
    layout: () => (options.ball === undefined ? undefined : layoutId(options.ball, terminal)),
    since: () => (options.since === undefined ? undefined : dayFlag('--since', options.since)),
    report: () => reportFlag(options.report),
    forget: () => forgetFlag(options.forget),
    seed,
    practiceWeight,
    units,
    workers,
  });
  if (forget !== null) {
    const { kept = [] } = bowlerLog(bowler, given, keptLogs(terminal)) ?? {};
    if (kept.length === 0) throw noLog(bowler.name);
    return forgetNights(kept, forget, options, terminal);
  }
  const { lane, ...nights } = given;
  const log = bowlerLog(bowler, nights, keptLogs(terminal));
  if (!log) throw noLog(bowler.name);
  const { balls, leftOut } = log;
  const how = { seed: given.seed, practiceWeight: given.practiceWeight };
  const taught = await taughtBy({ bowler, lane, balls, leftOut }, how, terminal);
  if (!taught) throw noLog(bowler.name);
  const { answer } = taught;
  await printAnswer(answer, (page) => learnedReport(answer, page, options.full), options, terminal);
  if (report === null) return;
  const { learnedHtml } = await import('../../report/web/learned-html.js');
  writeReport(report, learnedHtml(answer, inventedAmong({ bowler }), UNITS[given.units]));
}

/** The id of a kept drilled layout. @throws {InputError} `no-such-record` */
const layoutId = (word: string, terminal: Terminal): string =>
  keptName(homeOf(terminal), word.startsWith('layout/') ? word : `layout/${word}`).id;
