import type { Band, MapAnswer } from '../../records/answers/answer.js';
import { capital } from '../../records/text/capital.js';
import { isOneCore } from '../text/figures.js';
import { glyphs, type Page } from '../text/page.js';
import { paragraph, section } from '../text/section.js';
import { columnsOf } from '../text/wrap.js';
import { MAP_WORDS, OVER_WORDS } from '../wording/map-words.js';

const CHARTED = ['intermediateDifferentialIn', 'differentialIn', 'rgIn'] as const;
type Charted = (typeof CHARTED)[number];

/** Columns of a chart between its edges. */
const NARROWEST = 16;
const WIDEST = 70;

/** For each number a row a layout: the band over cores, and the middle of all marked on it, on the scale of all balls. */
export const mapCharts = (answer: MapAnswer, page: Page): string[][] =>
  CHARTED.map((key) =>
    section(`${capital(MAP_WORDS[key].name)}, ${page.units.gyration.name}`, chart(answer, key, page), page),
  );

function chart({ over, rows, undrilled, scales }: MapAnswer, key: Charted, page: Page): string[] {
  const labels = rows.map((row) => OVER_WORDS[over].of(row, page));
  const labelWidth = Math.max(...labels.map(columnsOf));
  const { show } = page.units.gyration;
  const figures = 'x.xxx'.length;
  const width = Math.max(NARROWEST, Math.min(WIDEST, page.width - labelWidth - figures - 8));
  const { least, most } = scales[key];
  const place = (value: number): number =>
    Math.max(0, Math.min(width - 1, Math.round(((value - least) / (most - least)) * (width - 1))));
  const lines = rows.map((row, i) => {
    const bar = barOf(row.bands[key], row.drilled[key], undrilled[key], place, width, page);
    return `  ${labels[i].padStart(labelWidth)} ${glyphs(page).edge}${bar}${glyphs(page).edge} ${show(row.drilled[key])}`;
  });
  const scale = show(least).padEnd(width - figures) + show(most);
  return [...lines, page.paint.quiet(`  ${' '.repeat(labelWidth + 2)}${scale}`), ...legend(rows, page)];
}

function barOf(
  { low, high }: Band,
  value: number,
  before: number,
  place: (value: number) => number,
  width: number,
  page: Page,
): string {
  const signs = Array.from({ length: width }, () => ' ');
  for (let i = place(low); i <= place(high); i += 1) signs[i] = page.ascii ? '-' : '─';
  signs[place(before)] = page.ascii ? 'x' : '×';
  signs[place(value)] = page.ascii ? '#' : '●';
  return signs.join('');
}

function legend(rows: MapAnswer['rows'], page: Page): string[] {
  const [middle, band, before] = page.ascii ? ['#', '---', 'x'] : ['●', '───', '×'];
  const drilled = isOneCore(rows[0].bands)
    ? `${middle} drilled`
    : `${middle} middle of all cores, ${band} 9 of 10 cores`;
  return paragraph(`${drilled}, ${before} undrilled`, page, page.paint.quiet);
}
