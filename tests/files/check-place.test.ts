import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { InputError } from '../../src/base/errors.js';
import { checkPlace } from '../../src/files/check-place.js';
import { machineFault } from '../../src/files/machine-fault.js';
import { scratchFolder } from '../support/demo-files.js';

const scratch = scratchFolder();
afterAll(() => scratch.remove());
scratch.write('file', 'as it was');
mkdirSync(join(scratch.path, 'folder'));
symlinkSync('/dev/full', join(scratch.path, 'full'));
const before = readdirSync(scratch.path);

const place = (path: string) => ({ path: join(scratch.path, path), field: '--out' });

test.each([
  { path: 'none/a.jsonl', says: /in a folder that does not exist\. Make the folder first/ },
  { path: 'file/a.jsonl', says: /where a file stands in place of a folder\. Check the path/ },
  { path: 'folder', says: /, a folder\. Name a file in it/ },
  { path: 'x'.repeat(300), says: /a name too long for the disk\. Choose a shorter name/ },
])('checkPlace: $path is refused in a sentence that says what to do', ({ path, says }) => {
  expect(() => checkPlace(place(path))).toThrow(InputError);
  expect(() => checkPlace(place(path))).toThrow(says);
  expect(() => checkPlace(place(path))).toThrow(/^--out must be a file that can be written; got "/);
});

test.runIf(existsSync('/dev/full'))('checkPlace: a device is no place for a file', () => {
  expect(() => checkPlace(place('full'))).toThrow(/not an ordinary file\. Name an ordinary file/);
});

test.runIf(existsSync('/proc/self'))(
  'checkPlace: a folder in which no file can be made is found, for an administrator too',
  () => {
    expect(() => checkPlace({ path: '/proc/self/a.jsonl', field: '--out' })).toThrow(
      /\/proc\/self\/a\.jsonl", /,
    );
  },
);

test('checkPlace: a name with a null character, which no file can have, is refused as such', () => {
  expect(() => checkPlace(place('a\0b'))).toThrow(
    /must be a file that can be written; got .*, a name that no file can have\. Check the name\./,
  );
});

test('checkPlace: leaves a place as it was', () => {
  checkPlace(place('file'));
  checkPlace(place('new.jsonl'));
  expect(readdirSync(scratch.path)).toEqual(before);
  expect(readFileSync(join(scratch.path, 'file'), 'utf8')).toBe('as it was');
});

const errno = (code: string) => Object.assign(new Error(code), { code });

test.each(['ENOSPC', 'EROFS', 'EACCES', 'EDQUOT', 'EIO', 'EMFILE', 'EXDEV'])(
  'machineFault: %s becomes something a person can mend, with the place',
  (code) => {
    const fault = machineFault(errno(code), { path: 'a.pdf', field: '--out' });
    expect(fault).toBeInstanceOf(InputError);
    expect((fault as InputError).message).toMatch(
      /^--out must be a file that can be written; got "a\.pdf", .+\. \w.+\.$/,
    );
  },
);

test.each([
  new TypeError('x is not a function'),
  Object.assign(new TypeError('bad'), { code: 'ERR_INVALID_ARG_TYPE' }),
  new InputError('flag', { field: '--top', rule: 'must be 1', got: '2' }),
  'text',
  null,
])('machineFault: what is no fault of the machine stays as it is (%s)', (error) => {
  expect(machineFault(error, { path: 'a.pdf', field: '--out' })).toBe(error);
});
