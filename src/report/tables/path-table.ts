import type { PathPoint } from '../../records/answers/answer.js';
import { boards, decimals, degrees } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { paragraph } from '../text/section.js';
import { table } from '../text/table.js';

export const FEET_APART = 5;

/** The path at every fifth foot: the simulated point nearest to it. */
export function pathTable(path: readonly PathPoint[], page: Page): string[] {
  const end = path.at(-1)?.distanceFt ?? 0;
  const { laneMark, speed } = page.units;
  const rows: PathPoint[] = [];
  for (let ft = 0; ft <= end + FEET_APART / 2; ft += FEET_APART) rows.push(nearest(path, ft));
  const lines = table(
    [
      { head: laneMark.name },
      { head: 'board' },
      { head: `speed\n${speed.name}` },
      { head: 'rev rate\nrpm' },
      { head: 'heading\ndeg' },
      { head: 'slip\nm/s' },
      { head: 'time\ns' },
    ],
    rows.map((point) => [
      laneMark.show(point.distanceFt),
      boards(point.board),
      speed.show(point.speedMph),
      decimals(point.revRateRpm, 0),
      degrees(point.headingDeg),
      decimals(point.slipMps, 1),
      decimals(point.timeS, 2),
    ]),
    page,
  );
  return [...lines, ...paragraph(HEADING_NOTE, page, page.paint.quiet)];
}

/** The entry angle stands on the same screen. */
const HEADING_NOTE =
  'heading: at that moment, with the sway of a drilled ball; the entry angle is the mean over its last turn.';

const nearest = (path: readonly PathPoint[], ft: number): PathPoint =>
  path.reduce((best, point) =>
    Math.abs(point.distanceFt - ft) < Math.abs(best.distanceFt - ft) ? point : best,
  );
