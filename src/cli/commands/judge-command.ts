import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import type { JudgeAnswer } from '../../records/answers/answer.js';
import { readLayout } from '../../records/text/written-layout.js';
import { UNITS } from '../../report/text/display-units.js';
import { GOES_ON } from '../answering/answered.js';
import { type Searched, searched } from '../answering/searched.js';
import { recordReaders, withLane, withRecords } from '../answering/with-records.js';
import { inventedAmong } from '../files/invented.js';
import { reportFlag, writeReport } from '../files/report-flag.js';
import { askedFlags } from '../flags/asked-flags.js';
import { layoutFlag } from '../flags/flags.js';
import type { JudgeOptions } from '../flags/options.js';
import { searchFlags } from '../flags/search-flags.js';
import { unitsFlag } from '../flags/units-flag.js';
import { nextCommands } from '../print/next-commands.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/** `flarewise judge`: a second opinion on one layout; in a terminal, what the flags leave out is asked for. */
export async function judgeCommand(options: JudgeOptions, terminal: Terminal): Promise<void> {
  const needs = askedFlags(options, ['layout', 'bowler', 'ball', 'lane', 'want'], terminal);
  const { layout, report, records, ...search } = collectFaults({
    records: () => collectFaults(recordReaders(options, needs, terminal)),
    layout: () => (needs.layout ? null : layoutFlag(options.layout)),
    report: () => reportFlag(options.report),
    ...searchFlags(options, terminal),
  });
  await withRecords({ needs, given: records, isSimulated: true }, options, terminal, {
    async find(found, finding) {
      const given = withLane(found);
      const placed = layoutOnBall(layout ?? readLayout(found.layout), given.ball);
      return searched(given, finding, search, options, terminal, async (inputs, how) => {
        const { judge } = await import('../../answer/judge.js');
        return judge({ ...inputs, layout: placed }, { ...how, regression: finding.ready?.regression });
      });
    },
    async show(judged) {
      await showJudgement(judged, report, options, terminal);
      return GOES_ON;
    },
  });
}

/** Prints a second opinion and, where a file is named for it, writes its web page. */
async function showJudgement(
  { answer, inputs, fitter }: Searched<JudgeAnswer>,
  report: string | null,
  options: JudgeOptions,
  terminal: Terminal,
): Promise<void> {
  const [toDrill, sheet] =
    answer.verdict === 'not-allowed'
      ? ([answer.best, 'sheet-of-best'] as const)
      : ([answer.layout, 'sheet'] as const);
  await printAnswer(
    answer,
    async (page) => {
      const { judgeReport } = await import('../../report/screens/judge-report.js');
      return judgeReport(answer, page, options.full);
    },
    options,
    terminal,
    nextCommands({ ...options, layout: toDrill.text }, [sheet, 'recommend']),
  );
  if (report === null) return;
  const [{ webReportData }, { judgeHtml }] = await Promise.all([
    import('../../answer/web-report-data.js'),
    import('../../report/web/judge-html.js'),
  ]);
  const facts = webReportData(inputs, answer.layout, fitter, terminal.budget);
  writeReport(report, judgeHtml(answer, facts, inventedAmong(inputs), UNITS[unitsFlag(options.units)]));
}
