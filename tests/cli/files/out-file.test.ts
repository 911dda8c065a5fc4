import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { InputError } from '../../../src/base/errors.js';
import { checkedOut, kindOfFile, writeOut } from '../../../src/cli/files/out-file.js';
import { reportFlag } from '../../../src/cli/files/report-flag.js';

const folder = mkdtempSync(join(tmpdir(), 'flarewise-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const faultOf = (act: () => unknown): InputError => {
  try {
    act();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return error as InputError;
  }
  throw new Error('nothing was thrown');
};

test.each([
  ['sheet.pdf', 'pdf'],
  ['My Sheet.PDF', 'pdf'],
  ['a.pdf.svg', 'svg'],
])('kindOfFile: %s is %s', (path, kind) => {
  expect(kindOfFile(path, ['pdf', 'svg'])).toBe(kind);
});

test.each(['sheet', 'sheet.docx', 'pdf', ''])(
  'kindOfFile: %j is refused, with the endings there are',
  (path) => {
    const { message } = faultOf(() => kindOfFile(path, ['pdf', 'svg']));
    expect(message).toContain('--out must end in .pdf or .svg');
  },
);

test('writeOut: replaces a file of that name and leaves nothing else behind', () => {
  const path = join(folder, 'sheet.svg');
  writeOut(path, Buffer.from('first'));
  writeOut(path, Buffer.from('second'));
  expect(readFileSync(path, 'utf8')).toBe('second');
  expect(readdirSync(folder)).toEqual(['sheet.svg']);
});

test('writeOut: a folder that is missing, or is meant for a file, is the person’s to mend', () => {
  expect(faultOf(() => writeOut(join(folder, 'none', 'x.pdf'), Buffer.from(''))).message).toContain(
    'in a folder that does not exist',
  );
  expect(faultOf(() => writeOut(folder, Buffer.from(''))).message).toContain('a folder');
});

test('checkedOut: tells of a missing folder before anything is written, by the flag that named it', () => {
  const path = join(folder, 'none', 'x.html');
  const { message } = faultOf(() => checkedOut(path, '--report'));
  expect(message).toContain('--report must be a file that can be written');
  expect(message).toContain('in a folder that does not exist');
  expect(checkedOut(join(folder, 'x.html'))).toBe(join(folder, 'x.html'));
  expect(readdirSync(folder)).not.toContain('x.html');
});

test('reportFlag: a web page, or none', () => {
  expect(reportFlag(undefined)).toBeNull();
  expect(reportFlag(join(folder, 'a.html'))).toBe(join(folder, 'a.html'));
  expect(faultOf(() => reportFlag('a.pdf')).message).toContain('--report must end in .html');
});
