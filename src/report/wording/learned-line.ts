import type { TargetAnswer } from '../../records/answers/answer.js';
import type { LearnedFrom } from '../../records/answers/parts/learned-from.js';
import { countOf } from '../text/count-of.js';
import type { Units } from '../text/display-units.js';

/** What an answer took from logged shots, before and after, and how to leave it out; nothing where it took nothing. */
export function learnedTexts(
  learned: LearnedFrom | undefined,
  targets: readonly Pick<TargetAnswer, 'step'>[],
  { boards }: Pick<Units, 'boards'>,
): string[] {
  if (!learned) return [];
  const { shots, nights, elsewhere, pinsBoardOff, isDoubtful } = learned;
  const others = elsewhere === 0 ? '' : ` (${elsewhere === nights ? 'all' : elsewhere} on other lanes)`;
  const pins = pinsBoardOff
    ? `: board at the pins ± ${boards.show(pinsBoardOff.before)} → ± ${boards.show(pinsBoardOff.after)}`
    : '';
  return [
    `Learned from ${countOf(shots, 'shot')} on ${countOf(nights, 'night')}${others}${pins}; --unlearned leaves it out.`,
    ...(isDoubtful ? ['But its readings contradict one another: see flarewise learned.'] : []),
    ...wishTexts(targets),
  ];
}

/** What knowing the lane is worth to the wish: one in feet or boards gains, one that is relative does not. */
function wishTexts(targets: readonly Pick<TargetAnswer, 'step'>[]): string[] {
  if (targets.length === 0) return [];
  const isAbsolute = targets.some(({ step }) => step === null);
  return [
    isAbsolute
      ? 'A wish in feet or boards gains most from it.'
      : 'For a wish of 1 to 5 this makes the predicted path more certain, not the choice of layout.',
  ];
}

/** The same of several students, who each have a log of their own. */
export const learnedOfTexts = (
  lines: readonly {
    readonly bowler: string;
    readonly lane: string;
    readonly learned?: LearnedFrom | undefined;
  }[],
  units: Units,
): string[] => [
  ...new Set(
    lines.flatMap(({ bowler, lane, learned }) =>
      learnedTexts(learned, [], units).map((text) => `${bowler}, on ${lane}: ${text}`),
    ),
  ),
];
