import { expect, test } from 'vitest';
import { codeHtml, proseHtml } from '../../../../src/report/web/parts/table-html.js';

test('a flag is not broken at its hyphens, nor a word of a command; what is copied is what is typed', () => {
  expect(proseHtml('see --show line <now>')).toBe('see <span class="word">--show</span> line &lt;now&gt;');
  expect(proseHtml('70--80, well-known')).toBe('70--80, well-known');
  const command =
    'flarewise sheet --layout "50 x 4 1/2 x 35" --out a/very/long/path/to/a/file/called/sheet.pdf';
  const html = codeHtml(command);
  expect(html).toContain('<span class="word">--layout</span>');
  expect(html).toContain(' a/very/long/path/to/a/file/called/sheet.pdf<'); // may be broken: wider than a telephone
  const copied = html.replace(/<[^>]+>/g, '').replaceAll('&quot;', '"');
  expect(copied).toBe(command);
});
