import type { RecommendAnswer, SurerAnswer } from '../../records/answers/answer.js';
import { REACTION_NUMBERS, type WishedId } from '../../records/schemas/reaction-numbers.js';
import { capital } from '../../records/text/capital.js';
import type { Units } from '../text/display-units.js';
import { decimals } from '../text/figures.js';
import { say } from './say.js';

type Scatter = RecommendAnswer['scatter'];

/**
 * What knowing one thing would change, and by how much.
 *
 * @param ids      the numbers that are wished for
 * @param scatter  of the bowler's shots
 */
export const surerText = (
  entry: SurerAnswer,
  ids: readonly WishedId[],
  scatter: Scatter,
  units: Units,
): string =>
  `${surerShortly(entry, units)}${nearerText(entry.size, ids, scatter, units)} On average the score gains ${decimals(entry.gain, 1)} points.`;

/** The same without the size. */
export const surerShortly = (
  { unknown, chance }: Pick<SurerAnswer, 'unknown' | 'chance'>,
  units: Units,
): string => `${capital(say(unknown, units))}: knowing this would change the layout in ${triesText(chance)}.`;

/** A share of tries in tenths: with another seed it comes out a tenth higher or lower. */
const triesText = (share: number): string =>
  share >= 0.95 ? 'nearly all tries' : `about ${decimals(Math.max(1, 10 * share), 0)} of 10 tries`;

/** The least share of the scatter of shots that is given as a size: what is less, no one could see. */
const LEAST_SHARE = 0.1;

/** How much nearer to what is wished for the other layout comes, or that this would hardly show. */
function nearerText(
  size: SurerAnswer['size'],
  ids: readonly WishedId[],
  scatter: Scatter,
  units: Units,
): string {
  const parts = ids.flatMap((id) => {
    const { name, compared } = REACTION_NUMBERS[id];
    const unit = units[compared.quantity];
    const shown = unit.size(size[id]);
    if (Number(shown) === 0 || Math.abs(size[id]) < LEAST_SHARE * scatter[id]) return [];
    return [`${shown} ${unit.name} ${size[id] > 0 ? 'nearer to' : 'farther from'} the ${name} you asked for`];
  });
  if (ids.length === 0) return '';
  return parts.length > 0
    ? ` The other layout is then ${parts.join(' and ')}.`
    : ' The other layout would hardly look different beside the scatter of your shots.';
}

/** Where no single thing is worth knowing first. */
export const NOTHING_SURER = 'Knowing any one thing better would hardly change the layout.';
