import { ln } from '../../math/ln.js';
import type { LearnedAnswer } from '../../records/answers/learned-answer.js';
import { decimals } from '../text/figures.js';

type Belief = LearnedAnswer['beliefs'][number];

/** From this factor on a log speaks for a belief or against it; below it hardly says anything (a choice of this project). */
const SPEAKS = 1.5;

/** How strongly a log speaks, for or against alike. */
const strength = ({ factor }: Belief): number => Math.abs(ln(factor));

const speaks = (belief: Belief): boolean => belief.silent === null && strength(belief) >= ln(SPEAKS);

/** Those that the log speaks of most strongly first. */
export const byStrength = (beliefs: readonly Belief[]): readonly Belief[] =>
  [...beliefs].sort((a, b) => strength(b) - strength(a));

/** What the log says of a belief of practice, as a Bayes factor in words, and what would decide it. */
export function beliefEvidenceText(belief: Belief): string {
  const { silent, moreShots } = belief;
  if (silent === 'not-read') return `${belief.says} No reading in the log bears on it.`;
  if (silent === 'balls-alike') return `${belief.says} The logged balls hardly differ in it.`;
  return `${evidenceText(belief)} ${decidesText(moreShots)}`;
}

function evidenceText(belief: Belief): string {
  const { says, factor } = belief;
  if (!speaks(belief)) return `The log says hardly anything about “${says}”`;
  return `The log speaks ${factor > 1 ? 'for' : 'against'} “${says}”, ${oddsText(factor)}.`;
}

const oddsText = (factor: number): string => {
  const odds = Math.max(factor, 1 / factor);
  return `${decimals(odds, odds < 10 ? 1 : 0)} to 1`;
};

const decidesText = (moreShots: number | null): string => {
  if (moreShots === null) return 'More of the same would not decide it; other layouts might.';
  if (moreShots === 0) return 'These shots are enough to decide it.';
  return `Some ${rounded(moreShots)} more shots like these would decide it.`;
};

/** To two significant digits: no more is known. */
const rounded = (shots: number): number => Number(shots.toPrecision(2));

/** The strongest in a sentence or two; where the log says nothing of any, what would. */
export function practiceTexts({ beliefs }: Pick<LearnedAnswer, 'beliefs'>): string[] {
  const [strongest] = byStrength(beliefs);
  if (strongest && speaks(strongest)) return [evidenceText(strongest), decidesText(strongest.moreShots)];
  const isAlike = beliefs.every(({ silent }) => silent !== null);
  return [
    isAlike
      ? 'The log says nothing yet about what practice believes: that takes two balls drilled differently, with breakpoint, pins or flare read.'
      : 'The log says hardly anything yet about what practice believes; --full lists it.',
  ];
}
