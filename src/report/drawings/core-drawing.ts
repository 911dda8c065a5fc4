import { hypot } from '../../math/hypot.js';
import { isInside, type Loop, type PlanePoint } from '../../math/polygon.js';
import type { CoreAnswer, CoreSection } from '../../records/answers/answer.js';
import { glyphs, type Page } from '../text/page.js';
import { beside } from '../text/section.js';

/** Rows of a drawing for each of its columns: a letter is about twice as high as wide. */
const SLIM = 0.5;
/** Columns of a drawing at most: with those of a usual terminal both fit its screen with the verdict. */
const WIDEST = 33;
const WIDEST_OF_WIDE = 45;
const WIDE_PAGE = 100;

const CAPTIONS: Readonly<Record<CoreSection['plane'], readonly [string, string]>> = {
  'pin-marker': ['Through pin and marker', 'pin up, marker right'],
  equator: ['Through the equator', 'from the pin, marker right'],
};

/** What the signs of a drawing that are not a part's letter stand for. */
const HOLE = 'o';
const CG = '+';
const PSA = '*';

/** Both sections of a core drawn with letters, to scale, next to each other where the page is wide enough. */
export function coreDrawing(answer: CoreAnswer, page: Page): string[] {
  const most = page.width < WIDE_PAGE ? WIDEST : WIDEST_OF_WIDE;
  const columns = Math.min(most, Math.floor((page.width - 6) / 2));
  const [one, other] = answer.sections.map((section) => [
    `  ${page.paint.heading(CAPTIONS[section.plane][0])}`,
    ...sectionLines(section, answer, columns - 2, page).map((line) => `  ${line}`),
    `  ${page.paint.quiet(CAPTIONS[section.plane][1])}`,
  ]);
  return beside(one, other, page);
}

/** The signs of a drawing in words, but for the parts' letters. */
export function coreSigns({ sections, reachIn, radiusIn, cover }: CoreAnswer, page: Page): string {
  const hasMark = (mark: string): boolean =>
    sections.some(({ marks }) => marks.some((each) => each.mark === mark));
  return [
    `${coverSign(page)} cover`,
    `${glyphs(page).thinOil} filler`,
    ...(hasMark('CG') ? [`${CG} CG`] : []),
    ...(hasMark('PSA') ? [`${PSA} high-RG axis (PSA)`] : []),
    ...(sections.some(({ holes }) => holes.length > 0) ? [`${HOLE} hole, before or behind`] : []),
    ...(reachIn > radiusIn - cover.thicknessIn
      ? ['letters in or outside the cover: matter where none can be']
      : []),
  ].join(', ');
}

const coverSign = (page: Page): string => (page.ascii ? ':' : '▒');

function sectionLines(section: CoreSection, answer: CoreAnswer, columns: number, page: Page): string[] {
  const { radiusIn, reachIn, cover, parts } = answer;
  const rows = Math.round(columns * SLIM);
  const far = Math.max(radiusIn, reachIn);
  const across = (column: number): number => far * ((2 * (column + 0.5)) / columns - 1);
  const up = (row: number): number => far * (1 - (2 * (row + 0.5)) / rows);
  const signAt = (x: number, y: number): string => {
    const place = [x, y] as const;
    const part = section.parts.findLast(({ loops }) => isInside(loops, place));
    const fromCentre = hypot(x, y);
    if (fromCentre <= radiusIn && section.holes.some(({ outline }) => isInside([outline], place)))
      return HOLE;
    if (part) return parts[part.part].sign;
    if (fromCentre > radiusIn) return ' ';
    return fromCentre > radiusIn - cover.thicknessIn ? coverSign(page) : glyphs(page).thinOil;
  };
  const lines = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => signAt(across(column), up(row))),
  );
  /** Places on the ball's edge, rounded, may lie a hair outside the drawing. */
  const cell = (share: number, cells: number): number =>
    Math.max(0, Math.min(cells - 1, Math.floor(share * cells)));
  const put = (sign: string, [x, y]: PlanePoint): void => {
    lines[cell((1 - y / far) / 2, rows)][cell((1 + x / far) / 2, columns)] = sign;
  };
  for (const { part, loops } of section.parts)
    if (!lines.flat().some((sign) => sign === parts[part].sign) && isTiny(loops, (2 * far) / columns))
      put(parts[part].sign, loops[0][0]); // too small to be met
  for (const { mark, at } of section.marks) {
    if (mark === 'CG') put(CG, at);
    if (mark === 'PSA') put(PSA, at);
  }
  return lines.map((line) => line.join('').trimEnd());
}

/** Whether outlines may fall between the places that letters stand for. */
const isTiny = (loops: readonly Loop[], cell: number): boolean =>
  loops.flat().every(([x, y]) => hypot(x - loops[0][0][0], y - loops[0][0][1]) < 3 * cell);
