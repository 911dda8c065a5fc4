import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Chalk } from 'chalk';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { UNITS } from '../../src/report/text/display-units.js';
import { paintWith } from '../../src/report/text/paint.js';
import { adjustHtml } from '../../src/report/web/adjust-html.js';
import { coachHtml } from '../../src/report/web/coach-html.js';
import { compareHtml } from '../../src/report/web/compare-html.js';
import { judgeHtml } from '../../src/report/web/judge-html.js';
import { adjustAnswer } from '../support/adjust-answer.js';
import { eightStudents } from '../support/coach-answer.js';
import { compareAnswer } from '../support/compare-answer.js';
import { judgeAnswer } from '../support/judge-answer.js';
import { facts } from '../support/pages/page-fixture.js';
import { pdfPages } from '../support/pages/pdf-text.js';
import { startChromium } from './chromium.js';
import { axeFindings, expectFits, expectReadable } from './page-checks.js';
import { SCREENS, visit } from './visit.js';

const page = { units: UNITS.trade, paint: paintWith(new Chalk({ level: 0 })) };
const PAGES = {
  judge: judgeHtml(judgeAnswer, facts, ['lane'], page),
  adjust: adjustHtml(adjustAnswer, ['lane'], page),
  compare: compareHtml(compareAnswer, ['lane'], page),
  coach: coachHtml(eightStudents, page),
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
      expect(await expectReadable(visited)).toBeGreaterThan(20);
      await expectFits(visited, screen);
      expect(await axeFindings(visited)).toEqual([]);
    }),
  );

  test.skipIf(name === 'coach')('is printed on four pages at most', () =>
    visit(browser, pathOf(name), { width: 1280, scheme: 'light' }, async (visited) => {
      expect(pdfPages(await visited.page.pdf({ preferCSSPageSize: true })).count).toBeLessThanOrEqual(4);
    }),
  );
});
