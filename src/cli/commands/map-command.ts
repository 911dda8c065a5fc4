import { mapAnswer } from '../../answer/map-answer.js';
import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import { MIDDLE_LAYOUT } from '../../prepare/middle-layout.js';
import { formatLayout } from '../../records/text/layout-text.js';
import { mapCsv } from '../../report/csv/map-csv.js';
import { mapReport } from '../../report/screens/map-report.js';
import { coreFitter } from '../files/core-fitter.js';
import { loadBall, loadBowler } from '../files/load-record.js';
import { OVERS } from '../flags/flag-table.js';
import { layoutFlag, oneOf } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import { oneFormat } from '../flags/one-format.js';
import type { MapOptions } from '../flags/options.js';
import { nextCommands } from '../print/next-commands.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/** `flarewise map`: drilled numbers over one number of the layout. */
export async function mapCommand(options: MapOptions, terminal: Terminal): Promise<void> {
  const { over, written, bowler, ball } = collectFaults({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    ...globalFlags(options, terminal),
    format: () => oneFormat(options),
    written: () => (options.layout === undefined ? null : layoutFlag(options.layout)),
    over: () =>
      oneOf(
        '--over',
        options.over ?? 'drilling-angle',
        OVERS,
        'Which number of the layout runs over its range.',
      ),
  });
  const around = written ? layoutOnBall(written, ball) : MIDDLE_LAYOUT;
  const answer = mapAnswer({ bowler, ball, around }, over, coreFitter(terminal), terminal.budget);
  if (options.csv) terminal.stdout.write(mapCsv(answer));
  else
    printAnswer(
      answer,
      (page) => mapReport(answer, page),
      options,
      terminal,
      nextCommands({ ...options, layout: options.layout ?? formatLayout(MIDDLE_LAYOUT) }, [
        'drilled',
        'sheet',
      ]),
    );
}
