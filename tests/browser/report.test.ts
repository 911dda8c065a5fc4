import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { recommend } from '../../src/answer/recommend.js';
import { webReportData } from '../../src/answer/web-report-data.js';
import type { RankedLayout, RecommendAnswer } from '../../src/records/answers/answer.js';
import type { WebReportData } from '../../src/records/answers/web-report-data.js';
import { pageOfAnswer } from '../support/pages/page-fixture.js';
import { pdfPages } from '../support/pages/pdf-text.js';
import { LONG_NAME } from '../support/pages/real-sheets.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';
import { startChromium } from './chromium.js';
import { SCREENS, type Screen, visit } from './visit.js';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const DESK: Screen = { width: 1280, scheme: 'light' };

let browser: Browser;
let answer: RecommendAnswer;
let facts: WebReportData;
let path: string;
const folder = mkdtempSync(join(tmpdir(), 'flarewise-'));
const save = (name: string, html: string): string => {
  const file = join(folder, name);
  writeFileSync(file, html);
  return file;
};

/** One real answer for all tests: a left-hander with a redrilled ball and long names. */
beforeAll(async () => {
  browser = await startChromium();
  const inputs = {
    bowler: { ...averageBowler, hand: 'left' as const, name: LONG_NAME },
    ball: {
      ...plainBall,
      name: LONG_NAME,
      drilledBefore: [{ hand: 'left' as const, pap: { overIn: 4.5, upIn: 0.5 }, layout: '40 x 4 x 30' }],
    },
    lane: { ...houseLane, games: 12 },
    want: { hookStart: 4, totalHook: 2 },
  };
  const options = {
    seed: 1,
    workers: 1,
    pinSide: 'above' as const,
    top: 3,
    models: null,
    budget: SMALL_BUDGET,
  };
  answer = await recommend(inputs, options);
  const best = answer.layouts[0] as RankedLayout;
  facts = webReportData(inputs, best, undefined, SMALL_BUDGET);
  path = save('report.html', pageOfAnswer(answer, { facts, invented: ['lane'] }));
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

const open = (page: Page): Promise<unknown> =>
  page.evaluate('document.querySelectorAll("details").forEach((each) => { each.open = true; })');

describe.each(SCREENS)('$width px wide, $scheme', (screen) => {
  test('says nothing on the console, fetches nothing, fits with and without its tables, and axe-core finds nothing', () =>
    visit(browser, path, screen, async ({ page, messages, requests }) => {
      const width = () => page.evaluate('document.documentElement.scrollWidth');
      expect(await width()).toBe(screen.width);
      await open(page);
      expect(await width()).toBe(screen.width);
      expect(messages).toEqual([]);
      expect(requests).toEqual([]);
      // axe-core takes long over thousands of cells of few kinds: it sees all of them once
      if (screen.width !== 360 || screen.scheme !== 'light') await page.reload();
      await page.evaluate(AXE);
      const { violations } = (await page.evaluate(`axe.run({ resultTypes: ['violations'] })`)) as {
        violations: { id: string; nodes: { html: string }[] }[];
      };
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    }));

  test('all text in pictures is large enough, inside its picture, and covers no other', () =>
    visit(browser, path, screen, async ({ page }) => {
      const texts = (await page.evaluate(TEXTS)) as Text[];
      expect(texts.length).toBeGreaterThan(200);
      for (const { text, size, box, frame } of texts) {
        expect(size, text).toBeGreaterThan(10);
        expect(box.left, `left of ${text}`).toBeGreaterThan(frame.left - 2);
        expect(box.right, `right of ${text}`).toBeLessThan(frame.right + 8); // a page's margin is 16 px
      }
      const covered = texts.flatMap((a, i) =>
        texts
          .slice(0, i)
          .flatMap((b) =>
            a.picture === b.picture && cover(a.box, b.box) ? [`${a.text} and ${b.text}`] : [],
          ),
      );
      expect(covered).toEqual([]);
    }));
});

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

interface Text {
  readonly text: string;
  readonly picture: number;
  /** Of its letters on the screen, px. */
  readonly size: number;
  readonly box: Box;
  readonly frame: Box;
}

/** Letters reach neither the top nor the bottom of their boxes; a sign in a disc may stand over anything. */
const cover = (a: Box, b: Box): boolean =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 &&
  Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.45 * (a.bottom - a.top);

/** All text of the pictures but the signs in discs, which lie on top. */
const TEXTS = `[...document.querySelectorAll('figure svg')].flatMap((svg, picture) => {
  const frame = svg.getBoundingClientRect();
  return [...svg.querySelectorAll('text')]
    .filter((each) => each.previousElementSibling?.getAttribute('stroke-width') !== '1.6')
    .map((each) => ({
      text: each.textContent, picture, box: each.getBoundingClientRect().toJSON(), frame: frame.toJSON(),
      size: parseFloat(each.getAttribute('font-size')) * frame.width / svg.viewBox.baseVal.width,
    }));
})`;

test('each box is reached by the keyboard, says what it is, and takes its layout out of every picture', () =>
  visit(browser, path, DESK, async ({ page }) => {
    const count = answer.layouts.length + 1;
    const isDrawn = (part: string) =>
      page.evaluate(
        `[...document.querySelectorAll('[data-part="${part}"]')].map((each) => getComputedStyle(each).display !== 'none')`,
      ) as Promise<boolean[]>;
    const names: string[] = [];
    for (let presses = 0; names.length < count && presses < 60; presses++) {
      await page.keyboard.press('Tab');
      const [type, name] = (await page.evaluate(
        '[document.activeElement.type ?? "", document.activeElement.closest("label")?.textContent ?? ""]',
      )) as [string, string];
      if (type !== 'checkbox') continue;
      names.push(name.replaceAll('\u00a0', ' '));
      const part = `layout ${name[0]}`;
      const before = await isDrawn(part);
      // lane twice, differences, six spreads, three maps; phases are named of the first alone
      expect(before.length).toBeGreaterThanOrEqual(11);
      expect(before.every(Boolean)).toBe(true);
      await page.keyboard.press('Space');
      expect((await isDrawn(part)).some(Boolean)).toBe(false);
      await page.keyboard.press('Space');
      expect((await isDrawn(part)).every(Boolean)).toBe(true);
    }
    expect(names).toEqual([
      ...answer.layouts.map(({ rank, text }) => `${rank}${text}`),
      `*${answer.middle.text}, the usual middle layout`,
    ]);
  }));

test('the contents lead to every section, by keyboard', () =>
  visit(browser, path, DESK, async ({ page }) => {
    const targets = (await page.evaluate(
      '[...document.querySelectorAll("nav a")].map((each) => document.querySelector(each.getAttribute("href"))?.tagName)',
    )) as string[];
    expect(targets.length).toBeGreaterThan(8);
    expect(new Set(targets)).toEqual(new Set(['SECTION']));
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await page.evaluate('location.hash')).toBe('#ranked');
  }));

test('a screen reader is told what every picture is, and finds a table with a heading for each column', () =>
  visit(browser, path, DESK, async ({ page }) => {
    await open(page);
    const figures = (await page.evaluate(`[...document.querySelectorAll('figure')].map((figure) => ({
      unnamed: [...figure.querySelectorAll('svg')].filter((svg) => svg.getAttribute('role') !== 'img' || !svg.getAttribute('aria-label')).length,
      tables: [...figure.querySelectorAll('details table')].map((table) => [
        table.querySelectorAll('thead [role=columnheader]').length, table.querySelectorAll('tbody tr').length]),
    }))`)) as { unnamed: number; tables: [number, number][] }[];
    expect(figures).toHaveLength(5);
    for (const { unnamed, tables } of figures) {
      expect(unnamed).toBe(0);
      expect(tables.length).toBeGreaterThan(0);
      for (const [heads, rows] of tables) expect(Math.min(heads, rows)).toBeGreaterThan(1);
    }
  }));

test('light and dark differ in their ground, and both print in dark ink on white', async () => {
  const ground = 'getComputedStyle(document.body).backgroundColor';
  expect(await visit(browser, path, DESK, ({ page }) => page.evaluate(ground))).toBe('rgb(255, 255, 255)');
  await visit(browser, path, { width: 1280, scheme: 'dark' }, async ({ page }) => {
    expect(await page.evaluate(ground)).toBe('rgb(21, 23, 26)');
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    expect(await page.evaluate(ground)).toBe('rgb(255, 255, 255)');
    expect(await page.evaluate('getComputedStyle(document.body).color')).toBe('rgb(26, 26, 26)');
    const pdf = await page.pdf({ preferCSSPageSize: true });
    const { count, size } = pdfPages(pdf);
    expect(count).toBeGreaterThan(3);
    expect(Math.min(...size)).toBeGreaterThan(500);
    expect(pdf.length).toBeGreaterThan(50_000);
  });
});

test('a page without script: none is in it', () => {
  const html = readFileSync(path, 'utf8');
  expect(html).not.toMatch(/<script|javascript:|\son\w+=/i);
  expect(html).not.toMatch(/(?:src|href)="(?!data:|#)/);
  expect(html).not.toMatch(/url\(|@import/);
});
