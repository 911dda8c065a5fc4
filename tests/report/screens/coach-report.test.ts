import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import type { CoachLine } from '../../../src/records/answers/coach-answer.js';
import { coachCsv } from '../../../src/report/csv/coach-csv.js';
import { coachReport } from '../../../src/report/screens/coach-report.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { printedCoachLine } from '../../../src/report/wording/coach-lines.js';
import { withSentences } from '../../../src/report/wording/with-sentences.js';
import { coachPairOf } from '../../support/coach-answer.js';
import { pageOf } from '../../support/page.js';

const lines: readonly CoachLine[] = [
  coachPairOf('Red, the old one'),
  {
    schema: 'flarewise/coach-fault/2',
    bowler: 'Kim',
    ball: 'Blue',
    lane: 'House',
    refusals: [
      {
        code: 'no-such-core',
        params: {
          given: { field: 'rgIn', value: 2.4 },
          families: ['plain'],
          why: 'core-too-dense',
          densestGcc: 3.8,
          remedies: [{ field: 'weightLb', value: 15.5 }],
        },
      },
    ],
  },
  {
    schema: 'flarewise/coach-bag/2',
    bowler: 'Kim',
    lane: 'House',
    alike: [],
    gaps: [],
    says: [
      {
        code: 'gap-between-balls',
        params: { below: 'Red', belowBoards: 10, above: 'Blue', aboveBoards: 20 },
      },
    ],
  },
];

test.each([60, 80, 200])(
  'coachReport: at %i columns every ball, its advice and its fault can be read',
  (width) => {
    const text = coachReport(lines, pageOf(width));
    for (const row of text.split('\n')) expect(row.length).toBeLessThanOrEqual(width);
    const flat = text.replace(/\s+/g, ' ');
    for (const words of [
      'Kim, on House',
      'Red, the old one: the layout does most',
      'Blue: ball.rgIn',
      'Nothing lies',
    ])
      expect(flat).toContain(words);
  },
);

test('coachCsv: a row for each ball, commas in names kept', () => {
  const rows = parse(coachCsv(lines), { columns: true }) as Record<string, string>[];
  expect(rows.map(({ ball, advice }) => [ball, advice])).toEqual([
    ['Red, the old one', 'layout'],
    ['Blue', ''],
  ]);
  expect(rows[1].says).toContain('rgIn');
});

test('coachReport: a fault is told in the units of the page, to programs in those of the trade', () => {
  const flat = coachReport(lines, { ...pageOf(80), units: UNITS.metric }).replace(/\s+/g, ' ');
  expect(flat).toContain('got 2.4 in'); // an RG, as it is published
  expect(flat).toContain('weight 7.03 kg'); // 15.5 lb of 0.45359237 kg
  const printed = lines.map(printedCoachLine);
  expect(printed[1]).toMatchObject(lines[1] as object);
  expect((printed[1] as { fault: string }).fault).toMatch(/got 2\.4 in, .*weight 15\.5 lb/);
  expect([printed[0], printed[2]]).toEqual([withSentences(lines[0]), withSentences(lines[2])]);
});
