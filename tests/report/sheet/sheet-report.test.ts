import { describe, expect, test } from 'vitest';
import { sheetReport } from '../../../src/report/sheet/sheet-report.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { pageOf } from '../../support/page.js';
import { realSheets } from '../../support/pages/real-sheets.js';
import { said } from '../../support/said.js';

const sheets = await realSheets();
const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

describe.each(Object.entries(sheets))('sheet report of %s', (_name, answer) => {
  test('no line is wider than the page, and none has trailing blanks', () => {
    for (const width of [60, 80, 120, 200])
      for (const ascii of [false, true]) {
        const text = sheetReport(answer, pageOf(width, { ascii }));
        for (const line of text.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(width);
        expect(text).not.toMatch(/ \n|\n\n\n|NaN|undefined|null/);
        if (ascii) expect(text).toMatch(/^[\x20-\x7e\n]*$/);
      }
  });

  test('every step with both of its arcs is there, and what rounding costs', () => {
    const text = oneLine(sheetReport(answer, pageOf(80)));
    for (const { mark, arcs } of answer.tape.steps) {
      expect(text).toContain(mark);
      for (const { from } of arcs) expect(text).toMatch(new RegExp(`in from ${from}`));
    }
    expect(text).toContain('rounded to 1/16 in');
  });

  test('the cautions come last but for the foot', () => {
    const text = oneLine(sheetReport(answer, pageOf(80)));
    const end = text.slice(text.indexOf('Before drilling'));
    for (const caution of answer.cautions) expect(end).toContain(said([caution]));
    expect(end).toContain('2026-03-01');
  });
});

test('sheet report: where a table would be split each row becomes a sentence, where it fits it stays a table', () => {
  const answer = sheets['a right-hander']!;
  expect(oneLine(sheetReport(answer, pageOf(60)))).toContain(
    '1 PAP: first arc 4 1/2 in from pin; second arc',
  );
  expect(sheetReport(answer, pageOf(160))).toMatch(/^ {2}1 PAP {2,}4 1\/2 in from pin {2,}/m);
});

test('sheet report: both notations of a layout with the pin below say so', () => {
  const text = oneLine(sheetReport(sheets['the pin below the PAP, in the thumb']!, pageOf(80)));
  expect(text).toContain('drilling angle 40°, pin-to-PAP 4 1/2 in, VAL angle 130°');
  expect(text).toMatch(/pin buffer [\d /]+ in, pin below the PAP/);
  expect(text).toContain('Problems'); // the pin lies in a hole
});
