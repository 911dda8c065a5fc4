import {
  chmodSync,
  existsSync,
  linkSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { sweep } from '../../src/files/leftovers.js';
import { newOwner } from '../../src/files/owner.js';
import { putFile } from '../../src/files/put-file.js';
import { deadOwner } from '../support/dead-owner.js';
import { scratchFolder } from '../support/demo-files.js';

const scratch = scratchFolder();
afterAll(() => scratch.remove());

let made = 0;
let folder: string;
beforeEach(() => {
  folder = join(scratch.path, String(++made));
  mkdirSync(folder);
});
const at = (name: string): string => join(folder, name);

test('putFile: what stood there before is not written over but replaced', () => {
  writeFileSync(at('a'), 'old');
  linkSync(at('a'), at('as it was')); // shares the old file's bytes
  putFile(at('a'), 'new');
  expect(readFileSync(at('a'), 'utf8')).toBe('new');
  expect(readFileSync(at('as it was'), 'utf8')).toBe('old');
  expect(readdirSync(folder).sort()).toEqual(['a', 'as it was']);
});

test.runIf(process.platform !== 'win32')('putFile: a file keeps its rights, and a link stays a link', () => {
  writeFileSync(at('a'), 'old');
  chmodSync(at('a'), 0o640);
  symlinkSync(at('a'), at('link'));
  putFile(at('link'), 'new', { mode: 0o600 });
  expect(lstatSync(at('link')).isSymbolicLink()).toBe(true);
  expect(readFileSync(at('a'), 'utf8')).toBe('new');
  expect(statSync(at('a')).mode & 0o777).toBe(0o640);
});

test('putFile: a name as long as the disk takes is written', () => {
  const name = 'x'.repeat(255);
  putFile(at(name), 'text');
  expect(readdirSync(folder)).toEqual([name]);
});

test.each([
  { where: 'a folder that is missing', path: 'none/a', code: 'ENOENT' },
  { where: 'a file as a folder', path: 'file/a', code: 'ENOTDIR' },
  { where: 'a folder', path: '.', code: 'EISDIR' },
  { where: 'a name that is too long', path: 'x'.repeat(300), code: 'ENAMETOOLONG' },
])('putFile: $where is refused and nothing is left behind', ({ path, code }) => {
  writeFileSync(at('file'), 'old');
  expect(() => putFile(at(path), 'new')).toThrow(expect.objectContaining({ code }));
  expect(readdirSync(folder)).toEqual(['file']);
  expect(readFileSync(at('file'), 'utf8')).toBe('old');
});

test.runIf(existsSync('/dev/full'))('putFile: a device is never replaced by a file', () => {
  symlinkSync('/dev/full', at('full'));
  expect(() => putFile(at('full'), 'new')).toThrow('not an ordinary file');
  expect(statSync('/dev/full').isCharacterDevice()).toBe(true);
});

test('sweep: takes what processes that have ended left, and nothing else', () => {
  const gone = deadOwner();
  const elsewhere = gone.replace(/[0-9a-f]{8}-[0-9a-f]{8}$/, '00000000-00000000');
  const days = (n: number): Date => new Date(Date.now() - n * 24 * 3600 * 1000);
  const files = {
    [`.flarewise-${gone}.tmp`]: false,
    [`.flarewise-${newOwner()}.tmp`]: true, // this very process
    [`.flarewise-${elsewhere}.tmp`]: true, // of a process that cannot be asked
    '.flarewise-notes.tmp': true,
    '.flarewise-12-3-x-y.tmp': true,
    [`flarewise-${gone}.tmp`]: true,
    [`.flarewise-${gone}.tmp.bak`]: true,
    'a.json.1234567': true,
  };
  for (const name of Object.keys(files)) writeFileSync(at(name), '');
  sweep(folder);
  for (const [name, stays] of Object.entries(files)) expect(existsSync(at(name)), name).toBe(stays);
  utimesSync(at(`.flarewise-${elsewhere}.tmp`), days(2), days(2));
  utimesSync(at('.flarewise-notes.tmp'), days(2), days(2));
  sweep(folder);
  expect(existsSync(at(`.flarewise-${elsewhere}.tmp`))).toBe(false);
  expect(existsSync(at('.flarewise-notes.tmp'))).toBe(true);
  sweep(at('none')); // a folder that is not there is no failure
});
