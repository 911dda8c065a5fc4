import type { AdjustAnswer } from '../../../records/answers/adjust-answer.js';
import type { Units } from '../../text/display-units.js';
import { say } from '../../wording/say.js';
import { chartedIds, moversFigure } from './movers-figure.js';

/** How far each remedy that is recommended moves the numbers that are wished for, beside the scatter of the bowler's shots. */
export function remediesFigure({ wished, remedies, reaction, scatter }: AdjustAnswer, units: Units): string {
  const layouts = remedies.flatMap(({ rank, remedy, effect }) =>
    rank === null ? [] : [{ sign: `${rank}`, name: say(remedy, units), size: effect }],
  );
  if (layouts.length === 0) return '';
  return moversFigure(
    'remedies',
    chartedIds(wished.map(({ reading }) => reading)).first,
    { scatter, reaction, layouts, targets: [], levers: [], from: '' },
    units,
    'Hatched: how your own shots vary. In bold: what each remedy changes of the ball as it is, mean of all tries.',
  );
}
