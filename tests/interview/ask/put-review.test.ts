import { expect, test } from 'vitest';
import { formatLines } from '../../../src/interview/ask/put-review.js';
import { reviewLines } from '../../../src/interview/review-lines.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { walkTo } from '../../support/interview/walk.js';

test.each(['main', 'bowler', 'ball'] as const)(
  'on page %s of the review every label stands apart from what it says, and all of that starts in one column',
  (page) => {
    for (const answers of [{}, { coreShape: 'lobed' }]) {
      const lines = reviewLines(walkTo(null, answers).interview, page, UNITS.trade);
      const texts = formatLines(lines, { plain: (text) => text, width: 60 });
      const labels = Math.max(15, ...lines.map(({ label }) => label.length + 1));
      lines.forEach(({ label, value }, i) => {
        expect(texts[i].slice(0, labels)).toBe(label.padEnd(labels));
        expect(texts[i].slice(labels, labels + 3)).toBe(value.slice(0, 3));
        expect(texts[i].length).toBeLessThanOrEqual(58);
      });
    }
  },
);

test('where there is little room the number stays, and its guess is called one without its range', () => {
  const guess = { label: 'RG', value: '2.53 in', status: 'guess, ± 0.03 in' };
  const at = (width: number): string => formatLines([guess], { plain: (text) => text, width })[0]!;
  expect(at(60)).toBe('RG             2.53 in  (guess, ± 0.03 in)');
  expect(at(39)).toBe('RG             2.53 in  (guess)');
});
