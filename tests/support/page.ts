import { Chalk } from 'chalk';
import { UNITS } from '../../src/report/text/display-units.js';
import type { Page } from '../../src/report/text/page.js';
import { paintWith } from '../../src/report/text/paint.js';

/** A page without colour, unless a chalk level is given. */
export const pageOf = (
  width: number,
  { ascii = false, level = 0 as 0 | 1, units = UNITS.trade } = {},
): Page => ({
  width,
  ascii,
  units,
  paint: paintWith(new Chalk({ level })),
});
