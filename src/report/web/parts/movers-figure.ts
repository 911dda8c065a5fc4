import { REACTION_NUMBERS, type WishedId } from '../../../records/schemas/reaction-numbers.js';
import { moversPicture, type NumberMoved } from '../../charts/movers-picture.js';
import { type Moved, moverSize, movers } from '../../tables/movers.js';
import type { Units } from '../../text/display-units.js';
import { figureHtml, smallPictures } from './figure-html.js';
import { gridHtml } from './table-html.js';

/** Numbers that are always worth a chart: how far down the lane it hooks, and how much. */
const ALWAYS: readonly WishedId[] = ['hookStartFt', 'totalHookBoards'];

const ON_FIRST_SCREEN = 2;

/** What is charted: the numbers that are wished for before others; as many as a first screen has room for, and the rest. */
export function chartedIds(wished: readonly WishedId[]): {
  readonly first: readonly WishedId[];
  readonly rest: readonly WishedId[];
} {
  const ids = [...wished, ...ALWAYS.filter((id) => !wished.includes(id))];
  return {
    first: ids.slice(0, ON_FIRST_SCREEN),
    rest: ids.slice(ON_FIRST_SCREEN).filter((id) => wished.includes(id)),
  };
}

/** What is charted on a first screen: the number that counts most, to stand high up, and what comes after it. */
export function firstMovers(
  wished: readonly WishedId[],
  moved: Moved,
  units: Units,
): { readonly lead: string; readonly below: string } {
  const [lead, ...more] = chartedIds(wished).first;
  return {
    lead: moversFigure('movers', lead ? [lead] : [], moved, units, ''),
    below: moversFigure('movers-more', more, moved, units),
  };
}

const captionOf = ({ levers, from }: Moved): string =>
  [
    'Hatched: how your own shots vary.',
    ...(levers.length > 0
      ? ['Grey: one change with this layout, one steady shot on the line it then takes, practice included.']
      : []),
    `In bold: layouts against ${from}, by physics, mean of all tries.`,
  ].join(' ');

/** What moves some numbers, and how far; nothing for no numbers. */
export function moversFigure(
  id: string,
  ids: readonly WishedId[],
  moved: Moved,
  units: Units,
  caption = captionOf(moved),
): string {
  if (ids.length === 0) return '';
  const charts = ids.map((number): NumberMoved => {
    const { name, compared } = REACTION_NUMBERS[number];
    return {
      title: `What moves ${name}, ${units[compared.quantity].name}`,
      movers: movers(number, moved, units),
      scatter: moved.scatter[number],
      sizeText: (mover) => moverSize(mover, number, units),
    };
  });
  return figureHtml(
    id,
    smallPictures(charts.map(moversPicture)),
    caption,
    charts.map(({ title, movers: rows, sizeText }) =>
      gridHtml(
        {
          columns: [{ head: 'what' }, { head: 'how far' }],
          rows: rows.map((mover) => [`${mover.sign} ${mover.name}`.trim(), sizeText(mover)]),
        },
        title,
      ),
    ),
  );
}
