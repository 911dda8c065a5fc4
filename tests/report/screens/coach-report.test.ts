import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import type { CoachLine } from '../../../src/records/answers/coach-answer.js';
import { coachCsv } from '../../../src/report/csv/coach-csv.js';
import { coachReport } from '../../../src/report/screens/coach-report.js';
import { coachPairOf } from '../../support/coach-answer.js';
import { pageOf } from '../../support/page.js';

const lines: readonly CoachLine[] = [
  coachPairOf('Red, the old one'),
  {
    schema: 'flarewise/coach-fault/1',
    bowler: 'Kim',
    ball: 'Blue',
    lane: 'House',
    fault: 'ball.rgIn must be …',
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
