import type { CompareRow } from '../../records/answers/compare-answer.js';
import { band } from '../text/figures.js';
import type { Spelling } from '../text/page.js';
import type { Grid } from '../text/table.js';
import { DRILLED_ROWS } from './drilled-rows.js';

/** Drilled numbers of those that are compared, each with the band that 9 of 10 cores lie in. */
export const comparedDrilledGrid = (rows: readonly CompareRow[], page: Spelling): Grid => {
  const { name: unit, show } = page.units.gyration;
  return {
    columns: [
      { head: '' },
      ...DRILLED_ROWS.flatMap(({ name }) => [{ head: `${name}\n${unit}` }, { head: '9 of 10\ncores' }]),
    ],
    rows: rows.map(({ name, drilled, bands }, i) => [
      `${i + 1} ${name}`,
      ...DRILLED_ROWS.flatMap(({ key }) => [show(drilled[key]), band(bands.drilled[key], show, page)]),
    ]),
  };
};
