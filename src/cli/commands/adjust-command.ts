import { atDesk } from '../../interview/ask/desk.js';
import { sharedBalls } from '../../prepare/shared-balls.js';
import { UNITS } from '../../report/text/display-units.js';
import { inventedAmong } from '../files/invented.js';
import { keptDrilled } from '../files/kept-drilled.js';
import { reportFlag, writeReport } from '../files/report-flag.js';
import { changeFlags, didFlags } from '../flags/change-flags.js';
import type { AdjustOptions } from '../flags/options.js';
import { searchFlags } from '../flags/search-flags.js';
import { unitsFlag } from '../flags/units-flag.js';
import { taughtFor } from '../learned/learned-for.js';
import { askStreams } from '../print/ask-streams.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
import { collectFaults } from '../terminal/collect-faults.js';
import { canAsk, type Terminal } from '../terminal/terminal.js';

/** `flarewise adjust`: what to change where a drilled ball does not do what was wanted. */
export async function adjustCommand(given: AdjustOptions, terminal: Terminal): Promise<void> {
  const options =
    given.input && canAsk(terminal)
      ? await atDesk(askStreams(given, terminal), UNITS[unitsFlag(given.units)], async (desk) => {
          const { askAdjust } = await import('./ask-adjust.js');
          return askAdjust(given, desk, terminal);
        })
      : given;
  const { drilled, asked, told, report, ...search } = collectFaults({
    drilled: () => keptDrilled(options, terminal),
    asked: () => changeFlags(options),
    told: () => didFlags(options),
    report: () => reportFlag(options.report),
    ...searchFlags(options, terminal),
  });
  const { kept, bowler, lane, night, others } = drilled;
  const lesson = (await taughtFor(drilled, options, search, terminal)) ?? null;
  const { withStartedThreads } = await import('../../simulate/started-threads.js');
  const answer = await withStartedThreads(search.workers - 1, async (threads) => {
    const { adjust } = await import('../../answer/adjust/adjust.js');
    return withProgress(terminal, async ({ show: onProgress }) => {
      const how = { ...search, threads, readyBall: sharedBalls(), onProgress };
      return adjust({ bowler, kept, lane, asked, told, night, others, lesson }, how);
    });
  });
  await printAnswer(
    answer,
    async (page) => {
      const { adjustReport } = await import('../../report/screens/adjust-report.js');
      return adjustReport(answer, page, options.full);
    },
    options,
    terminal,
  );
  if (report === null) return;
  const { adjustHtml } = await import('../../report/web/adjust-html.js');
  const invented = inventedAmong({ bowler, ball: kept.ball, lane });
  writeReport(report, adjustHtml(answer, invented, UNITS[search.units]));
}
