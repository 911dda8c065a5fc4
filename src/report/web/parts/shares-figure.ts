import type { SharesAnswer } from '../../../records/answers/answer.js';
import { REACTION_NUMBERS, type WishedId } from '../../../records/schemas/reaction-numbers.js';
import { capital } from '../../../records/text/capital.js';
import { type SharedChange, sharesPicture } from '../../charts/shares-picture.js';
import { isNothing, sharesGrid } from '../../tables/shares-table.js';
import type { Units } from '../../text/display-units.js';
import { figureHtml, smallPictures } from './figure-html.js';
import { gridHtml } from './table-html.js';

/** The change from one layout to another in some numbers, and what each number of the layout brings of it; nothing for no change. */
export function sharesFigure(
  ids: readonly WishedId[],
  {
    shares,
    scatter,
    whose,
  }: {
    readonly shares: SharesAnswer;
    readonly scatter: Readonly<Record<WishedId, number>>;
    /** Which change it is: `from the usual layout`. */
    readonly whose: string;
  },
  units: Units,
): string {
  if (isNothing(shares)) return '';
  const changes = ids.map((id): SharedChange => {
    const { row, quantity } = REACTION_NUMBERS[id].compared;
    const { change, name } = units[quantity];
    return {
      key: id,
      title: capital(row),
      shares: shares[id],
      scatter: scatter[id],
      change: (value) => `${change(value)} ${name}`,
      isNothing: (value) => Number(change(value)) === 0,
    };
  });
  return figureHtml(
    'shares',
    smallPictures([sharesPicture(changes, `What each number of the layout brings, ${whose}`)]),
    'One steady shot, averaged over every order of changing the numbers one after another; steps too small to show are left out. All ' +
      'bars are on one scale: their size beside the scatter of your shots.',
    [gridHtml(sharesGrid(shares, units, whose))],
  );
}
