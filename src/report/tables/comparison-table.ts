import type { SimulatedLayout } from '../../records/answers/answer.js';
import { COMPARED_IDS, REACTION_NUMBERS } from '../../records/schemas/reaction-numbers.js';
import { band, points } from '../text/figures.js';
import type { Spelling } from '../text/page.js';
import type { Grid } from '../text/table.js';
import { DRILLED_ROWS } from './drilled-rows.js';
import { unitOf } from './reaction-rows.js';

/** One layout's numbers with their bands, beside those of another; usually the best and the usual middle one. */
export const comparisonGrid = (
  best: SimulatedLayout,
  middle: SimulatedLayout,
  page: Spelling,
  [one, other]: readonly [string, string] = ['best\nlayout', 'usual\nlayout'],
): Grid => {
  const { gyration } = page.units;
  return {
    columns: [{ head: '' }, { head: one }, { head: '9 of 10\ntries' }, { head: other }],
    rows: [
      ['score, of 100', points(best.score), band(best.bands.score, points, page), points(middle.score)],
      ...COMPARED_IDS.map((id) => {
        const { name, show } = unitOf(id, page.units);
        return [
          `${REACTION_NUMBERS[id].compared.row}, ${name}`,
          show(best.reaction[id]),
          band(best.bands.reaction[id], show, page),
          show(middle.reaction[id]),
        ];
      }),
      ...DRILLED_ROWS.map(({ key, name }) => [
        `${name}, ${gyration.name}`,
        gyration.show(best.drilled[key]),
        band(best.bands.drilled[key], gyration.show, page),
        gyration.show(middle.drilled[key]),
      ]),
    ],
  };
};
