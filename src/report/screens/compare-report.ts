import type { CompareAnswer } from '../../records/answers/compare-answer.js';
import { laneDrawing } from '../drawings/lane-drawing.js';
import { compareGrid, compareNote } from '../tables/compare-table.js';
import {
  comparedAxisGrid,
  comparedDrilledGrid,
  comparedFlareGrid,
} from '../tables/compared-drilled-table.js';
import { learnedLines } from '../tables/learned-lines.js';
import { linesTable } from '../tables/lines-table.js';
import { givenWithUnit, type Units } from '../text/display-units.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { gridLines } from '../text/table.js';
import { wrap } from '../text/wrap.js';
import { bufferDoubts } from '../wording/layout-headline.js';
import { sayAll } from '../wording/say.js';
import { axisSections } from './axis-sections.js';
import { cautionSection } from './caution-section.js';
import { moreLines } from './more-lines.js';

/** A comparison on one screen: how its members stand to one another, then a row each; all else with `isFull`. */
export function compareReport(given: CompareAnswer, page: Page, isFull = false): string {
  const answer = withPlainText(given, page.ascii);
  return joinSections([
    [
      ...wrap(compareTitle(answer, page.units), page.width).map(page.paint.heading),
      ...paragraph(sayAll(answer.verdict, page.units).join(' '), page, page.paint.strong),
      ...comparedDoubts(answer, page.units).flatMap((text) => paragraph(text, page, page.paint.caution)),
    ],
    [
      ...gridLines(compareGrid(answer, page.units), page),
      ...paragraph(compareNote(answer), page, page.paint.quiet),
      ...learnedLines(answer, page),
    ],
    ...(isFull ? sections(answer, page) : [moreLines(page)]),
  ]);
}

const VARIED: Record<CompareAnswer['varies'], string> = {
  layout: 'Layouts',
  ball: 'Balls',
  finish: 'Finishes',
};

/** Who bowls what where, but for what varies. */
export function compareTitle({ inputs, varies, rows }: CompareAnswer, units: Units): string {
  const { bowler, balls, lane } = inputs;
  const [ball] = balls;
  const same = {
    layout: [ball.name, givenWithUnit(ball.weightLb, units.weight)],
    ball: [rows[0].text],
    finish: [ball.name, rows[0].text],
  }[varies];
  return `${VARIED[varies]} compared for ${bowler.name}: ${same.join(', ')}, on ${lane.name}`;
}

/** Of each layout, whether a pin buffer may have been meant. */
export const comparedDoubts = ({ rows }: CompareAnswer, units: Units): string[] => [
  ...new Set(rows.flatMap((row) => bufferDoubts(row, units).map((doubt) => `${row.text}: ${doubt}`))),
];

/** Everything behind the table. */
const sections = (answer: CompareAnswer, page: Page): readonly (readonly string[])[] => {
  const { rows, inputs } = answer;
  const { bowler, lane } = inputs;
  const named = rows.map((row, i) => ({ ...row, sign: `${i + 1}`, text: row.name }));
  return [
    section('How they roll', laneDrawing({ hand: bowler.hand, lane, shots: named }, page), page),
    section(
      'The line to play, and the margin for error',
      linesTable(
        named.map((row) => ({ ...row, text: `${row.sign} ${row.text}` })),
        page,
      ),
      page,
    ),
    section('After drilling', gridLines(comparedDrilledGrid(rows, page), page), page),
    ...axisSections(comparedAxisGrid(rows, page), comparedFlareGrid(rows, page), page),
    section('What speaks against them', bullets(comparedFindings(answer, page.units), page), page),
    section('Assumed', bullets(sayAll(answer.assumptions, page.units), page), page),
    cautionSection(answer.cautions, page),
  ];
};

/** What the rules and the trade have to say about each, and where no line was found. */
export const comparedFindings = ({ rows }: CompareAnswer, units: Units): string[] =>
  rows.flatMap(({ name, objections, legality, line }) =>
    [
      ...(line.reachesPocket ? [] : [NO_LINE]),
      ...sayAll(objections, units),
      ...sayAll(legality.findings, units),
    ].map((why) => `${name}: ${why}`),
  );

const NO_LINE = 'no line to the pocket was found; the nearest one is played';
