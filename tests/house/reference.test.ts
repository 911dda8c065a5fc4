import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { COMMANDS } from '../../src/cli/command-table.js';
import { GLOBAL_FLAGS } from '../../src/cli/flags/flag-table.js';
import { reference, withReference } from './reference.js';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

test('the README has the reference that the tables of commands and flags make (npm run reference)', () => {
  expect(withReference(readme)).toBe(readme);
});

test('every command and every flag stands in it', () => {
  const text = reference();
  for (const { name, flags } of COMMANDS) {
    const [part = ''] = text.split(`### \`flarewise ${name}`)[1]?.split('\n### ') ?? [];
    for (const [flag] of flags) expect(part, `${name} ${flag}`).toContain(`\`${flag}\``);
  }
  for (const [flag] of GLOBAL_FLAGS) expect(text).toContain(`\`${flag}\``);
});

test('a README without its place for it is refused', () => {
  expect(() => withReference('# flarewise')).toThrow('has no <!-- reference');
});
