import { coreFitter } from './core-fitter.js';
import { layoutFlag } from './flags.js';
import { gather } from './gather.js';
import { loadBall, loadBowler, loadLane } from './load-record.js';
import type { JudgeOptions } from './options.js';
import { printAnswer } from './print-answer.js';
import { withProgress } from './progress.js';
import { searchFlags } from './recommend-command.js';
import type { Terminal } from './terminal.js';
import { wantFlags } from './want-flags.js';

/** `flarewise judge`: a second opinion on one layout. */
export async function judgeCommand(options: JudgeOptions, terminal: Terminal): Promise<void> {
  const { bowler, ball, lane, want, layout, ...search } = gather({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    lane: () => loadLane(options.lane, terminal),
    want: () => wantFlags(options),
    layout: () => layoutFlag(options.layout),
    ...searchFlags(options, terminal),
  });
  const { judge } = await import('../recommend/judge.js');
  const answer = await withProgress(terminal, (onProgress) =>
    judge({ bowler, ball, lane, want, layout }, { ...search, fitter: coreFitter(terminal), onProgress }),
  );
  const { judgeReport } = await import('../report/judge-report.js');
  printAnswer(answer, (page) => judgeReport(answer, page), options, terminal);
}
