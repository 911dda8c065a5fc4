import type { RankedLayout, RecommendAnswer } from '../../records/answers/answer.js';
import { REACTION_NUMBERS, type WishedId, wishWords } from '../../records/schemas/reaction-numbers.js';
import { wishedIds } from '../../records/schemas/want.js';
import { type Units, withUnit } from '../text/display-units.js';
import { percent } from '../text/figures.js';
import { listed } from '../text/listed.js';
import { say } from './say.js';
import { NOTHING, scatterText, sizeText } from './statements/size-text.js';

/* How sure a recommendation is, how much it matters, and what does as well, each in a line or two. */

/** How often the first layout comes nearer to the wish than the usual one; without a wish, to the best entry angles. */
export function sureText(
  { headline, middle, targets }: RecommendAnswer,
  best: RankedLayout,
  units: Units,
): string {
  if (!best.confidence.overMiddle) return say(headline, units); // it is the usual
  const { beatsMiddle, worlds } = best.confidence;
  const aim = targets.length > 0 ? 'the wish' : 'the best entry angles';
  return `Nearer to ${aim} than the usual ${middle.text} in ${percent(beatsMiddle)} of 100 tries (${worlds} simulated).`;
}

const SEEN = {
  unseen: 'you would not see it in a night of shots',
  barely: 'you would need a night of shots with each to see it',
  seen: 'you would see it in a game with each',
} as const;

/** How far it differs from the usual layout, beside the scatter of the bowler's shots; nothing where it is that layout. */
export function sizeTexts(
  { inputs, scatter, voices, middle }: RecommendAnswer,
  best: RankedLayout,
  units: Units,
): string[] {
  const ids = wishedIds(inputs.want);
  const { overMiddle } = best.confidence;
  if (!overMiddle) return [];
  const physics = sizeText(overMiddle.physics.size, ids, units);
  const both = voices
    ? `Compared with the usual ${middle.text}: by physics ${physics}; by practice ${sizeText(overMiddle.practice.size, ids, units)}. With both combined, `
    : `Compared with the usual ${middle.text}: ${physics}; `;
  return [
    `${both}${SEEN[overMiddle.weighed.visibility]}. Your shots vary by ${scatterText(scatter, ids, units)}.`,
  ];
}

/** Layouts that do about as well, and what may decide among them. */
export function alsoTexts({ headline, layouts }: RecommendAnswer): string[] {
  const [best, ...others] = layouts;
  if (others.length === 0) return [];
  const share = percent(best.confidence.beatsRunnerUp);
  const named = others.map(({ text }, i) =>
    i === 0 ? `${text} (the first is ahead of it in ${share} of 100 tries)` : text,
  );
  const { ties, of } = headline.params as { ties?: number; of?: number };
  const many = ties ? `${ties} of ${of} layouts tried tie; ` : '';
  return [
    `${listed(named)}: ${many}choose one that is easy to mark, clear of the holes or known to work for you.`,
  ];
}

/** That the wishes cannot be had together, where no layout tried meets all: how far the first is from what was asked for, beside the scatter of shots. */
export function apartTexts(
  { limits, scatter, targets }: Pick<RecommendAnswer, 'limits' | 'scatter' | 'targets'>,
  units: Units,
): string[] {
  const missed = limits.flatMap((limit) => (limit.code === 'wishes-do-not-join' ? limit.params.missed : []));
  const ids = missed.map(({ reading }) => reading);
  const by = Object.fromEntries(
    missed.map(({ reading, by }) => [reading, by - beyondReach(targets, reading)]),
  ) as Record<WishedId, number>;
  const size = sizeText(by, ids, units);
  if (size === NOTHING) return [];
  return [
    `No layout tried has ${targets.length > 2 ? 'all three' : 'both'}: this one is ${size} than asked; your shots vary by ${scatterText(scatter, ids, units)}.`,
  ];
}

/** How far a number that was asked for lies beyond the nearest that layouts of the ball reach. */
function beyondReach(targets: RecommendAnswer['targets'], reading: WishedId): number {
  const target = targets.find((each) => each.reading === reading);
  return target === undefined ? 0 : (target.asked ?? target.value) - target.value;
}

/** What was wished for, as it was said, and what stands for it where no layout of the ball comes near. */
export function askedText(targets: RecommendAnswer['targets'], units: Units): string {
  if (targets.length === 0) return 'no particular reaction, so ranked by entry angle';
  const wishes = targets.map(({ wish, step, reading, value, asked = value }) => {
    const { name, compared } = REACTION_NUMBERS[reading];
    const unit = units[compared.quantity];
    if (step !== null) return `${name} ${wishWords(wish).steps[step - 1]}`;
    const isNear = unit.show(asked) === unit.show(value);
    return `${name} ${withUnit(asked, unit)}${isNear ? '' : ` (out of reach: the nearest is ${withUnit(value, unit)})`}`;
  });
  return wishes.join(', ');
}
