import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import type { CoachLine } from '../../../src/records/answers/coach-answer.js';
import { coachCsv } from '../../../src/report/csv/coach-csv.js';
import { coachReport } from '../../../src/report/screens/coach-report.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { coachHtml } from '../../../src/report/web/coach-html.js';
import { printedCoachLine } from '../../../src/report/wording/coach-lines.js';
import { withSentences } from '../../../src/report/wording/with-sentences.js';
import { coachPairOf, eightStudents } from '../../support/coach-answer.js';
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
          field: 'ball.rgIn',
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
    schema: 'flarewise/coach-bag/3',
    bowler: 'Kim',
    lane: 'House',
    best: 'Red, the old one',
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

test.each([40, 60, 80, 200])(
  'coachReport: at %i columns every ball, its advice and its fault can be read',
  (width) => {
    const text = coachReport(lines, pageOf(width), true);
    for (const row of text.split('\n')) expect(row.length).toBeLessThanOrEqual(width);
    const flat = text.replace(/\s+/g, ' ');
    for (const words of [
      'Kim, on House',
      'Red, the old one: What moves it most: the layout 45 x 4 x 43 (1.2 boards more); ' +
        'cover at 500 grit, not 2000 (0.8 boards less, farther from the wish).',
      'Blue: ball.rgIn',
      'No ball lies',
    ])
      expect(flat).toContain(words);
  },
);

test('what is not seen to move anything is not said to move it farther from the wish', () => {
  const pair = coachPairOf('Red');
  if (pair.says.code !== 'moves-most') throw new Error('another remark');
  const [layout, ...others] = pair.says.params.ways;
  const size = { hookStartFt: 0, sharpnessDegPerFt: 0, totalHookBoards: 0.01 };
  const params = { ...pair.says.params, ways: [{ ...layout, size, gain: -0.1 }, ...others] };
  const text = coachReport([{ ...pair, says: { code: 'moves-most', params } }], pageOf(200), true);
  expect(text).toContain('the layout 45 x 4 x 43 (no different);');
});

describe('coachReport in short', () => {
  const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

  test('eight students with two balls each, whose names are long, fit a screen of 80 by 24', () => {
    for (const ascii of [false, true]) {
      const rows = coachReport(eightStudents, pageOf(80, { ascii })).trimEnd().split('\n');
      expect(rows.length).toBeLessThanOrEqual(24);
      for (const row of rows) expect(columnsOf(row), row).toBeLessThanOrEqual(80);
    }
  });

  test('a row a student: the best ball of the bag, its layout, the gain, whether it is seen, what moves most', () => {
    const text = oneLine(coachReport(eightStudents, pageOf(120)));
    expect(text).toContain('Anna Asymmetric core, mild mass bias -3.0 no layout 80 45 x 4 x 43 Ben');
    expect(text).toContain('Ben Asymmetric core, mild mass bias -2.0 yes cover 80 45 x 4 x 43 Cara');
    expect(text).toContain('Finn Asymmetric core, mild mass bias usual no cover 45 x 4 x 43 Gus');
    expect(text).toContain(
      'Hana Lobed symmetric core, medium +1.2 barely layout 80 45 x 4 x 43 Measure the PAP',
    );
    expect(text.match(/Lobed/g)).toHaveLength(1);
  });

  test('whose release is guessed is said, once a number', () => {
    expect(oneLine(coachReport(eightStudents, pageOf(80)))).toContain(
      'Guessed or roughly measured: Cara Longname-Whitfield (axis tilt, PAP).',
    );
    expect(coachReport([coachPairOf('Red')], pageOf(80))).not.toContain('guessed');
  });

  test('one ball and one lane stand in the heading, several lanes beside the student', () => {
    const one = coachReport([coachPairOf('Red')], pageOf(80));
    expect(one.split('\n')[0]).toBe(
      'Best layout for each student: Red, on House; asked for: total hook much',
    );
    const two = [coachPairOf('Red'), coachPairOf('Red', {}, { lane: 'Sport' })];
    expect(oneLine(coachReport(two, pageOf(80)))).toMatch(/student: Red; .*Kim, House .*Kim, Sport /);
  });

  test('a ball that cannot be is told with its bowler and lane', () => {
    expect(oneLine(coachReport(lines, pageOf(80)))).toContain('Kim, Blue, on House: ball.rgIn');
  });
});

test('coachHtml: first all students, then each with every ball; nothing is left open', () => {
  const html = coachHtml(eightStudents, UNITS.trade).replaceAll('\u00a0', ' ');
  expect(html.match(/<section /g)).toHaveLength(8);
  expect(html).toMatch(/(\d|None) of 8 students would see/);
  expect(html).toContain('moves it most</h2>');
  expect(html.match(/<figure id="movers-\d-figure"/g)).toHaveLength(8);
  expect(html).toContain('Cara Longname-Whitfield (axis tilt, PAP)');
  expect(html).toContain('Lobed symmetric core, medium');
  expect(html).toContain('A hole cannot be undone.');
  expect(html).not.toMatch(/NaN|undefined|<script|<fieldset/);
});

test('coachCsv: numbers have no more digits than they mean; each says how far off it may be, and so does what was guessed', () => {
  const rows = parse(coachCsv(eightStudents), { columns: true }) as Record<string, string>[];
  expect(rows).toHaveLength(16);
  for (const row of rows)
    for (const [head, cell] of Object.entries(row))
      if (/^-?\d+\.\d+$/.test(cell)) expect(cell.split('.')[1].length, head).toBeLessThanOrEqual(4);
  expect(rows[0]).toMatchObject({ score: '97.1', gainTotalHookBoards: '1.23', seen: 'barely' });
  expect(rows[0]).toMatchObject({
    'totalHookBoards +/-': '2.35',
    'gainTotalHookBoards +/-': '0.46',
    'axisTiltDeg +/-': '',
    'rgIn +/-': '',
  });
  expect(rows[5]).toMatchObject({ 'axisTiltDeg +/-': '5', 'papOverIn +/-': '0.4', 'papUpIn +/-': '0.45' });
});

test('coachCsv: a row for each ball, commas in names kept', () => {
  const rows = parse(coachCsv(lines), { columns: true }) as Record<string, string>[];
  expect(rows.map(({ ball, movesMost }) => [ball, movesMost])).toEqual([
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

test('a PAP that is only guessed is to be measured: said once for all students, on screen and page; one roughly measured is not', () => {
  const told = (uncertainty: Partial<Record<'papOverIn' | 'papUpIn' | 'axisTiltDeg', number>>) =>
    ['Ann', 'Ben'].map((bowler) => ({ ...coachPairOf('Red'), bowler, unsure: uncertainty }));
  const said = /Measure the PAP before drilling, it is only a guess: Ann, Ben\./g;
  const texts = (students: readonly CoachLine[]): string[] => [
    coachReport(students, pageOf(200)),
    coachHtml(students, UNITS.trade),
  ];
  for (const text of texts(told({ papUpIn: 0.45 }))) expect(text.match(said)).toHaveLength(1);
  for (const text of texts(told({ papOverIn: 0.1, axisTiltDeg: 5 })))
    expect(text).not.toContain('Measure the PAP');
});

test('a coach’s table says what was asked for, a number too, and for how many the layout matters', () => {
  const target = { ...coachPairOf('Red').targets[0]!, step: null, asked: 22 };
  const lines = [coachPairOf('Red', {}, { targets: [target] })];
  expect(coachReport(lines, pageOf(80))).toMatch(
    /; asked for: total hook\s22\.0 boards\nThe student would see/,
  );
});

test('a number that no layout comes near is said with the nearest, of whom it holds, on screen and page', () => {
  const asked = (bowler: string, value: number) =>
    coachPairOf(
      'Red',
      {},
      {
        bowler,
        targets: [
          {
            wish: 'totalHook',
            step: null,
            asked: 22,
            reading: 'totalHookBoards',
            value,
            attainable: { low: 10, high: value },
          },
        ],
      },
    );
  const far = [asked('Kim', 15), asked('Ben', 22)];
  const said = 'Out of reach; the nearest that a layout comes: Kim (total hook 15.0 boards).';
  expect(coachReport(far, pageOf(80)).replace(/\s+/g, ' ')).toContain(said);
  expect(coachHtml(far, UNITS.trade)).toContain(said);
  expect(coachReport([asked('Ben', 22)], pageOf(80))).not.toContain('Out of reach');
});
