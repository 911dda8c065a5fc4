import { expect, test } from 'vitest';
import { isColoured, pageFor } from '../../../src/cli/print/page-for.js';
import { fakeTerminal } from '../../support/fake-terminal.js';

const options = { color: true, input: true };

test.each([
  { name: 'a terminal', given: { tty: true }, color: true, want: true },
  { name: 'a pipe', given: { tty: false }, color: true, want: false },
  { name: 'NO_COLOR set', given: { tty: true, env: { NO_COLOR: '1' } }, color: true, want: false },
  { name: 'NO_COLOR empty', given: { tty: true, env: { NO_COLOR: '' } }, color: true, want: true },
  { name: 'a dumb terminal', given: { tty: true, env: { TERM: 'dumb' } }, color: true, want: false },
  { name: '--no-color', given: { tty: true }, color: false, want: false },
])('isColoured: $name gives $want', ({ given, color, want }) => {
  expect(isColoured({ color }, fakeTerminal(given))).toBe(want);
});

test.each([
  { columns: 20, want: 40 },
  { columns: 45, want: 45 },
  { columns: 100, want: 100 },
  { columns: 999, want: 200 },
])('pageFor: $columns columns are set as $want', ({ columns, want }) => {
  expect(pageFor(options, fakeTerminal({ tty: true, columns })).width).toBe(want);
});

test('pageFor: a pipe is 80 columns wide unless COLUMNS says otherwise', () => {
  expect(pageFor(options, fakeTerminal()).width).toBe(80);
  expect(pageFor(options, fakeTerminal({ env: { COLUMNS: '120' } })).width).toBe(120);
  expect(pageFor(options, fakeTerminal({ env: { COLUMNS: 'wide' } })).width).toBe(80);
});

test.each([
  { env: {}, want: false },
  { env: { LANG: 'en_US.UTF-8' }, want: false },
  { env: { LANG: 'C' }, want: true },
  { env: { LC_ALL: 'de_DE.ISO-8859-1', LANG: 'de_DE.UTF-8' }, want: true },
])('pageFor: ASCII is $want with $env', ({ env, want }) => {
  expect(pageFor(options, fakeTerminal({ env: env as Record<string, string> })).ascii).toBe(want);
  expect(
    pageFor({ ...options, ascii: true }, fakeTerminal({ env: env as Record<string, string> })).ascii,
  ).toBe(true);
});
