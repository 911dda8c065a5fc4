import type { MapAnswer } from '../../records/answers/answer.js';
import { band } from '../text/figures.js';
import type { Spelling } from '../text/page.js';
import type { Grid } from '../text/table.js';
import { MAP_ORDER, MAP_WORDS, moveOf, OVER_WORDS } from '../wording/map-words.js';
import { axisGrid, flareGrid } from './axis-tables.js';

/** Where the high-RG axis comes out in each row of a map. */
export const psaGrid = ({ over, rows }: MapAnswer, page: Spelling): Grid =>
  axisGrid(rows, [OVER_WORDS[over].name, (row) => OVER_WORDS[over].of(row, page)], page);

/** How flare starts in each row of a map, beside the total differential that sets the most. */
export const flareStartGrid = ({ over, rows }: MapAnswer, page: Spelling): Grid =>
  flareGrid(rows, [OVER_WORDS[over].name, (row) => OVER_WORDS[over].of(row, page)], page);

/** How far each number moves, beside other balls drilled alike. */
export const glanceGrid = ({ reach, beside }: MapAnswer, page: Spelling): Grid => {
  const { units } = page;
  return {
    columns: [
      { head: '' },
      { head: 'this ball' },
      { head: 'moves' },
      { head: 'cores' },
      { head: 'matters' },
      ...beside.map(({ kind }) => ({ head: kind })),
    ],
    rows: MAP_ORDER.map((key) => {
      const { name, show, unit } = MAP_WORDS[key];
      const { least, most, bandWidth, matters } = reach.numbers[key];
      const range = (low: number, high: number): string =>
        band({ low, high }, (value) => show(value, units), page);
      return [
        `${name}, ${unit(units)}`,
        range(least, most),
        show(moveOf(reach, key), units),
        bandWidth > 0 ? `±${show(bandWidth / 2, units)}` : '',
        matters === null ? '' : matters ? 'yes' : 'hardly',
        ...beside.map(({ numbers }) => range(numbers[key].least, numbers[key].most)),
      ];
    }),
  };
};

/** Each row's numbers. */
export const mapRowsGrid = ({ over, rows }: MapAnswer, page: Spelling): Grid => ({
  columns: [
    { head: OVER_WORDS[over].name },
    ...MAP_ORDER.map((key) => ({ head: `${MAP_WORDS[key].name}, ${MAP_WORDS[key].unit(page.units)}` })),
  ],
  rows: rows.map((row) => [
    OVER_WORDS[over].of(row, page),
    ...MAP_ORDER.map((key) =>
      MAP_WORDS[key].show(key === 'asymmetry' ? row.asymmetry.middle : row.drilled[key], page.units),
    ),
  ]),
});
