import { describe, expect, test } from 'vitest';
import { coachReport } from '../../src/report/coach-report.js';
import { UNITS } from '../../src/report/display-units.js';
import { drilledReport } from '../../src/report/drilled-report.js';
import { judgeReport } from '../../src/report/judge-report.js';
import type { Page } from '../../src/report/page.js';
import { recommendationReport } from '../../src/report/recommendation-report.js';
import { rollReport } from '../../src/report/roll-report.js';
import { coachPairOf } from './coach-fixture.js';
import { drilledAnswer, lane, recommendAnswer, rollAnswer } from './fixture.js';
import { judgeAnswer } from './judge-fixture.js';
import { pageOf } from './page.js';

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
  ['judge', (page) => judgeReport(judgeAnswer, page), ['80 columns', '200 columns']],
  ['drilled', (page) => drilledReport(drilledAnswer, page), ['60 columns', '80 columns, metric']],
  ['roll', (page) => rollReport(rollAnswer, 'right', lane, page), ['60 columns', '80 columns']],
  [
    'coach',
    (page) =>
      coachReport([coachPairOf('Smooth one'), coachPairOf('Sharp one', { totalHookBoards: 9 })], page),
    ['60 columns', '80 columns'],
  ],
];

describe.each(SCREENS)('the screen of %s', (name, report, pages) => {
  test.each(pages)('%s', async (page) => {
    await expect(report(PAGES[page])).toMatchFileSnapshot(`screens/${name}, ${page}.txt`);
  });
});
