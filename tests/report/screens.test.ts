import { describe, expect, test } from 'vitest';
import { SECTION_IDS } from '../../src/records/schemas/recommend-sections.js';
import { adjustReport } from '../../src/report/screens/adjust-report.js';
import { coachReport } from '../../src/report/screens/coach-report.js';
import { compareReport } from '../../src/report/screens/compare-report.js';
import { drilledReport } from '../../src/report/screens/drilled-report.js';
import { judgeReport } from '../../src/report/screens/judge-report.js';
import { learnedReport } from '../../src/report/screens/learned-report.js';
import { mapReport } from '../../src/report/screens/map-report.js';
import { recommendationReport } from '../../src/report/screens/recommendation-report.js';
import { rollReport } from '../../src/report/screens/roll-report.js';
import { UNITS } from '../../src/report/text/display-units.js';
import type { Page } from '../../src/report/text/page.js';
import { adjustAnswer } from '../support/adjust-answer.js';
import { coachPairOf, eightStudents } from '../support/coach-answer.js';
import { compareAnswer } from '../support/compare-answer.js';
import { judgeAnswer } from '../support/judge-answer.js';
import { doubtfulAnswer, LEARNED_FROM, learnedAnswer } from '../support/learned-answer.js';
import { mapAnswer } from '../support/map-answer.js';
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
  [
    'adjust',
    (page) => adjustReport(adjustAnswer, page),
    ['60 columns', '80 columns', '80 columns, ASCII', '80 columns, metric'],
  ],
  ['adjust in full', (page) => adjustReport(adjustAnswer, page, true), ['80 columns']],
  ['drilled', (page) => drilledReport(drilledAnswer, page), ['60 columns', '80 columns, metric']],
  ['map', (page) => mapReport(mapAnswer, page), ['60 columns', '80 columns', '80 columns, ASCII']],
  ['map in full', (page) => mapReport(mapAnswer, page, true), ['80 columns']],
  ['roll', (page) => rollReport(rollAnswer, 'right', lane, page), ['60 columns', '80 columns']],
  [
    'learned',
    (page) => learnedReport(learnedAnswer, page),
    ['60 columns', '80 columns', '80 columns, ASCII'],
  ],
  ['learned in doubt', (page) => learnedReport(doubtfulAnswer, page), ['60 columns', '80 columns, metric']],
  ['learned in full', (page) => learnedReport(learnedAnswer, page, true), ['80 columns']],
  [
    'recommend with a log',
    (page) => recommendationReport({ ...recommendAnswer, learned: LEARNED_FROM }, page),
    ['60 columns', '80 columns'],
  ],
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

test.each([60, 80])('what logged shots teach fits one screen of %d columns', (columns) => {
  for (const answer of [learnedAnswer, doubtfulAnswer]) {
    const lines = learnedReport(answer, pageOf(columns)).trimEnd().split('\n');
    expect(lines.length).toBeLessThanOrEqual(24);
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(columns);
  }
});
