import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import { coreFitter } from '../files/core-fitter.js';
import { loadBall, loadBowler, loadLane } from '../files/load-record.js';
import { reportFlag } from '../files/report-flag.js';
import { layoutFlag } from '../flags/flags.js';
import type { JudgeOptions } from '../flags/options.js';
import { wantFlags } from '../flags/want-flags.js';
import { nextCommands } from '../print/next-commands.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';
import { searchFlags } from './recommend-command.js';

/** `flarewise judge`: a second opinion on one layout. */
export async function judgeCommand(options: JudgeOptions, terminal: Terminal): Promise<void> {
  const {
    bowler,
    ball,
    lane,
    want,
    layout: written,
    report,
    ...search
  } = collectFaults({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    lane: () => loadLane(options.lane, terminal),
    want: () => wantFlags(options),
    layout: () => layoutFlag(options.layout),
    report: () => reportFlag(options.report),
    ...searchFlags(options, terminal),
  });
  const layout = layoutOnBall(written, ball);
  const { judge } = await import('../../answer/judge.js');
  const inputs = { bowler, ball, lane, want };
  const fitter = coreFitter(terminal);
  const answer = await withProgress(terminal, (onProgress) =>
    judge({ ...inputs, layout }, { ...search, fitter, onProgress }),
  );
  const { judgeReport } = await import('../../report/screens/judge-report.js');
  printAnswer(
    answer,
    (page) => judgeReport(answer, page, options.full),
    options,
    terminal,
    nextCommands(options, ['sheet', 'recommend']),
  );
  if (report === null) return;
  const [{ writeReport }, { judgeHtml }] = await Promise.all([
    import('../files/report-file.js'),
    import('../../report/web/judge-html.js'),
  ]);
  writeReport(report, judgeHtml, { answer, layout: answer.layout, inputs, fitter }, options, terminal);
}
