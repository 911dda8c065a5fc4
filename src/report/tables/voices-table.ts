import type { LayoutDifference, RecommendAnswer } from '../../records/answers/answer.js';
import { wishedIds } from '../../records/schemas/want.js';
import type { Units } from '../text/display-units.js';
import { percent, points } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { paragraph } from '../text/section.js';
import { type Grid, gridLines } from '../text/table.js';
import { sizeText } from '../wording/statements/size-text.js';

/** What physics alone, practice alone and both combined would choose, and how far apart they are. */
export function voicesLines(answer: RecommendAnswer, page: Page): string[] {
  const { voices } = answer;
  return voices === null
    ? []
    : [...gridLines(voicesGrid(voices), page), ...paragraph(voicesText(answer, page.units), page)];
}

export const voicesGrid = (voices: NonNullable<RecommendAnswer['voices']>): Grid => ({
  columns: [
    { head: 'score by' },
    { head: 'would choose' },
    { head: 'physics' },
    { head: 'practice' },
    { head: 'both' },
  ],
  rows: (
    [
      ['physics alone', voices.physics],
      ['practice alone', voices.practice],
      ['both combined', voices.weighed],
    ] as const
  ).map(([name, { text, scores }]) => [
    name,
    text,
    points(scores.physics),
    points(scores.practice),
    points(scores.weighed),
  ]),
});

/** How far practice's choice lies from physics', by either, and what makes it. */
export function voicesText({ voices, inputs }: RecommendAnswer, units: Units): string {
  if (!voices) return '';
  const weight = `A belief of practice is taken to hold in ${voices.practicePercent} % of simulated tries (--practice).`;
  if (!voices.apart) return `Physics and practice choose alike. ${weight}`;
  const { difference, belief } = voices.apart;
  const size = (by: keyof LayoutDifference): string =>
    sizeText(difference[by].size, wishedIds(inputs.want), units);
  const most = belief
    ? ` Most of that rests on one belief (${percent(Math.min(1, belief.share))} %): “${belief.says}”`
    : '';
  return `Against physics’ choice, practice’s is ${size('physics')} by physics; ${size('practice')} by practice.${most} ${weight}`;
}
