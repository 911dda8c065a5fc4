import { describe, expect, test } from 'vitest';
import { mapCsv } from '../../../src/report/csv/map-csv.js';
import { mapReport } from '../../../src/report/screens/map-report.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { mapAnswer as answer } from '../../support/map-answer.js';
import { pageOf } from '../../support/page.js';

const { rows } = answer;

describe('mapReport', () => {
  test.each([60, 80, 120, 200])('keeps within %i columns', (width) => {
    for (const line of mapReport(answer, pageOf(width)).split('\n'))
      expect(columnsOf(line), line).toBeLessThanOrEqual(width);
  });

  test('says in words whether the mark matters, and keeps assumptions and cautions', () => {
    const text = mapReport(answer, pageOf(80)).replace(/\s+/g, ' ');
    expect(text).toContain('The mark matters for this ball');
    expect(text).toContain('from 0.008 to 0.017 in');
    expect(text).toContain('The CG lies on the pin');
    expect(text).toContain('The rules of your local body decide');
    const still = { ...answer, reach: { ...answer.reach, matters: false } };
    expect(mapReport(still, pageOf(80))).toContain('The mark hardly matters for this ball’s differentials');
  });

  test('each row’s mark stands where its number lies between the ends of the scale', () => {
    const lines = mapReport(answer, pageOf(80)).split('\n');
    const first = lines.findIndex((line) => line.startsWith('Intermediate differential')) + 1;
    const bars = rows.map((_, i) => lines[first + i].split('│')[1]);
    const [low, high] = [0, 0.018]; // undrilled to the top of the last band
    bars.forEach((bar, i) => {
      const at = bar.indexOf('●') / (bar.length - 1);
      const want = (rows[i].drilled.intermediateDifferentialIn - low) / (high - low);
      expect(Math.abs(at - want)).toBeLessThanOrEqual(0.5 / (bar.length - 1) + 1e-9);
    });
  });

  test('draws with ASCII alone when asked', () => {
    expect(mapReport(answer, pageOf(80, { ascii: true }))).toMatch(/^[\n -~]*$/);
  });
});

test('mapCsv: a head and one row a layout, each with as many fields', () => {
  const lines = mapCsv(answer).trimEnd().split('\r\n');
  expect(lines).toHaveLength(1 + rows.length);
  const width = lines[0].split(',').length;
  for (const line of lines) expect(line.split(',')).toHaveLength(width);
  const column = lines[0].split(',').indexOf('intermediateDifferentialIn');
  expect(Number(lines[2].split(',')[column])).toBe(rows[1].drilled.intermediateDifferentialIn);
});
