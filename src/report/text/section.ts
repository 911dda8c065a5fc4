import { capital } from '../../records/text/capital.js';
import { glyphs, type Page } from './page.js';
import { plainText } from './plain-text.js';
import { columnsOf, wrap } from './wrap.js';

/** A heading and its lines; nothing at all when there are no lines. */
export const section = (heading: string, lines: readonly string[], page: Page): string[] =>
  lines.length === 0 ? [] : [...wrap(heading, page.width).map(page.paint.heading), ...lines];

/** A paragraph, indented below its heading. */
export const paragraph = (text: string, page: Page, paint = (line: string) => line): string[] =>
  wrap(plainText(text, page.ascii), page.width, '  ').map(paint);

/** Texts one below the other, each behind a bullet. */
export const bullets = (texts: readonly string[], page: Page): string[] =>
  texts.flatMap((text) => wrap(plainText(text, page.ascii), page.width, '    ', `  ${glyphs(page).bullet} `));

/** Two blocks next to each other when the page is wide enough, else one below the other. */
export function beside(left: readonly string[], right: readonly string[], page: Page): string[] {
  const leftColumns = Math.max(0, ...left.map(columnsOf)) + 4;
  if (leftColumns + Math.max(0, ...right.map(columnsOf)) > page.width) return [...left, '', ...right];
  return Array.from({ length: Math.max(left.length, right.length) }, (_, i) => {
    const [here = '', there = ''] = [left[i], right[i]];
    return there === '' ? here : here + ' '.repeat(leftColumns - columnsOf(here)) + there;
  });
}

/** Sections with an empty line between them, ended by a line break. */
export const joinSections = (sections: readonly (readonly string[])[]): string =>
  `${sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;

/** A clause set as a sentence: capital first, full stop last. */
export const sentence = (text: string): string => `${capital(text)}.`;
