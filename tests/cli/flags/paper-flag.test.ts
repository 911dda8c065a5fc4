import { expect, test } from 'vitest';
import { paperFlag } from '../../../src/cli/flags/paper-flag.js';

test.each([
  { env: {}, paper: 'letter' },
  { env: { LANG: 'C.UTF-8' }, paper: 'letter' },
  { env: { LANG: 'en_US.UTF-8' }, paper: 'letter' },
  { env: { LANG: 'fr_CA' }, paper: 'letter' },
  { env: { LANG: 'de_DE.UTF-8' }, paper: 'a4' },
  { env: { LANG: 'en_US.UTF-8', LC_PAPER: 'en_GB.UTF-8' }, paper: 'a4' },
  { env: { LC_ALL: 'es_MX.UTF-8', LC_PAPER: 'en_GB.UTF-8' }, paper: 'letter' },
])('paper where none is named, by the locale: $env is $paper', ({ env, paper }) => {
  expect(paperFlag(undefined, { env })).toBe(paper);
});

test('what is named counts, whatever the locale; another name is refused with both', () => {
  expect(paperFlag('a4', { env: { LANG: 'en_US' } })).toBe('a4');
  expect(() => paperFlag('legal', { env: {} })).toThrow(/--paper/);
});
