import { UNITS } from '../../report/text/display-units.js';
import { entrantFlags } from '../files/entrant-flags.js';
import { inventedAmong } from '../files/invented.js';
import { loadBowler, loadLane } from '../files/load-record.js';
import { reportFlag, writeReport } from '../files/report-flag.js';
import type { CompareOptions } from '../flags/options.js';
import { searchFlags } from '../flags/search-flags.js';
import { wantFlags } from '../flags/want-flags.js';
import { withLearned } from '../learned/learned-for.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/** `flarewise compare`: layouts, balls or finishes side by side. */
export async function compareCommand(options: CompareOptions, terminal: Terminal): Promise<void> {
  const { bowler, lane, want, compared, report, ...search } = collectFaults({
    bowler: () => loadBowler(options.bowler, terminal),
    lane: () => loadLane(options.lane, terminal),
    want: () => wantFlags(options),
    compared: () => entrantFlags(options, terminal),
    report: () => reportFlag(options.report),
    ...searchFlags(options, terminal),
  });
  const inputs = await withLearned({ bowler, lane, want, ...compared }, options, search, terminal);
  const { compare } = await import('../../answer/compare.js');
  const answer = await withProgress(terminal, ({ show: onProgress }) =>
    compare(inputs, { ...search, onProgress }),
  );
  await printAnswer(
    answer,
    async (page) => {
      const { compareReport } = await import('../../report/screens/compare-report.js');
      return compareReport(answer, page, options.full);
    },
    options,
    terminal,
  );
  if (report === null) return;
  const { compareHtml } = await import('../../report/web/compare-html.js');
  const [{ ball }] = compared.entrants;
  const invented = inventedAmong({ bowler, ball, lane });
  writeReport(report, compareHtml(answer, invented, UNITS[search.units]));
}
