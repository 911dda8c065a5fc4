import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { figuresIn, PAGE_FIGURES, withFigures } from './page-figures.js';

const pages = ['README.md', 'DEVELOPERS.md'].map((name) => ({
  name,
  page: readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8'),
}));

test.each(pages)('the figures of $name are those of the program (npm run reference)', ({ page }) => {
  expect(withFigures(page)).toBe(page);
});

test('every figure stands on a page, and one that the program does not have is refused', () => {
  const named = pages.flatMap(({ page }) => figuresIn(page));
  expect(new Set(named)).toEqual(new Set(Object.keys(PAGE_FIGURES)));
  expect(withFigures('in <!--=cores-->3<!--=--> cores')).toBe('in <!--=cores-->64<!--=--> cores');
  expect(() => withFigures('<!--=no-such-->3<!--=-->')).toThrow('no figure is called no-such');
});
