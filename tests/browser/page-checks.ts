import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Screen, Visit } from './visit.js';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** A usual telephone, upright: as wide as it is, CSS px. */
export const PHONE: Screen = { width: 390, scheme: 'light' };
const PHONE_HEIGHT = 844;

/** The answer, the chart that leads it and the next command end on the first screen of a telephone; the drawing may follow. */
export async function expectFirstScreen({ page }: Visit): Promise<void> {
  const ends = (await page.evaluate(
    `['answer', 'lead', 'next'].map((name) => document.querySelector('header .' + name)?.getBoundingClientRect().bottom ?? 0)`,
  )) as number[];
  expect(ends[0]).toBeGreaterThan(0);
  expect(Math.max(...ends)).toBeLessThanOrEqual(PHONE_HEIGHT);
}

/** Opens everything that is folded. */
export const openAll = (page: Page): Promise<unknown> =>
  page.evaluate('document.querySelectorAll("details").forEach((each) => { each.open = true; })');

/** A page is as wide as its screen, folded and open, says nothing on the console and fetches nothing. */
export async function expectFits({ page, messages, requests }: Visit, { width }: Screen): Promise<void> {
  const widthNow = () => page.evaluate('document.documentElement.scrollWidth');
  expect(await widthNow()).toBe(width);
  await openAll(page);
  expect(await widthNow()).toBe(width);
  // flags and words of commands stand on one line each
  expect(
    await page.evaluate(
      `[...document.querySelectorAll('.word')].filter((each) => each.getClientRects().length > 1).length`,
    ),
  ).toBe(0);
  expect(messages).toEqual([]);
  expect(requests).toEqual([]);
}

/** What axe-core finds. */
export async function axeFindings({ page }: Visit): Promise<string[]> {
  await page.evaluate(AXE);
  const { violations } = (await page.evaluate(`axe.run({ resultTypes: ['violations'] })`)) as {
    violations: { id: string; nodes: { html: string }[] }[];
  };
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}

/** Unfolded, all text in pictures is large enough, inside its picture, and covers no other; gives back how many there are. */
export async function expectReadable({ page }: Visit): Promise<number> {
  await openAll(page);
  const texts = (await page.evaluate(TEXTS)) as Text[];
  for (const { text, size, box, frame } of texts) {
    expect(size, text).toBeGreaterThan(10);
    expect(box.left, `left of ${text}`).toBeGreaterThan(frame.left - 2);
    expect(box.right, `right of ${text}`).toBeLessThan(frame.right + 8); // a page's margin is 16 px
  }
  const covered = texts.flatMap((a, i) =>
    texts
      .slice(0, i)
      .flatMap((b) => (a.picture === b.picture && cover(a.box, b.box) ? [`${a.text} and ${b.text}`] : [])),
  );
  expect(covered).toEqual([]);
  return texts.length;
}

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
