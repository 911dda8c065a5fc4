import type { ReactionAnswer, TargetAnswer } from '../../../records/answers/answer.js';
import { NUMBER_OF_WISH, REACTION_NUMBERS, wishWords } from '../../../records/schemas/reaction-numbers.js';
import { capital } from '../../../records/text/capital.js';
import { reachPicture } from '../../charts/reach-picture.js';
import type { Compared } from '../../picture/compared.js';
import { unitOf } from '../../tables/reaction-rows.js';
import { wishesGrid } from '../../tables/wishes-table.js';
import type { Units } from '../../text/display-units.js';
import { inUnicode } from '../../text/page.js';
import { figureHtml, smallPictures } from './figure-html.js';
import { gridHtml } from './table-html.js';

/** What was asked for, what layouts of the ball attain, and what some of them do; nothing where nothing was asked for. */
export function reachFigure(
  targets: readonly TargetAnswer[],
  compared: readonly Compared[],
  { reaction, whose }: { readonly reaction: ReactionAnswer; readonly whose: string },
  units: Units,
): string {
  if (targets.length === 0) return '';
  const pictures = targets.map(({ wish, step, value, asked = value, attainable }) => {
    const id = NUMBER_OF_WISH[wish];
    const { name, show } = unitOf(id, units);
    const isReached = show(asked) === show(value);
    const word = step === null ? null : wishWords(wish).steps[step - 1];
    const wished = word ?? (isReached ? null : `${show(asked)}, out of reach`);
    return reachPicture(compared, {
      title: `${capital(REACTION_NUMBERS[id].compared.row)}, ${name}${wished === null ? '' : `: ${wished}`}`,
      attainable,
      target: value,
      label: isReached ? 'wish' : 'nearest',
      numberOf: ({ layout }) => layout.reaction[id],
      show,
    });
  });
  return figureHtml(
    'reach',
    smallPictures(pictures),
    'The bar is what layouts of this ball reach, the triangle the wish or the nearest to it, each disc a layout in one steady shot.',
    [gridHtml(wishesGrid(targets, reaction, inUnicode(units), whose))],
  );
}
