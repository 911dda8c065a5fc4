import { expect, test } from 'vitest';
import { withPlainText } from '../../../src/report/text/plain-text.js';

test('withPlainText: a name cannot move the cursor, recolour the screen or turn the text around', () => {
  const hostile = { name: 'A\u001b[2J\u001b]0;x\u0007B\nC\u202eD' };
  const { name } = withPlainText(hostile, false);
  expect(name).toBe('A [2J ]0;x B CD');
});

test('withPlainText: ASCII spells signs out and keeps numbers and shape', () => {
  const given = {
    list: ['Zoë’s ball', 'Ægir Łoś, Strauß', '70° × 4½, 2 °/ft'],
    score: 81.5,
    none: null,
    legal: true,
  };
  expect(withPlainText(given, true)).toEqual({
    list: ["Zoe's ball", 'Aegir Los, Strauss', '70 deg x 4 1/2, 2 deg/ft'],
    score: 81.5,
    none: null,
    legal: true,
  });
});
