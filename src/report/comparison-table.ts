import type { SimulatedLayout } from '../records/answer.js';
import { DRILLED_ROWS } from './drilled-rows.js';
import { band, gyration, points } from './figures.js';
import type { Page } from './page.js';
import { REACTION_ROWS } from './reaction-rows.js';
import { table } from './table.js';

/** One layout's numbers with their bands, beside those of another; usually the best and the usual middle one. */
export const comparisonTable = (
  best: SimulatedLayout,
  middle: SimulatedLayout,
  page: Page,
  [one, other]: readonly [string, string] = ['best\nlayout', 'usual\nlayout'],
): string[] =>
  table(
    [{ head: '' }, { head: one }, { head: '9 of 10\nworlds' }, { head: other }],
    [
      ['score, of 100', points(best.score), band(best.bands.score, points, page), points(middle.score)],
      ...REACTION_ROWS.map(({ key, name, unit, show }) => [
        `${name}, ${unit}`,
        show(best.reaction[key]),
        band(best.bands.reaction[key], show, page),
        show(middle.reaction[key]),
      ]),
      ...DRILLED_ROWS.map(({ key, name }) => [
        `${name}, in`,
        gyration(best.drilled[key]),
        band(best.bands.drilled[key], gyration, page),
        gyration(middle.drilled[key]),
      ]),
    ],
    page,
  );
