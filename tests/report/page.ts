import { Chalk } from 'chalk';
import type { Page } from '../../src/report/page.js';
import { paintWith } from '../../src/report/paint.js';

/** A page without colour, unless a chalk level is given. */
export const pageOf = (width: number, { ascii = false, level = 0 as 0 | 1 } = {}): Page => ({
  width,
  ascii,
  paint: paintWith(new Chalk({ level })),
});
