import { layoutOnBall } from '../recommend/layout-on-ball.js';
import { coreFitter } from './core-fitter.js';
import { layoutFlag } from './flags.js';
import { gather } from './gather.js';
import { loadBall, loadBowler, loadLane } from './load-record.js';
import type { JudgeOptions } from './options.js';
import { printAnswer } from './print-answer.js';
import { withProgress } from './progress.js';
import { searchFlags } from './recommend-command.js';
import { reportFlag } from './report-flag.js';
import type { Terminal } from './terminal.js';
import { wantFlags } from './want-flags.js';

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
  } = gather({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    lane: () => loadLane(options.lane, terminal),
    want: () => wantFlags(options),
    layout: () => layoutFlag(options.layout),
    report: () => reportFlag(options.report),
    ...searchFlags(options, terminal),
  });
  const layout = layoutOnBall(written, ball);
  const { judge } = await import('../recommend/judge.js');
  const inputs = { bowler, ball, lane, want };
  const fitter = coreFitter(terminal);
  const answer = await withProgress(terminal, (onProgress) =>
    judge({ ...inputs, layout }, { ...search, fitter, onProgress }),
  );
  const { judgeReport } = await import('../report/judge-report.js');
  printAnswer(answer, (page) => judgeReport(answer, page), options, terminal);
  if (report === null) return;
  const [{ writeReport }, { judgeHtml }] = await Promise.all([
    import('./report-file.js'),
    import('../report/web/judge-html.js'),
  ]);
  writeReport(report, judgeHtml, { answer, layout: answer.layout, inputs, fitter }, options, terminal);
}
