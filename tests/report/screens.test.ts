import { describe, expect, test } from 'vitest';
import { SECTION_IDS } from '../../src/records/schemas/recommend-sections.js';
import { coachReport } from '../../src/report/screens/coach-report.js';
import { compareReport } from '../../src/report/screens/compare-report.js';
import { drilledReport } from '../../src/report/screens/drilled-report.js';
import { judgeReport } from '../../src/report/screens/judge-report.js';
import { recommendationReport } from '../../src/report/screens/recommendation-report.js';
import { rollReport } from '../../src/report/screens/roll-report.js';
import { UNITS } from '../../src/report/text/display-units.js';
import type { Page } from '../../src/report/text/page.js';
import { coachPairOf, eightStudents } from '../support/coach-answer.js';
import { compareAnswer } from '../support/compare-answer.js';
import { judgeAnswer } from '../support/judge-answer.js';
import { pageOf } from '../support/page.js';
import { drilledAnswer, lane, recommendAnswer, rollAnswer } from '../support/recommend-answer.js';

/*
 * Whole screens of made-up answers, looked at by a person and kept as text. `npm run screens` rewrites them after a change
 * of a report; read the difference before it is committed.
 */

const PAGES = {
  '60 columns': pageOf(60),
  '80 columns': pageOf(80),
  '80 columns, ASCII': pageOf(80, { ascii: true }),
  '80 columns, metric': pageOf(80, { units: UNITS.metric }),
  '200 columns': pageOf(200),
} satisfies Record<string, Page>;

const SCREENS: readonly (readonly [string, (page: Page) => string, readonly (keyof typeof PAGES)[]])[] = [
  [
    'recommend',
    (page) => recommendationReport(recommendAnswer, page),
    ['60 columns', '80 columns', '80 columns, ASCII', '80 columns, metric', '200 columns'],
  ],
  [
    'recommend in full',
    (page) => recommendationReport(recommendAnswer, page, { sections: SECTION_IDS }),
    ['60 columns', '80 columns', '80 columns, ASCII', '80 columns, metric', '200 columns'],
  ],
  ['judge', (page) => judgeReport(judgeAnswer, page), ['60 columns', '80 columns']],
  ['judge in full', (page) => judgeReport(judgeAnswer, page, true), ['80 columns', '200 columns']],
  [
    'compare',
    (page) => compareReport(compareAnswer, page),
    ['60 columns', '80 columns', '80 columns, ASCII', '80 columns, metric'],
  ],
  ['compare full', (page) => compareReport(compareAnswer, page, true), ['80 columns']],
  ['drilled', (page) => drilledReport(drilledAnswer, page), ['60 columns', '80 columns, metric']],
  ['roll', (page) => rollReport(rollAnswer, 'right', lane, page), ['60 columns', '80 columns']],
  ['coach', (page) => coachReport(eightStudents, page), ['60 columns', '80 columns']],
  [
    'coach full',
    (page) =>
      coachReport([coachPairOf('Smooth one'), coachPairOf('Sharp one', { totalHookBoards: 9 })], page, true),
    ['80 columns'],
  ],
];

describe.each(SCREENS)('the screen of %s', (name, report, pages) => {
  test.each(pages)('%s', async (page) => {
    await expect(report(PAGES[page])).toMatchFileSnapshot(`screens/${name}, ${page}.txt`);
  });
});
