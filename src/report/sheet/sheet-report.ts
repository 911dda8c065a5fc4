import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { ballDrawing } from '../drawings/ball-drawing.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { table } from '../text/table.js';
import { columnsOf, wrap } from '../text/wrap.js';
import type { Block, BlockPart, WorkStep } from './blocks.js';
import { STOP, sheetText } from './sheet-blocks.js';

/** The work sheet as a screen of text: the same words as on paper. */
export function sheetReport(given: SheetAnswer, page: Page): string {
  const answer = withPlainText(given, page.ascii);
  const words = withPlainText(sheetText(answer, page.units), page.ascii);
  // as on paper: holes of a fit that was given, and no rings, which are not worked from
  const drawn = { ...answer.face, psa: null, holes: answer.grip ? answer.face.holes : [] };
  const [cautions, ...notes] = words.notes;
  return joinSections([
    [page.paint.heading(words.title), ...paragraph(`${words.bowler}, ${words.ball}`, page)],
    [
      `  ${page.paint.title(words.layout)}`,
      ...stopLines(words.stop, page),
      ...words.notations.flatMap((text) => paragraph(`${text}.`, page)),
      ...words.first.flatMap((text) => paragraph(text, page, page.paint.caution)),
    ],
    ...words.check.map((block) => blockLines(block, page)),
    section('The ball from the grip side', ballDrawing(drawn, [], page), page),
    ...[...words.work.flat(), ...words.facts, ...notes].map((block) => blockLines(block, page)),
    blockLines(cautions, page, page.paint.caution),
    paragraph(words.foot, page, page.paint.quiet),
  ]);
}

/** Why the ball must not be drilled as it stands. */
const stopLines = (stop: readonly string[], page: Page): string[] =>
  stop.length === 0 ? [] : [`${STOP}:`, ...stop].flatMap((text) => paragraph(text, page, page.paint.caution));

const blockLines = ({ heading, parts }: Block, page: Page, paint = (line: string) => line): string[] =>
  section(
    heading,
    parts.flatMap((part, i) => [...(i > 0 ? [''] : []), ...partLines(part, page)]).map(paint),
    page,
  );

function partLines(part: BlockPart, page: Page): string[] {
  switch (part.kind) {
    case 'text':
      return paragraph(part.text, page);
    case 'bullets':
      return bullets(part.texts, page);
    case 'table':
      return tableLines(part.heads, part.rows, page);
    case 'steps':
      return part.steps.flatMap((step, i) => stepLines(step, i, page));
  }
}

/** A step: its mark with what is measured behind it, and below each way to it. */
function stepLines({ mark, ways, measured }: WorkStep, i: number, page: Page): string[] {
  const head = `${i + 1} ${mark}`;
  return [
    ...wrap(measured === '' ? head : `${head}; ${measured}`, page.width, '     ', '  '),
    ...ways.flatMap((way) => wrap(way, page.width, '       ', '     ')),
  ];
}

/** A table; where it does not fit in one piece, a sentence a row instead, since here a row is one thing to do. */
function tableLines(heads: readonly string[], rows: readonly (readonly string[])[], page: Page): string[] {
  const columns = (rows[0] ?? []).map((_, i) => ({ head: heads[i] ?? '', align: 'left' as const }));
  const lines = table(columns, rows, page);
  if (!lines.includes('') && lines.every((line) => columnsOf(line) <= page.width)) return lines;
  return rows.flatMap(([key, ...cells]) => {
    const said = cells.flatMap((cell, i) =>
      cell === '' ? [] : [heads[i + 1] ? `${heads[i + 1]} ${cell}` : cell],
    );
    return wrap(`${key}: ${said.join('; ')}.`, page.width, '     ', '  ');
  });
}
