import { layoutOnBall } from '../recommend/layout-on-ball.js';
import { mapAnswer } from '../recommend/map-answer.js';
import { MIDDLE_LAYOUT } from '../recommend/middle-layout.js';
import { mapCsv } from '../report/map-csv.js';
import { mapReport } from '../report/map-report.js';
import { coreFitter } from './core-fitter.js';
import { OVERS } from './flag-table.js';
import { layoutFlag, oneOf } from './flags.js';
import { gather } from './gather.js';
import { globalFlags } from './global-flags.js';
import { loadBall, loadBowler } from './load-record.js';
import { oneFormat } from './one-format.js';
import type { MapOptions } from './options.js';
import { printAnswer } from './print-answer.js';
import type { Terminal } from './terminal.js';

/** `flarewise map`: drilled numbers over one number of the layout. */
export async function mapCommand(options: MapOptions, terminal: Terminal): Promise<void> {
  const { over, written, bowler, ball } = gather({
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
  const answer = mapAnswer({ bowler, ball, around }, over, coreFitter(terminal));
  if (options.csv) terminal.stdout.write(mapCsv(answer));
  else printAnswer(answer, (page) => mapReport(answer, page), options, terminal);
}
