import { mapAnswer } from '../../answer/map/map-answer.js';
import type { spreadOnLane } from '../../answer/spread-on-lane.js';
import { USUAL_SEED } from '../../base/search-limits.js';
import { visible } from '../../base/visible.js';
import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import { MIDDLE_LAYOUT } from '../../prepare/middle-layout.js';
import type { MapAnswer } from '../../records/answers/answer.js';
import { formatLayout } from '../../records/text/layout-text.js';
import { mapCsv } from '../../report/csv/map-csv.js';
import { glancePicture } from '../../report/picture/glance-picture.js';
import { mapReport } from '../../report/screens/map-report.js';
import { UNITS } from '../../report/text/display-units.js';
import { mapHtml, mapTitle } from '../../report/web/map-html.js';
import { pictureFile } from '../../report/web/picture-file.js';
import { besideBalls } from '../files/beside-balls.js';
import { inventedAmong } from '../files/invented.js';
import { loadBall, loadBowler, loadLane } from '../files/load-record.js';
import { writeOut } from '../files/out-file.js';
import { pictureFlag } from '../files/picture-flag.js';
import { OVERS } from '../flags/flag-table.js';
import { layoutFlag, oneOf } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import { oneFormat } from '../flags/one-format.js';
import type { MapOptions } from '../flags/options.js';
import { withLearned } from '../learned/learned-for.js';
import { nextCommands } from '../print/next-commands.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/** `flarewise map`: drilled numbers over one number of the layout. */
export async function mapCommand(options: MapOptions, terminal: Terminal): Promise<void> {
  const {
    over,
    written,
    bowler,
    ball,
    lane,
    workers,
    out,
    units: system,
  } = collectFaults({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    lane: () => (options.lane === undefined ? null : loadLane(options.lane, terminal)),
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
    out: () => pictureFlag(options.out),
  });
  const around = written ? layoutOnBall(written, ball) : MIDDLE_LAYOUT;
  const { budget } = terminal;
  const map = mapAnswer({ bowler, ball, around }, over, budget, besideBalls());
  const how = { seed: USUAL_SEED };
  const answer = lane
    ? {
        ...map,
        onLane: await rollEnds(map, await withLearned({ bowler, ball, lane }, options, how, terminal)),
      }
    : map;
  if (options.csv) return void terminal.stdout.write(mapCsv(answer));
  if (out) {
    const units = UNITS[system];
    const invented = inventedAmong({ bowler, ball, lane });
    const bytes = await pictureFile(out.kind, {
      picture: () => glancePicture(answer, mapTitle(answer), units),
      page: () => mapHtml(answer, invented, units),
    });
    writeOut(out.path, bytes);
    return printAnswer(answer, () => `${visible(out.path)}\n`, options, terminal);
  }
  const layout = options.layout ?? formatLayout(MIDDLE_LAYOUT);
  await printAnswer(
    answer,
    (page) => mapReport(answer, page, options.full),
    options,
    terminal,
    nextCommands({ ...options, layout }, options.lane === undefined ? ['drilled', 'sheet'] : ['sheet']),
  );

  async function rollEnds(map: MapAnswer, inputs: Parameters<typeof spreadOnLane>[0]) {
    const { withStartedThreads } = await import('../../simulate/started-threads.js');
    return withStartedThreads(workers - 1, async (threads) => {
      const [{ spreadOnLane }, { sharedBalls }] = await Promise.all([
        import('../../answer/spread-on-lane.js'),
        import('../../prepare/shared-balls.js'),
      ]);
      const how = { seed: USUAL_SEED, workers, threads, readyBall: sharedBalls(), budget };
      return withProgress(terminal, ({ show: onProgress }) =>
        spreadOnLane(inputs, map, { ...how, pinSide: 'both', onProgress }),
      );
    });
  }
}
