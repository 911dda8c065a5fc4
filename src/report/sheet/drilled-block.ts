import type { SheetAnswer } from '../../records/sheet-answer.js';
import { DRILLED_ROWS } from '../drilled-rows.js';
import { decimals, gyration, isOneCore } from '../figures.js';
import { psaText, staticsText } from '../workshop.js';
import { type Block, rowsOf, text } from './blocks.js';

/** What drilling makes of the ball: numbers with their bands, static weights, the strong axis. */
export function drilledBlock({ undrilled, drilled, bands, psa }: SheetAnswer): Block {
  const cores = isOneCore(bands) ? [] : ['9 of 10 cores'];
  return {
    heading: 'Drilled ball',
    parts: [
      rowsOf(
        ['', 'before', 'after', ...cores],
        [
          ...DRILLED_ROWS.map(({ key, name }) => [
            `${name}, in`,
            gyration(undrilled[key]),
            gyration(drilled[key]),
            ...cores.map(() => `${gyration(bands[key].low)} – ${gyration(bands[key].high)}`),
          ]),
          ['weight, lb', decimals(undrilled.massLb, 2), decimals(drilled.massLb, 2), ...cores.map(() => '')],
        ],
      ),
      text(staticsText(drilled.staticOz)),
      text(psaText(psa)),
    ],
  };
}
