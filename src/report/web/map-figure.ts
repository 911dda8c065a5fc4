import type { DrilledMap } from '../../records/answers/web-report-data.js';
import { capital } from '../../records/text/capital.js';
import type { Compared } from '../picture/compared.js';
import { mapPicture } from '../picture/map-picture.js';
import { DRILLED_ROWS } from '../tables/drilled-rows.js';
import { angle, band } from '../text/figures.js';
import type { Page } from '../text/page.js';
import type { Grid } from '../text/table.js';
import { figureHtml, smallPictures } from './figure-html.js';
import { gridHtml } from './table-html.js';

/** The drilled ball's numbers over drilling angle and pin-to-PAP. */
export function mapFigure(map: DrilledMap, compared: readonly Compared[], page: Page): string {
  const { units } = page;
  const charts = DRILLED_ROWS.map(({ key, name }) => ({
    key,
    title: `${capital(name)}, ${units.gyration.name}`,
  }));
  return figureHtml(
    'map',
    smallPictures(charts.map((chart) => mapPicture(map, chart, compared, units))),
    `Numbers after drilling, in the middle of all cores tried, at a VAL angle of ${angle(map.valAngleDeg, page)}. A layout stands ` +
      'where its drilling angle and its pin-to-PAP put it; those with another VAL angle have somewhat other numbers.',
    [
      gridHtml(drilledGrid(compared, page), 'The layouts drilled, and the band over 9 of 10 cores'),
      ...charts.map(({ key, title }) => gridHtml(mapGrid(map, key, page), title)),
    ],
  );
}

const mapGrid = (map: DrilledMap, key: (typeof DRILLED_ROWS)[number]['key'], { units }: Page): Grid => ({
  columns: [
    { head: `pin-to-PAP, ${units.tape.name}` },
    ...map.drillingAnglesDeg.map((deg) => ({ head: `${deg}°` })),
  ],
  rows: map.rows.map((row, i) => [
    units.tape.show(map.pinToPapsIn[i] as number),
    ...row.map((point) => units.gyration.show(point[key])),
  ]),
});

const drilledGrid = (compared: readonly Compared[], page: Page): Grid => {
  const { gyration } = page.units;
  return {
    columns: [
      { head: 'layout' },
      ...DRILLED_ROWS.flatMap(({ name }) => [{ head: `${name}, ${gyration.name}` }, { head: 'band' }]),
    ],
    rows: compared.map(({ sign, layout }) => [
      `${sign} ${layout.text}`,
      ...DRILLED_ROWS.flatMap(({ key }) => [
        gyration.show(layout.drilled[key]),
        band(layout.bands.drilled[key], gyration.show, page),
      ]),
    ]),
  };
};
