import type { SurerAnswer } from '../../records/answers/answer.js';
import { REACTION_NUMBERS, type WishedId } from '../../records/schemas/reaction-numbers.js';
import { capital } from '../../records/text/capital.js';
import type { Units } from '../text/display-units.js';
import { decimals } from '../text/figures.js';
import { say } from './say.js';

/** What knowing one thing would change, and by how much. @param ids  the numbers that are wished for */
export const surerText = (entry: SurerAnswer, ids: readonly WishedId[], units: Units): string =>
  `${surerShortly(entry, units)}${nearerText(entry.size, ids, units)} On average the score gains ${decimals(entry.gain, 1)} points.`;

/** The same without the size. */
export const surerShortly = (
  { unknown, chance }: Pick<SurerAnswer, 'unknown' | 'chance'>,
  units: Units,
): string => `${capital(say(unknown, units))}: knowing this would change the layout in ${triesText(chance)}.`;

/** A share of tries in tenths: with another seed it comes out a tenth higher or lower. */
const triesText = (share: number): string =>
  share >= 0.95 ? 'nearly all tries' : `about ${decimals(Math.max(1, 10 * share), 0)} of 10 tries`;

/** How much nearer to what is wished for the other layout comes; nothing where that is shown as 0. */
function nearerText(size: SurerAnswer['size'], ids: readonly WishedId[], units: Units): string {
  const parts = ids.flatMap((id) => {
    const { name, compared } = REACTION_NUMBERS[id];
    const unit = units[compared.quantity];
    const shown = unit.size(size[id]);
    if (Number(shown) === 0) return [];
    return [`${shown} ${unit.name} ${size[id] > 0 ? 'nearer to' : 'farther from'} the ${name} you asked for`];
  });
  return parts.length > 0 ? ` The other layout is then ${parts.join(' and ')}.` : '';
}

/** Where no single thing is worth knowing first. */
export const NOTHING_SURER = 'Knowing any one thing better would hardly change the layout.';
