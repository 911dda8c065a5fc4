import type { DrilledMap } from '../../../records/answers/web-report-data.js';
import { mapPicture } from '../../charts/map-picture.js';
import type { Compared } from '../../picture/compared.js';
import type { Units } from '../../text/display-units.js';
import { angle } from '../../text/figures.js';
import { inUnicode } from '../../text/page.js';
import type { Grid } from '../../text/table.js';
import { figureHtml, smallPictures } from './figure-html.js';
import { gridHtml } from './table-html.js';

/** Layouts whose VAL angle is nearer than this to the map's stand on it, deg; others have other numbers. */
const SAME_VAL_DEG = 3;

const KEY = 'intermediateDifferentialIn';

/** What drilled balls of the trade span, from plain to strongly asymmetric cores, in (common practice, no source). */
const SCALE_IN = [0, 0.03] as const;

/** The one drilled number that layouts of a ball move clearly, over drilling angle and pin-to-PAP. */
export function mapFigure(map: DrilledMap, compared: readonly Compared[], units: Units): string {
  const title = `Intermediate differential, ${units.gyration.name}`;
  const there = compared.filter(
    ({ layout }) => Math.abs(layout.valAngleDeg - map.valAngleDeg) < SAME_VAL_DEG,
  );
  return figureHtml(
    'map',
    smallPictures([mapPicture(map, { key: KEY, title, scale: SCALE_IN }, there, units)]),
    `After drilling, in the middle of all cores tried, at a VAL angle of ${angle(map.valAngleDeg, inUnicode(units))}; only layouts with about that ` +
      'angle stand on it. ' +
      `Tones run from ${units.gyration.show(SCALE_IN[0])} to ${units.gyration.show(SCALE_IN[1])} ${units.gyration.name} for every ball.`,
    [gridHtml(mapGrid(map, units), title)],
  );
}

const mapGrid = (map: DrilledMap, units: Units): Grid => ({
  columns: [
    { head: `pin-to-PAP, ${units.tape.name}` },
    ...map.drillingAnglesDeg.map((deg) => ({ head: `${deg}°` })),
  ],
  rows: map.rows.map((row, i) => [
    units.tape.show(map.pinToPapsIn[i]),
    ...row.map((point) => units.gyration.show(point[KEY])),
  ]),
});
