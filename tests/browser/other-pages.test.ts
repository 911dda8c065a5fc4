import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { coreAnswer } from '../../src/answer/core/core-answer.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { adjustHtml } from '../../src/report/web/adjust-html.js';
import { coachHtml } from '../../src/report/web/coach-html.js';
import { compareHtml } from '../../src/report/web/compare-html.js';
import { coreHtml } from '../../src/report/web/core-html.js';
import { judgeHtml } from '../../src/report/web/judge-html.js';
import { learnedHtml } from '../../src/report/web/learned-html.js';
import { mapHtml } from '../../src/report/web/map-html.js';
import { adjustAnswer } from '../support/adjust-answer.js';
import { eightStudents } from '../support/coach-answer.js';
import { compareAnswer } from '../support/compare-answer.js';
import { asymmetricCore, ballAround } from '../support/core-files.js';
import { judgeAnswer } from '../support/judge-answer.js';
import { doubtfulAnswer, learnedAnswer } from '../support/learned-answer.js';
import { mapAnswer } from '../support/map-answer.js';
import { facts, pageOfAnswer } from '../support/pages/page-fixture.js';
import { pdfPages } from '../support/pages/pdf-text.js';
import { averageBowler } from '../support/problems.js';
import { recommendAnswer } from '../support/recommend-answer.js';
import { startChromium } from './chromium.js';
import { axeFindings, expectFirstScreen, expectFits, expectReadable, PHONE } from './page-checks.js';
import { SCREENS, visit } from './visit.js';

const units = UNITS.trade;
const core = coreAnswer(ballAround(asymmetricCore), null, {
  bowler: averageBowler,
  layout: { drillingAngleDeg: 70, pinToPapIn: 4.5, valAngleDeg: 30 },
});
const PAGES = {
  recommend: pageOfAnswer(recommendAnswer, { invented: ['bowler', 'ball', 'lane'] }),
  judge: judgeHtml(judgeAnswer, facts, ['lane'], units),
  adjust: adjustHtml(adjustAnswer, ['lane'], units),
  compare: compareHtml(compareAnswer, ['lane'], units),
  coach: coachHtml(eightStudents, units),
  map: mapHtml(mapAnswer, ['ball'], units),
  core: coreHtml(core.answer, ['a fault'], units),
  learned: learnedHtml(learnedAnswer, ['bowler'], units),
  'learned, in doubt': learnedHtml(doubtfulAnswer, [], units),
};

let browser: Browser;
const folder = mkdtempSync(join(tmpdir(), 'flarewise-'));
const pathOf = (name: string): string => join(folder, `${name}.html`);
beforeAll(async () => {
  browser = await startChromium();
  for (const [name, html] of Object.entries(PAGES)) writeFileSync(pathOf(name), html);
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

describe.each(Object.keys(PAGES))('the page of %s', (name) => {
  test.each(SCREENS)('$width px wide, $scheme: fits, is readable, and axe-core finds nothing', (screen) =>
    visit(browser, pathOf(name), screen, async (visited) => {
      expect(await expectReadable(visited)).toBeGreaterThan(5);
      await expectFits(visited, screen);
      expect(await axeFindings(visited)).toEqual([]);
    }),
  );

  // a coach's page is as long as there are students
  test.skipIf(name === 'coach')(
    'is printed on four pages at most, and not higher than 3,500 px on a desk',
    () =>
      visit(browser, pathOf(name), { width: 1280, scheme: 'light' }, async ({ page: opened }) => {
        expect(await opened.evaluate('document.documentElement.scrollHeight')).toBeLessThanOrEqual(3500);
        expect(pdfPages(await opened.pdf({ preferCSSPageSize: true })).count).toBeLessThanOrEqual(4);
      }),
  );

  test('the answer is on the first screen of a telephone', () =>
    visit(browser, pathOf(name), PHONE, expectFirstScreen));
});
