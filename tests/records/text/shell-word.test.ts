import { spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import '../../support/arbitraries.js'; // its seed
import { shellWord } from '../../../src/records/text/shell-word.js';

test.each([
  ['kim', 'kim'],
  ['data/balls/red.json', 'data/balls/red.json'],
  ['70 x 4 1/2 x 30', '"70 x 4 1/2 x 30"'],
  ['', '""'],
  ["Kim's ball", `"Kim's ball"`],
  ['$(rm x)', "'$(rm x)'"],
  [`"it's"`, `'"it'\\''s"'`],
])('shellWord: %j is written %s', (word, want) => {
  expect(shellWord(word)).toBe(want);
});

test('shellWord: a shell takes any words apart as they were', () => {
  const words = fc.array(fc.string({ unit: fc.constantFrom(...'ab1 \'"$`\\!*?;&|<>(){}[]~#=é½', '\t') }), {
    minLength: 20,
    maxLength: 40,
  });
  fc.assert(
    fc.property(words, (list) => {
      const { stdout } = spawnSync('sh', ['-c', `printf '%s\\n' ${list.map(shellWord).join(' ')}`], {
        encoding: 'utf8',
      });
      expect(stdout).toBe(list.map((word) => `${word}\n`).join(''));
    }),
    { numRuns: 15 },
  );
});
