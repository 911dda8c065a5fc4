import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { recommend } from '../../src/answer/recommend.js';
import { webReportData } from '../../src/answer/web-report-data.js';
import type { RankedLayout, RecommendAnswer } from '../../src/records/answers/answer.js';
import type { WebReportData } from '../../src/records/answers/web-report-data.js';
import type { NextStep } from '../../src/report/screens/next-steps.js';
import { pageOfAnswer } from '../support/pages/page-fixture.js';
import { pdfPages } from '../support/pages/pdf-text.js';
import { LONG_NAME } from '../support/pages/real-sheets.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';
import { startChromium } from './chromium.js';
import { axeFindings, expectFirstScreen, expectFits, expectReadable, openAll, PHONE } from './page-checks.js';
import { SCREENS, type Screen, visit } from './visit.js';

const DESK: Screen = { width: 1280, scheme: 'light' };

/** The longest command that follows an answer. */
const SHEET: NextStep = {
  code: 'sheet',
  words: [
    ['sheet'],
    ['--bowler', 'average-left'],
    ['--ball', 'plain-redrilled'],
    ['--lane', 'flat-demanding'],
    ['--layout', '105 x 4 1/2 x 30'],
    ['--out', 'sheet.pdf'],
  ],
};

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

describe.each(SCREENS)('$width px wide, $scheme', (screen) => {
  test('says nothing on the console, fetches nothing, fits with and without its tables, and axe-core finds nothing', () =>
    visit(browser, path, screen, async (visited) => {
      await expectFits(visited, screen);
      // axe-core takes long over thousands of cells of few kinds: it sees all of them once
      if (screen.width !== 360 || screen.scheme !== 'light') await visited.page.reload();
      expect(await axeFindings(visited)).toEqual([]);
    }));

  test('all text in pictures is large enough, inside its picture, and covers no other', () =>
    visit(browser, path, screen, async (visited) => {
      expect(await expectReadable(visited)).toBeGreaterThan(120);
    }));
});

test('each box is reached by the keyboard, says what it is, and draws its path or takes it away', () =>
  visit(browser, path, DESK, async ({ page }) => {
    const count = answer.layouts.length + 1;
    const isDrawn = (part: string) =>
      page.evaluate(
        `[...document.querySelectorAll('#lane-figure [data-part="${part}"]')].map((each) => getComputedStyle(each).display !== 'none')`,
      ) as Promise<boolean[]>;
    const names: string[] = [];
    for (let presses = 0; names.length < count && presses < 80; presses++) {
      await page.keyboard.press('Tab');
      const [type, name] = (await page.evaluate(
        '[document.activeElement.type ?? "", document.activeElement.closest("label")?.textContent ?? ""]',
      )) as [string, string];
      if (type !== 'checkbox') continue;
      names.push(name.replaceAll('\u00a0', ' '));
      const part = `layout ${name[0]}`;
      const before = await isDrawn(part);
      expect(before.length).toBeGreaterThanOrEqual(2); // its path, and its sign
      expect(new Set(before).size).toBe(1);
      if (name.startsWith('1')) expect(before[0]).toBe(true);
      await page.keyboard.press('Space');
      expect(new Set(await isDrawn(part))).toEqual(new Set([!before[0]]));
      await page.keyboard.press('Space');
      expect(await isDrawn(part)).toEqual(before);
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
    expect(targets.length).toBeGreaterThan(5);
    expect(new Set(targets)).toEqual(new Set(['SECTION']));
    // behind the tables of the first two charts
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await page.evaluate('location.hash')).toBe('#ranked');
  }));

test('a screen reader is told what every picture is, and finds a table with a heading for each column', () =>
  visit(browser, path, DESK, async ({ page }) => {
    await openAll(page);
    const figures = (await page.evaluate(`[...document.querySelectorAll('figure')].map((figure) => ({
      unnamed: [...figure.querySelectorAll('svg')].filter((svg) => svg.getAttribute('role') !== 'img' || !svg.getAttribute('aria-label')).length,
      tables: [...figure.querySelectorAll('details table')].map((table) => [
        table.querySelectorAll('thead [role=columnheader]').length, table.querySelectorAll('tbody tr').length]),
    }))`)) as { unnamed: number; tables: [number, number][] }[];
    expect(figures).toHaveLength(9);
    for (const { unnamed, tables } of figures) {
      expect(unnamed).toBe(0);
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
    expect(count).toBeGreaterThan(1);
    expect(count).toBeLessThanOrEqual(4);
    expect(Math.min(...size)).toBeGreaterThan(500);
    expect(pdf.length).toBeGreaterThan(50_000);
  });
});

test('on a telephone the first screen says what to drill, why, how much it matters and how sure that is, above the drawing', () =>
  visit(browser, path, { width: 360, scheme: 'light' }, async ({ page }) => {
    const ends = (await page.evaluate(
      `[...document.querySelectorAll('dl > div')].map((each) => [each.firstElementChild.textContent, each.getBoundingClientRect().bottom])`,
    )) as [string, number][];
    for (const label of ['Why', 'Size', 'Sure']) {
      const end = ends.find(([name]) => name === label)?.[1];
      expect(end, label).toBeLessThan(740);
    }
    const drawing = await page.evaluate('document.querySelector("#grip-figure").getBoundingClientRect().top');
    expect(drawing).toBeGreaterThan(Math.max(...ends.map(([, end]) => end)) - 1);
  }));

test('with names as people give them, the first screen of a telephone ends with the next command', () => {
  const named = {
    ...answer,
    inputs: {
      ...answer.inputs,
      bowler: { ...answer.inputs.bowler, name: 'Average left-hander' },
      ball: { ...answer.inputs.ball, name: 'Plain symmetric core, drilled once before' },
    },
  };
  const phone = save(
    'phone.html',
    pageOfAnswer(named, { facts, invented: ['bowler', 'ball', 'lane'], next: [SHEET] }),
  );
  return visit(browser, phone, PHONE, expectFirstScreen);
});

test('on paper what was assumed is printed, which a screen folds', () =>
  visit(browser, path, DESK, async ({ page }) => {
    const isShown = () =>
      page.evaluate('document.querySelector(".on-paper").getBoundingClientRect().height > 20');
    expect(await isShown()).toBe(false);
    await page.emulateMedia({ media: 'print' });
    expect(await isShown()).toBe(true);
  }));

test('the answer fits the first screen and the first printed page, and all of it a few screens', () =>
  visit(browser, path, DESK, async ({ page }) => {
    const headEnds = () =>
      page.evaluate('document.querySelector("header").getBoundingClientRect().bottom') as Promise<number>;
    expect(await page.evaluate('document.documentElement.scrollHeight')).toBeLessThan(3500);
    expect(await headEnds()).toBeLessThan(900); // the screen's height
    await page.setViewportSize({ width: 725, height: 966 }); // letter less 12 mm on every side, CSS px
    await page.emulateMedia({ media: 'print' });
    expect(await headEnds()).toBeLessThan(966);
  }));

test('a page without script: none is in it', () => {
  const html = readFileSync(path, 'utf8');
  expect(html).not.toMatch(/<script|javascript:|\son\w+=/i);
  expect(html).not.toMatch(/(?:src|href)="(?!data:|#)/);
  expect(html).not.toMatch(/url\(|@import/);
});
