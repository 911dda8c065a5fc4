import { REACTION_NUMBERS, type WishedId } from '../../../records/schemas/reaction-numbers.js';
import { capital } from '../../../records/text/capital.js';
import { type PairedNumber, pairedPicture } from '../../charts/paired-picture.js';
import type { Compared } from '../../picture/compared.js';
import { unitOf } from '../../tables/reaction-rows.js';
import type { Units } from '../../text/display-units.js';
import { figureHtml, smallPictures } from './figure-html.js';
import { gridHtml } from './table-html.js';

/** Layouts with their differences from another one, world by world. */
interface Paired {
  /** What the zero line stands for: `the usual 50 x 4 1/2 x 35`. */
  readonly from: string;
  readonly worlds: number;
  readonly scatter: Readonly<Record<WishedId, number>>;
  readonly rows: readonly {
    readonly compared: Compared;
    readonly twentieths: Readonly<Record<WishedId, readonly number[]>>;
  }[];
}

/** How far layouts differ from another in the same world; nothing where none does. */
export function pairedFigure(
  ids: readonly WishedId[],
  { from, worlds, scatter, rows }: Paired,
  units: Units,
): string {
  if (rows.length === 0) return '';
  const numbers = ids.map((id): PairedNumber => {
    const { row, more, less } = REACTION_NUMBERS[id].compared;
    const { name, change } = unitOf(id, units);
    return {
      title: `${capital(row)}, ${name}`,
      scatter: scatter[id],
      rows: rows.map(({ compared, twentieths }) => ({ compared, twentieths: twentieths[id] })),
      change,
      words: [less, more],
    };
  });
  return figureHtml(
    'paired',
    smallPictures(numbers.map(pairedPicture)),
    `Each layout less ${from}, both rolled under the same conditions, physics and practice combined. A dot stands for one in twenty of ${worlds} simulated tries. ` +
      'The grey band: differences that a night of shots with each would not show.',
    numbers.map(({ title, rows: each, change }) =>
      gridHtml(
        {
          columns: [{ head: 'layout' }, { head: 'differences, one try in twenty each' }],
          rows: each.map(({ compared: { sign }, twentieths }) => [sign, twentieths.map(change).join(', ')]),
        },
        title,
      ),
    ),
  );
}
