import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { scriptsTold } from './page-commands.js';

test('every script that the pages name is one, and DEVELOPERS.md names all that there are', () => {
  const { scripts } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  const own = ['types', 'lint', 'prepack']; // parts of others
  expect(scriptsTold().filter((name) => !(name in scripts))).toEqual([]);
  expect(Object.keys(scripts).filter((name) => !own.includes(name) && !scriptsTold().includes(name))).toEqual(
    [],
  );
});
