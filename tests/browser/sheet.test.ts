import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { PAPERS, type Paper } from '../../src/base/paper.js';
import type { SheetAnswer } from '../../src/records/answers/sheet-answer.js';
import { loadTypeface } from '../../src/report/font/typeface.js';
import { textsOf } from '../../src/report/scene/scene.js';
import { sheetFile } from '../../src/report/sheet/sheet-file.js';
import { asOnePicture, sheetPages } from '../../src/report/sheet/sheet-pages.js';
import { pdfPages } from '../support/pages/pdf-text.js';
import { realSheets } from '../support/pages/real-sheets.js';
import { startChromium } from './chromium.js';
import { SCREENS, visit } from './visit.js';

// before anything is worked out: without a browser there is nothing to look at
const browser = await startChromium();
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const DESK = { width: 1280, scheme: 'light' } as const;
const typeface = loadTypeface();
const papers = Object.keys(PAPERS) as Paper[];
const sheets = await realSheets();
const ordinary = sheets['a right-hander'] as SheetAnswer;
/** The ordinary case, and the one with the longest words: what differs else does not change how a page is set. */
const pages = ['a right-hander', 'two hands and a long name'].map(
  (name) => [name, sheets[name] as SheetAnswer] as const,
);

const folder = mkdtempSync(join(tmpdir(), 'flarewise-'));
const save = (name: string, bytes: Buffer): string => {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
};
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

describe.each(pages)('the web page of %s', (_name, answer) => {
  let path: string;
  beforeAll(async () => {
    path = save('sheet.html', await sheetFile(answer, 'html', 'letter'));
  });

  test.each(SCREENS)(
    '$width px wide, $scheme: quiet, fetches nothing, fits, no finding of axe-core',
    (screen) =>
      visit(browser, path, screen, async ({ page, messages, requests }) => {
        expect(messages).toEqual([]);
        expect(requests).toEqual([]);
        expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(screen.width);
        await page.evaluate(AXE);
        const { violations } = (await page.evaluate('axe.run()')) as {
          violations: { id: string; impact: string; nodes: { html: string }[] }[];
        };
        expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
      }),
  );
});

test.each(papers)('printed on %s, the web page is the sheet’s pages, of that size', async (paper) => {
  const path = save('print.html', await sheetFile(ordinary, 'html', paper));
  const pdf = await visit(browser, path, DESK, ({ page }) => page.pdf({ preferCSSPageSize: true }));
  const { count, size } = pdfPages(pdf);
  expect(count).toBe(sheetPages(ordinary, paper, typeface).length);
  // the browser rounds to whole CSS pixels of 3/4 pt
  expect(Math.abs(size[0]! - PAPERS[paper].width)).toBeLessThan(1);
  expect(Math.abs(size[1]! - PAPERS[paper].height)).toBeLessThan(1);
});

test('the dark page is dark, the light one light, and both print on white', async () => {
  const path = save('scheme.html', await sheetFile(ordinary, 'html', 'letter'));
  const ground = 'getComputedStyle(document.body).backgroundColor';
  const dark = { width: 1280, scheme: 'dark' } as const;
  expect(await visit(browser, path, DESK, ({ page }) => page.evaluate(ground))).toBe('rgb(255, 255, 255)');
  await visit(browser, path, dark, async ({ page }) => {
    expect(await page.evaluate(ground)).toBe('rgb(21, 23, 26)');
    await page.emulateMedia({ media: 'print' });
    expect(await page.evaluate(ground)).toBe('rgb(255, 255, 255)');
  });
});

describe.each(papers)('the SVG on %s', (paper) => {
  const scene = asOnePicture(sheetPages(ordinary, paper, typeface));

  test('opens quietly, is well-formed, and has the size of the paper', async () => {
    const path = save('sheet.svg', await sheetFile(ordinary, 'svg', paper));
    await visit(browser, path, DESK, async ({ page, messages, requests }) => {
      expect(messages).toEqual([]);
      expect(requests).toEqual([]);
      const [root, faults, width] = (await page.evaluate(
        '[document.documentElement.localName, document.querySelectorAll("parsererror").length, document.documentElement.width.baseVal.value]',
      )) as [string, number, number];
      expect([root, faults]).toEqual(['svg', 0]);
      expect(width).toBeCloseTo((scene.width * 96) / 72, 1);
    });
  });

  test('is set in the font it carries, as wide as computed', async () => {
    const path = save('sheet.svg', await sheetFile(ordinary, 'svg', paper));
    const measured = (await visit(browser, path, DESK, ({ page }) =>
      page.evaluate(
        '[...document.fonts].map((f) => f.status).concat([...document.querySelectorAll("text")].map((t) => t.getComputedTextLength()))',
      ),
    )) as [string, string, ...number[]];
    expect(measured.slice(0, 2)).toEqual(['loaded', 'loaded']);
    textsOf(scene.nodes).forEach(({ text, size, weight }, i) => {
      const want = typeface.width(text, size, weight);
      // browsers place letters on a fine grid of their own: up to 1/64 pt a letter
      expect(Math.abs((measured[i + 2] as number) - want), text).toBeLessThan(0.2 + text.length / 64);
    });
  });

  test('the PNG shows the same: brightness of each of 60 x 160 fields, beside the browser’s own drawing', async () => {
    const svg = await sheetFile(ordinary, 'svg', paper);
    const png = await sheetFile(ordinary, 'png', paper);
    const blank = save('blank.html', Buffer.from('<!doctype html><title>fields</title>'));
    const [ours, theirs] = (await visit(browser, blank, DESK, async ({ page }) => [
      await page.evaluate(FIELDS, `data:image/png;base64,${png.toString('base64')}`),
      await page.evaluate(FIELDS, `data:image/svg+xml;base64,${svg.toString('base64')}`),
    ])) as [number[], number[]];
    expect(ours.length).toBe(60 * 160);
    const inked = ours.filter((brightness) => brightness < 0.98).length;
    expect(inked).toBeGreaterThan(1000); // not blank: of 9600 fields
    const off = ours.map((brightness, i) => Math.abs(brightness - (theirs[i] as number)));
    // two engines smooth edges differently: a field differs by a few per cent, the page by a few thousandths
    expect(off.reduce((sum, each) => sum + each, 0) / off.length).toBeLessThan(0.005);
    expect(Math.max(...off)).toBeLessThan(0.2);
  });
});

/** Mean brightness, 0 to 1, of each field of a picture of two pages cut into 60 x 160, drawn on white at 960 x 2560. */
const FIELDS = async (url: string): Promise<number[]> => {
  // runs in the browser, whose names these types do not know
  const { Image, document } = globalThis as unknown as {
    Image: new () => { src: string; decode(): Promise<void> };
    document: { createElement(name: 'canvas'): Canvas };
  };
  interface Canvas {
    width: number;
    height: number;
    getContext(kind: '2d'): {
      fillStyle: string;
      fillRect(...box: number[]): void;
      drawImage(image: unknown, ...box: number[]): void;
      getImageData(...box: number[]): { data: Uint8ClampedArray };
    };
  }
  const image = new Image();
  image.src = url;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = 960;
  canvas.height = 2560;
  const context = canvas.getContext('2d');
  context.fillStyle = 'white';
  context.fillRect(0, 0, 960, 2560);
  context.drawImage(image, 0, 0, 960, 2560);
  const fields: number[] = [];
  for (let row = 0; row < 160; row++)
    for (let column = 0; column < 60; column++) {
      const { data } = context.getImageData(column * 16, row * 16, 16, 16);
      let sum = 0;
      for (let i = 0; i < data.length; i += 4) sum += (data[i]! + data[i + 1]! + data[i + 2]!) / 765;
      fields.push(sum / (data.length / 4));
    }
  return fields;
};
