import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { loadBowlers } from '../../../src/cli/files/load-list.js';
import { demo, scratchFolder } from '../../support/demo-files.js';
import { fakeTerminal } from '../../support/fake-terminal.js';

const folder = scratchFolder();
afterAll(() => folder.remove());

/** Writes a folder of bowlers by file name; returns its path. */
function folderOf(name: string, bowlers: Readonly<Record<string, string>>): string {
  mkdirSync(join(folder.path, name));
  for (const [file, called] of Object.entries(bowlers))
    folder.write(join(name, file), { ...demo.bowler(), name: called });
  return join(folder.path, name);
}

test('loadBowlers: a folder’s records, whatever letters end their names; hidden files and others are passed over', () => {
  const path = folderOf('klubb ä', { 'anna ö.json': 'Anna', 'BEN.JSON': 'Ben', '.hidden.json': 'Anna' });
  folder.write('klubb ä/._anna ö.json', new Uint8Array([0, 5, 22, 7]));
  folder.write('klubb ä/notes.txt', 'none');
  expect(loadBowlers(path, fakeTerminal()).map(({ record }) => record.name)).toEqual(['Ben', 'Anna']);
});

test('loadBowlers: all names that are there more than once are told at once', () => {
  const path = folderOf('twice', {
    'a.json': 'Kim',
    'b.json': 'Lee',
    'c.json': 'Kim',
    'd.json': 'Lee',
    'e.json': 'Kim',
  });
  expect(() => loadBowlers(path, fakeTerminal())).toThrow('more than one called "Kim", "Lee"');
});
