import { constants } from 'node:os';
import { describe, expect, test } from 'vitest';
import { fileReason, systemReason } from '../../src/files/system-fault.js';

/** All that a system may report, one of no system, and names that every object has. */
const CODES = [...Object.keys(constants.errno), 'ERR_INVALID_ARG_VALUE', 'EWHATEVER', 'constructor'];
const KNOWN = CODES.filter((code) => !systemReason(code).why.startsWith('the system reports'));

const REMEDY = /^[A-Z][^.]+\.$/;

describe('systemReason', () => {
  test('whatever the system reports is said in a clause and a sentence, known or not', () => {
    expect(KNOWN.length).toBeGreaterThan(15);
    expect(KNOWN).toEqual(expect.arrayContaining(['ENOSPC', 'EACCES', 'EMFILE', 'EIO', 'ESTALE']));
    for (const code of CODES) {
      const { why, remedy } = systemReason(code);
      expect(why, code).toMatch(/^[a-z][^.]+$/);
      expect(why.includes(code), code).toBe(!KNOWN.includes(code));
      expect(remedy, code).toMatch(REMEDY);
    }
  });

  test.each(['read', 'write'] as const)('the same of a file to %s', (doing) => {
    for (const code of CODES) {
      const { got, remedy } = fileReason(code, doing);
      expect(got, code).toMatch(/^[a-z][^.]+$/);
      expect(got.includes(code), code).toBe(!KNOWN.includes(code));
      expect(remedy, code).toMatch(REMEDY);
    }
  });

  test('one reason is the same whatever was being done', () => {
    expect(systemReason('EIO').why).toBe('the disk reports an error');
    expect(fileReason('EIO', 'read').got).toBe('cannot be read, as the disk reports an error');
    expect(fileReason('EIO', 'write').got).toBe('which cannot be written, as the disk reports an error');
    expect(fileReason('EACCES', 'write').got).toBe('which cannot be written, as permission is missing');
    expect(fileReason('EACCES', 'read').got).toBe('may not be read');
  });

  test('a folder that is missing above a file to be written is told from a file that is missing', () => {
    expect(fileReason('ENOENT', 'read').got).toBe('does not exist');
    expect(fileReason('ENOENT', 'write')).toEqual({
      got: 'in a folder that does not exist',
      remedy: 'Make the folder first, or name another.',
    });
  });
});
