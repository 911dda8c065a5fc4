import { describe, expect, test } from 'vitest';
import { SECTION_IDS } from '../../src/records/schemas/recommend-sections.js';
import { drilledReport } from '../../src/report/screens/drilled-report.js';
import { recommendationReport } from '../../src/report/screens/recommendation-report.js';
import { rollReport } from '../../src/report/screens/roll-report.js';
import type { Page } from '../../src/report/text/page.js';
import { columnsOf } from '../../src/report/text/wrap.js';
import { METRIC_BUT_PUBLISHED } from '../support/metric-units.js';
import { pageOf } from '../support/page.js';
import { drilledAnswer, lane, recommendAnswer, rollAnswer } from '../support/recommend-answer.js';

const reports: readonly [string, (page: Page) => string][] = [
  ['recommendation', (page) => recommendationReport(recommendAnswer, page, { sections: SECTION_IDS })],
  ['drilled', (page) => drilledReport(drilledAnswer, page)],
  ['roll', (page) => rollReport(rollAnswer, 'right', lane, page)],
];
const metric = (width: number): Page => pageOf(width, { units: METRIC_BUT_PUBLISHED });

describe.each(reports)('%s report in metric units', (_name, report) => {
  test('names no unit of the other system; layouts stay as the trade writes them', () => {
    const text = report(metric(80)).replace(/\s+/g, ' ');
    expect(text).not.toMatch(/\b(ft|mph|lb|oz|inch|inches|feet|deg\/ft)\b|\d in\b(?! \d| the| a)/);
    expect(text).toContain('70 x 4 1/2 x 30');
  });

  test.each([40, 60, 80, 200])('no line is wider than %i columns', (width) => {
    for (const line of report(metric(width)).split('\n'))
      expect(columnsOf(line), line).toBeLessThanOrEqual(width);
  });
});
