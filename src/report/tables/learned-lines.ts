import type { TargetAnswer } from '../../records/answers/answer.js';
import type { LearnedFrom } from '../../records/answers/parts/learned-from.js';
import type { Page } from '../text/page.js';
import { paragraph } from '../text/section.js';
import { learnedTexts } from '../wording/learned-line.js';

/** What an answer took from logged shots, as lines of its screen; nothing where it took nothing. */
export const learnedLines = (
  {
    learned,
    targets = [],
  }: { readonly learned?: LearnedFrom | undefined; readonly targets?: readonly TargetAnswer[] },
  page: Page,
): string[] => {
  const texts = learnedTexts(learned, targets, page.units);
  return texts.length === 0 ? [] : paragraph(texts.join(' '), page);
};
