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
import { noLog } from '../learned/no-log.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
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
  const { learnedAnswer } = await import('../../answer/learned-answer.js');
  const answer = await withProgress(terminal, async ({ show: onProgress }) => {
    onProgress({ stage: 'logged shots', done: 0, total: 1 });
    const how = { seed: given.seed, practiceWeight: given.practiceWeight, budget: terminal.budget };
    return learnedAnswer({ bowler, lane, ...log }, how);
  });
  if (!answer) throw noLog(bowler.name);
  await printAnswer(answer, (page) => learnedReport(answer, page, options.full), options, terminal);
  if (report === null) return;
  const { learnedHtml } = await import('../../report/web/learned-html.js');
  writeReport(report, learnedHtml(answer, inventedAmong({ bowler }), UNITS[given.units]));
}

/** The id of a kept drilled layout. @throws {InputError} `no-such-record` */
const layoutId = (word: string, terminal: Terminal): string =>
  keptName(homeOf(terminal), word.startsWith('layout/') ? word : `layout/${word}`).id;
