import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { DRILLED_ROWS } from '../tables/drilled-rows.js';
import type { Units } from '../text/display-units.js';
import { isOneCore } from '../text/figures.js';
import { psaText, staticsWords } from '../wording/workshop.js';
import { type Block, rowsOf, text } from './blocks.js';

/** What drilling makes of the ball: numbers with their bands, static weights, the strong axis. */
export function drilledBlock(
  { undrilled, undrilledOz, drilled, bands, psa }: SheetAnswer,
  units: Units,
): Block {
  const { gyration, weight } = units;
  const cores = isOneCore(bands) ? [] : ['9 of 10 cores'];
  return {
    heading: 'Drilled ball',
    parts: [
      rowsOf(
        ['', 'before', 'after', ...cores],
        [
          ...DRILLED_ROWS.map(({ key, name }) => [
            `${name}, ${gyration.name}`,
            gyration.show(undrilled[key]),
            gyration.show(drilled[key]),
            ...cores.map(() => `${gyration.show(bands[key].low)} – ${gyration.show(bands[key].high)}`),
          ]),
          [
            `weight, ${weight.name}`,
            weight.show(undrilled.massLb),
            weight.show(drilled.massLb),
            ...cores.map(() => ''),
          ],
        ],
      ),
      text(`Static weights before drilling: ${staticsWords(undrilledOz, units)}.`),
      text(psaText(psa, units)),
    ],
  };
}
