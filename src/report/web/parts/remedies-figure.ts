import type { AdjustAnswer } from '../../../records/answers/adjust-answer.js';
import { REACTION_NUMBERS } from '../../../records/schemas/reaction-numbers.js';
import { moversPicture } from '../../charts/movers-picture.js';
import { moverSize, movers } from '../../tables/movers.js';
import type { Units } from '../../text/display-units.js';
import { say } from '../../wording/say.js';
import { figureHtml, smallPictures } from './figure-html.js';
import { chartedIds } from './movers-figure.js';
import { gridHtml } from './table-html.js';

/** How far each remedy that is recommended moves the numbers that are wished for, beside the scatter of the bowler's shots. */
export function remediesFigure({ wished, remedies, reaction, scatter }: AdjustAnswer, units: Units): string {
  const layouts = remedies.flatMap(({ rank, remedy, effect }) =>
    rank === null ? [] : [{ sign: `${rank}`, name: say(remedy, units), size: effect }],
  );
  if (layouts.length === 0) return '';
  const moved = { scatter, reaction, layouts, targets: [], levers: [], from: '' };
  const charts = chartedIds(wished.map(({ reading }) => reading)).first.map((id) => {
    const { name, compared } = REACTION_NUMBERS[id];
    return {
      title: `What moves ${name}, ${units[compared.quantity].name}`,
      movers: movers(id, moved, units),
      scatter: scatter[id],
      sizeText: (mover: Parameters<typeof moverSize>[0]) => moverSize(mover, id, units),
    };
  });
  return figureHtml(
    'remedies',
    smallPictures(charts.map(moversPicture)),
    'Hatched: how your own shots vary. In bold: what each remedy changes of the ball as it is, mean of all tries.',
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
