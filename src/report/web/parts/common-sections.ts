import type {
  DrilledNumbersAnswer,
  JudgeAnswer,
  LegalityAnswer,
  PsaAnswer,
  SimulatedLayout,
} from '../../../records/answers/answer.js';
import type { WishedId } from '../../../records/schemas/reaction-numbers.js';
import { widestGap } from '../../drawings/apart-drawing.js';
import type { Compared } from '../../picture/compared.js';
import { leversGrid } from '../../tables/levers-table.js';
import type { Moved } from '../../tables/movers.js';
import { type Units, withUnit } from '../../text/display-units.js';
import { leversHeading } from '../../wording/page-headings.js';
import { say, sayAll } from '../../wording/say.js';
import { legalityText, psaText, staticsText } from '../../wording/workshop.js';
import { laneFigure, signedPaths } from './lane-figure.js';
import { chartedIds, moversFigure } from './movers-figure.js';
import { type PageSection, paragraphHtml } from './section-html.js';
import { gridHtml, htmlText, listHtml } from './table-html.js';

/* Sections that several pages have alike. */

/** Paths nearer to one another than this, boards, are one path to the eye. */
const ONE_PATH = 1;

export function laneSection(
  {
    inputs,
    noLine,
  }: Pick<JudgeAnswer, 'noLine'> & { inputs: Pick<JudgeAnswer['inputs'], 'bowler' | 'lane'> },
  compared: readonly Compared[],
  units: Units,
): PageSection {
  const gap = widestGap(signedPaths(compared));
  const apart = withUnit(gap, units.boards);
  return {
    id: 'lane',
    about: 'Lane',
    heading: noLine
      ? 'No line brings the ball to the pocket'
      : gap < ONE_PATH
        ? Number(units.boards.show(gap)) === 0
          ? 'The layouts take the same path, to a tenth of a board'
          : `The layouts take nearly the same path: at most ${apart} apart`
        : `The paths part by up to ${apart}`,
    parts: [
      ...(noLine ? [paragraphHtml(say(noLine.says, units)), listHtml(sayAll(noLine.remedies, units))] : []),
      laneFigure(inputs.bowler.hand, inputs.lane, compared, units),
    ],
  };
}

/**
 * What else would move what is wished for, beside the first charts, with more to be opened.
 *
 * @param held  the layout that the rest is changed around, and what it is called: `the best layout`
 */
export const leversSection = (
  { levers, targets, scatter }: Pick<JudgeAnswer, 'levers' | 'targets' | 'scatter'>,
  held: {
    readonly layout: SimulatedLayout;
    readonly whose: string;
    readonly wished: readonly WishedId[];
    readonly moved: Moved;
  },
  more: readonly string[],
  units: Units,
): PageSection => ({
  id: 'levers',
  about: 'What else',
  heading: leversHeading(levers, { reaction: held.layout.reaction, targets, scatter }, units),
  parts: [
    besideHtml(
      moversFigure('movers-too', chartedIds(held.wished).rest, held.moved, units),
      gridHtml(leversGrid(held.layout, levers, held.whose, units), 'What else would help (one steady shot)'),
    ),
    ...more,
  ],
});

/** What a drilled ball's numbers and the rules say, with more to be opened. */
export const drilledSection = (
  facts: {
    readonly drilled: DrilledNumbersAnswer;
    readonly psa: PsaAnswer;
    readonly legality: LegalityAnswer;
  },
  more: readonly string[],
  units: Units,
): PageSection => ({
  id: 'drilled',
  about: 'Drilled ball',
  heading: facts.legality.legal ? 'After drilling: legal, as far as checked' : 'After drilling: NOT LEGAL',
  parts: [
    besideHtml(
      paragraphHtml(
        [
          staticsText(facts.drilled.staticOz, units),
          psaText(facts.psa, units),
          legalityText(facts.legality),
        ].join(' '),
      ),
      listHtml(sayAll(facts.legality.findings, units)),
    ),
    ...more,
  ],
});

/** What an answer assumes, which paper prints in small letters, and what it was worked out from. */
export function restsOnSection(
  assumptions: JudgeAnswer['assumptions'],
  from: { readonly summary: string; readonly parts: readonly string[] },
  units: Units,
): PageSection {
  const assumed = [listHtml(sayAll(assumptions, units))];
  return {
    id: 'behind',
    about: 'What it rests on',
    heading: 'What it rests on',
    parts: [foldedHtml('Assumed', assumed), onPaperHtml(assumed), foldedHtml(from.summary, from.parts)],
  };
}

/** Folded details; an empty text where there are none. */
export function foldedHtml(summary: string, parts: readonly string[]): string {
  const filled = parts.filter((part) => part !== '');
  return filled.length === 0
    ? ''
    : `<details>\n<summary>${htmlText(summary)}</summary>\n${filled.join('\n')}\n</details>`;
}

/** What is folded on a screen, on paper in small letters: there nothing unfolds. */
const onPaperHtml = (parts: readonly string[]): string =>
  parts.some((part) => part !== '') ? `<div class="on-paper">${parts.join('\n')}</div>` : '';

/** Two things side by side where there is room for both; one alone where there is no other. */
const besideHtml = (first: string, second: string): string =>
  first === '' || second === ''
    ? first || second
    : `<div class="lane">\n<div>${first}</div>\n<div>${second}</div>\n</div>`;
