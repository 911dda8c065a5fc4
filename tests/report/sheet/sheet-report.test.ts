import { describe, expect, test } from 'vitest';
import type { PublishedBall } from '../../../src/records/schemas/ball.js';
import { sheetReport } from '../../../src/report/sheet/sheet-report.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import type { Page } from '../../../src/report/text/page.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { pageOf } from '../../support/page.js';
import { realSheets } from '../../support/pages/real-sheets.js';
import { said } from '../../support/said.js';

const sheets = await realSheets();
const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

describe.each(Object.entries(sheets))('sheet report of %s', (_name, answer) => {
  test('no line is wider than the page, and none has trailing blanks', () => {
    for (const width of [40, 60, 80, 120, 200])
      for (const ascii of [false, true]) {
        const text = sheetReport(answer, pageOf(width, { ascii }));
        for (const line of text.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(width);
        expect(text).not.toMatch(/ \n|\n\n\n|NaN|undefined|null/);
        if (ascii) expect(text).toMatch(/^[\x20-\x7e\n]*$/);
      }
  });

  test('every step with its arcs is there, and what rounding costs', () => {
    const text = oneLine(sheetReport(answer, pageOf(80)));
    for (const { mark, ways } of answer.marking.steps) {
      expect(text).toContain(mark);
      for (const way of ways)
        if (way.kind === 'arcs') for (const { from } of way.arcs) expect(text).toContain(`in from ${from}`);
    }
    expect(text).toContain('with lengths as written and angles to 1°');
  });

  test('the cautions come last but for the foot', () => {
    const text = oneLine(sheetReport(answer, pageOf(80)));
    const end = text.slice(text.indexOf('Before drilling'));
    for (const caution of answer.cautions) expect(end).toContain(said([caution]));
    expect(end).toContain('2026-03-01');
  });
});

test('sheet report: where the pin lies on the PAP no blank asks for an angle that is none', () => {
  const blanks = (name: string): string[] =>
    oneLine(sheetReport(sheets[name]!, pageOf(80))).match(/(drilling|VAL) angle \d+°: _/g) ?? [];
  expect(blanks('the pin on the PAP')).toEqual([]);
  expect(blanks('a left-hander with a fit, on a lane')).toHaveLength(2);
});

test('sheet report: in the order of the work, as on paper', () => {
  const text = sheetReport(sheets['a left-hander with a fit, on a lane']!, pageOf(80));
  const headings = [
    '60 x 4 3/4 x 35',
    'Check the ball',
    'The ball from the grip side',
    'Mark the layout',
    'Mirror check',
    'Mark the holes from the grip centre',
    'Read the grip back before drilling',
    'Holes, in',
    'Limits, and weights after drilling',
    'Rules and signature',
    'Drilled ball',
    'Before drilling',
  ];
  const at = headings.map((heading) => text.search(new RegExp(`^ *${heading}`, 'm')));
  expect(at.every((place) => place >= 0)).toBe(true);
  expect([...at].sort((a, b) => a - b)).toEqual(at);
});

test('sheet report: each step has its mark, what is measured, and below them its ways', () => {
  const text = sheetReport(sheets['a right-hander']!, pageOf(80));
  expect(text).toMatch(/^ {2}1 PAP; drilling angle 70°: _+\n {5}Pin away from you, CG mark toward you/m);
  expect(text).toMatch(/^ {5}or protractor on pin, 70° from the line to CG mark: go 4 1\/2 in\./m);
});

test('sheet report: both notations of a layout with the pin below say so, and what forbids it stands on top', () => {
  const text = oneLine(sheetReport(sheets['the pin below the PAP, in the thumb']!, pageOf(80)));
  expect(text).toContain('drilling angle 40°, pin-to-PAP 4 1/2 in, VAL angle 130°');
  expect(text).toMatch(/pin buffer [\d /]+ in, pin below the PAP/);
  expect(text).toMatch(
    /DO NOT DRILL AS IT STANDS: The pin would lie in or too near to a hole\..*Check the ball/,
  );
});

test('sheet report: a fit that was not given is blank, and no number of one is printed', () => {
  const text = oneLine(sheetReport(sheets['a right-hander']!, pageOf(120)));
  expect(text).toContain('no fit was given');
  expect(text).toContain('Mark the holes: no fit given, write it in');
  expect(text.slice(0, text.indexOf('Assumed'))).not.toContain('31/32');
});

test('sheet report: guessed numbers of the ball stand on top, each with how far off it may be, in either system of units', () => {
  const { ball, ...answer } = sheets['a right-hander']!;
  const uncertainty = { rgIn: 0.03, pinToCgIn: 0.5 };
  const guessed = { ...answer, ball: { ...(ball as PublishedBall), uncertainty } };
  const head = (page: Page): string =>
    oneLine(sheetReport(guessed, page)).split('The ball from the grip side')[0]!;
  expect(head(pageOf(80))).toContain('FIRST: ball numbers guessed: RG ± 0.030 in, pin to CG ± 0.5 in.');
  expect(head(pageOf(80, { units: UNITS.metric }))).toContain('RG ± 0.030 in, pin to CG ± 13 mm.');
  expect(oneLine(sheetReport({ ...answer, ball }, pageOf(80)))).not.toContain('guessed');
});
