import { decimals } from '../../base/decimals.js';
import type { MapAnswer } from '../../records/answers/answer.js';
import { band } from '../text/figures.js';
import type { Spelling } from '../text/page.js';
import type { Grid } from '../text/table.js';
import { MAP_ORDER, MAP_WORDS, moveOf, OVER_WORDS } from '../wording/map-words.js';

/** Where the high-RG axis comes out in each row of a map. */
export const psaGrid = ({ over, rows }: MapAnswer, page: Spelling): Grid => {
  const { name, show } = page.units.roughTape;
  const hasMark = rows.some(({ psa }) => psa.fromMarkIn !== null);
  return {
    columns: [
      { head: OVER_WORDS[over].name },
      ...['PAP', 'pin', ...(hasMark ? ['mark'] : []), 'grip centre'].map((from) => ({
        head: `from ${from}\n${name}`,
      })),
      { head: 'certain' },
    ],
    rows: rows.map((row) => [
      OVER_WORDS[over].of(row, page),
      show(row.psa.fromPapIn),
      show(row.psa.fromPinIn),
      ...(row.psa.fromMarkIn === null ? [] : [show(row.psa.fromMarkIn)]),
      show(row.psa.fromGripCentreIn),
      row.psa.certain ? 'yes' : 'no',
    ]),
  };
};

/** How flare starts in each row of a map, beside the total differential that sets the most. */
export const flareStartGrid = ({ over, rows }: MapAnswer, page: Spelling): Grid => {
  const { fineTape, gyration } = page.units;
  return {
    columns: [
      { head: OVER_WORDS[over].name },
      { head: `in a turn\n${fineTape.name}` },
      { head: 'of the most\n%' },
      { head: `total differential\n${gyration.name}` },
    ],
    rows: rows.map((row) => [
      OVER_WORDS[over].of(row, page),
      fineTape.show(row.flareStart.perTurnIn),
      decimals(100 * row.flareStart.share, 0),
      gyration.show(row.drilled.differentialIn),
    ]),
  };
};

/** What the columns of `flareStartGrid` mean. */
export const FLARE_START_NOTE =
  'How far the core moves the axis, and with it the oil rings, in the first turn. The total differential sets the most; how much of it is ' +
  'reached depends on where the PAP lies: all of it halfway between low-RG and high-RG axis.';

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
