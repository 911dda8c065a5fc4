import type { CompareRow } from '../../records/answers/compare-answer.js';
import { band, isOneCore } from '../text/figures.js';
import type { Spelling } from '../text/page.js';
import type { Grid } from '../text/table.js';
import { axisGrid, flareGrid } from './axis-tables.js';
import { DRILLED_ROWS } from './drilled-rows.js';

const nameOf = ({ name }: CompareRow, i: number): string => `${i + 1} ${name}`;

/**
 * Drilled numbers of those that are compared, below those of the ball as made, each with the band that 9 of 10 cores lie in where cores
 * were fitted.
 */
export function comparedDrilledGrid(rows: readonly CompareRow[], page: Spelling): Grid {
  const { name: unit, show } = page.units.gyration;
  const isFitted = rows.some(({ bands }) => !isOneCore(bands.drilled));
  const bandHead = isFitted ? [{ head: '9 of 10\ncores' }] : [];
  const isOneBall = rows.every(({ ball }) => ball === rows[0].ball);
  return {
    columns: [
      { head: '' },
      ...DRILLED_ROWS.flatMap(({ name }) => [{ head: `${name}\n${unit}` }, ...bandHead]),
    ],
    rows: rows.flatMap((row, i) => {
      const { undrilled, drilled, bands } = row;
      const asMade = [
        isOneBall ? 'undrilled' : `${i + 1} undrilled`,
        ...DRILLED_ROWS.flatMap(({ key }) => [show(undrilled[key]), ...(isFitted ? [''] : [])]),
      ];
      return [
        ...(isOneBall && i > 0 ? [] : [asMade]),
        [
          nameOf(row, i),
          ...DRILLED_ROWS.flatMap(({ key }) => [
            show(drilled[key]),
            ...(isFitted ? [isOneCore(bands.drilled) ? '' : band(bands.drilled[key], show, page)] : []),
          ]),
        ],
      ];
    }),
  };
}

/** Where the high-RG axis of each comes out. */
export const comparedAxisGrid = (rows: readonly CompareRow[], page: Spelling): Grid =>
  axisGrid(rows, ['', nameOf], page);

/** How the flare of each starts. */
export const comparedFlareGrid = (rows: readonly CompareRow[], page: Spelling): Grid =>
  flareGrid(rows, ['', nameOf], page);
