import type { Band, MapAnswer, MapRow } from '../../records/answers/answer.js';
import { LANE_IDS } from '../../records/schemas/reaction-numbers.js';
import { withUnit } from '../text/display-units.js';
import { angle, isOneCore } from '../text/figures.js';
import { glyphs, type Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { table } from '../text/table.js';
import { columnsOf } from '../text/wrap.js';
import { sayAll } from '../wording/say.js';
import { scatterText, sizeText } from '../wording/statements/size-text.js';

type Key = 'rgIn' | 'differentialIn' | 'intermediateDifferentialIn';

const CHARTS: readonly { readonly key: Key; readonly name: string }[] = [
  { key: 'intermediateDifferentialIn', name: 'Intermediate differential' },
  { key: 'differentialIn', name: 'Total differential' },
  { key: 'rgIn', name: 'RG' },
];

const OVER: Record<
  MapAnswer['over'],
  { readonly name: string; readonly of: (row: MapRow, page: Page) => string }
> = {
  'drilling-angle': {
    name: 'drilling angle',
    of: ({ layout }, page) => (layout.drillingAngleDeg === null ? '' : angle(layout.drillingAngleDeg, page)),
  },
  'pin-to-pap': {
    name: 'pin-to-PAP',
    of: ({ layout }, page) => page.units.roughTape.show(layout.pinToPapIn),
  },
  buffer: { name: 'pin buffer', of: ({ layout }, page) => page.units.roughTape.show(layout.pinBufferIn) },
};

/** Drilled numbers over one number of the layout, drawn with their bands, as a screen of text. */
export function mapReport(given: MapAnswer, page: Page): string {
  const answer = withPlainText(given, page.ascii);
  const over = OVER[answer.over];
  return joinSections([
    [
      page.paint.heading(`What the ${over.name} does to this core`),
      ...paragraph(`${answer.ball}, drilled for ${answer.bowler}; ${fixedText(answer, page)}.`, page),
    ],
    paragraph(verdictText(answer, page), page),
    ...(answer.onLane ? [paragraph(onLaneText(answer, page), page)] : []),
    ...CHARTS.map(({ key, name }) =>
      section(`${name}, ${page.units.gyration.name}`, chart(answer, key, page), page),
    ),
    section('Where the high-RG axis (PSA) comes out', psaTable(answer, page), page),
    section('Assumed', bullets(sayAll(answer.assumptions, page.units), page), page),
    section(
      'Before drilling',
      bullets(sayAll(answer.cautions, page.units), page).map(page.paint.caution),
      page,
    ),
  ]);
}

function fixedText({ over, rows }: MapAnswer, page: Page): string {
  const { drillingAngleDeg, pinToPapIn, valAngleDeg } = rows[0].layout;
  const parts = {
    'drilling-angle':
      drillingAngleDeg === null ? 'no drilling angle' : `drilling angle ${angle(drillingAngleDeg, page)}`,
    'pin-to-pap': `pin ${withUnit(pinToPapIn, page.units.roughTape)} from the PAP`,
    buffer: `VAL angle ${angle(valAngleDeg, page)}`,
  };
  return Object.entries(parts)
    .filter(([number]) => number !== over)
    .map(([, text]) => text)
    .join(', ');
}

function verdictText({ over, undrilled, reach, rows }: MapAnswer, page: Page): string {
  const { gyration } = page.units;
  const { differentialIn, intermediateDifferentialIn, bandIn, mattersFromIn, matters } = reach;
  const range = ({ least, most }: { least: number; most: number }): string =>
    `${gyration.show(least)} to ${withUnit(most, gyration)}`;
  const what = over === 'drilling-angle' ? 'The mark' : 'This number';
  const cores = isOneCore(rows[0].bands)
    ? ''
    : ` Cores with the same published numbers differ by ${withUnit(bandIn, gyration)} in the intermediate differential.`;
  return (
    `${what} ${matters ? 'matters' : 'hardly matters'} for the differentials of this ball: over the rows below the intermediate differential goes from ` +
    `${range(intermediateDifferentialIn)}, the total differential from ${range(differentialIn)} ` +
    `(${gyration.show(undrilled.differentialIn)} undrilled). A move of ${withUnit(mattersFromIn, gyration)} in either counts.${cores}`
  );
}

const SEEN = {
  unseen: 'You would not see that in a night of shots with each',
  barely: 'It takes a night of shots with each to see that',
  seen: 'A game with each shows it',
} as const;

/** What the ends of the spread do on the lane, in feet and boards beside the scatter of shots. */
function onLaneText({ onLane, reach }: MapAnswer, { units }: Page): string {
  if (onLane === null) return '';
  const { lane, from, to, size, scatter, visibility, worlds } = onLane;
  const besides =
    !reach.matters && visibility !== 'unseen'
      ? ' Besides the differentials the centre of mass of the drilled ball lies elsewhere.'
      : '';
  return (
    `On ${lane} the ends of that are ${from} and ${to}. Beside the first, the second is ${sizeText(size, LANE_IDS, units)} (mean of ` +
    `${worlds} simulated tries). ${SEEN[visibility]}: the shots vary by ${scatterText(scatter, LANE_IDS, units)}.${besides}`
  );
}

/** One row a layout: the band as a bar on a common scale, the median marked on it. */
function chart({ over, rows, undrilled }: MapAnswer, key: Key, page: Page): string[] {
  const labels = rows.map((row) => OVER[over].of(row, page));
  const labelWidth = Math.max(...labels.map(columnsOf));
  const { show } = page.units.gyration;
  const figures = 'x.xxx'.length;
  const width = Math.max(16, Math.min(64, page.width - labelWidth - figures - 8));
  const values = rows.flatMap((row) => [row.bands[key].low, row.bands[key].high, row.drilled[key]]);
  const low = Math.min(undrilled[key], ...values);
  const high = Math.max(undrilled[key], ...values);
  const place = (value: number): number =>
    high > low ? Math.round(((value - low) / (high - low)) * (width - 1)) : 0;
  const lines = rows.map((row, i) => {
    const bar = barOf(row.bands[key], row.drilled[key], undrilled[key], place, width, page);
    return `  ${labels[i].padStart(labelWidth)} ${glyphs(page).edge}${bar}${glyphs(page).edge} ${show(row.drilled[key])}`;
  });
  const scale = show(low).padEnd(width - figures) + show(high);
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
  signs[place(before)] = glyphs(page).thinOil;
  for (let i = place(low); i <= place(high); i += 1) signs[i] = page.ascii ? '-' : '─';
  signs[place(value)] = glyphs(page).roll;
  return signs.join('');
}

function legend(rows: MapAnswer['rows'], page: Page): string[] {
  const drilled = isOneCore(rows[0].bands)
    ? `${glyphs(page).roll} drilled`
    : `${glyphs(page).roll} middle of all cores   ${page.ascii ? '---' : '───'} 9 of 10 cores`;
  return paragraph(`${drilled}   ${glyphs(page).thinOil} undrilled`, page, page.paint.quiet);
}

function psaTable({ over, rows }: MapAnswer, page: Page): string[] {
  const { name, show } = page.units.roughTape;
  return table(
    [
      { head: OVER[over].name },
      ...['PAP', 'pin', 'grip centre'].map((from) => ({ head: `from ${from}\n${name}` })),
      { head: 'certain' },
    ],
    rows.map((row) => [
      OVER[over].of(row, page),
      show(row.psa.fromPapIn),
      show(row.psa.fromPinIn),
      show(row.psa.fromGripCentreIn),
      row.psa.certain ? 'yes' : 'no',
    ]),
    page,
  );
}
