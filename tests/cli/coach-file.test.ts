import { appendFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { appendUnit, readCoachFile, unitKey } from '../../src/cli/coach-file.js';
import { coachPairOf } from '../report/coach-fixture.js';

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'flarewise-'));
  file = join(folder, 'out.jsonl');
});
afterEach(() => rmSync(folder, { recursive: true }));

test('readCoachFile: a file that is not there holds nothing', () => {
  expect(readCoachFile(file).size).toBe(0);
});

test('readCoachFile: gives back the units that were appended', () => {
  appendUnit(file, 'a', [coachPairOf('one'), coachPairOf('two')]);
  appendUnit(file, 'b', [coachPairOf('three')]);
  expect([...readCoachFile(file)]).toEqual([
    ['a', [coachPairOf('one'), coachPairOf('two')]],
    ['b', [coachPairOf('three')]],
  ]);
});

test.each([
  { how: 'within a line', cut: 30 },
  { how: 'between lines', cut: 0 },
])('readCoachFile: a unit that a kill cut short $how is taken off, the rest stays', ({ cut }) => {
  appendUnit(file, 'a', [coachPairOf('one')]);
  const whole = readFileSync(file, 'utf8');
  appendFileSync(file, `${JSON.stringify(coachPairOf('two'))}\n`.slice(0, cut || undefined));
  expect([...readCoachFile(file).keys()]).toEqual(['a']);
  expect(readFileSync(file, 'utf8')).toBe(whole);
});

test('readCoachFile: another file is refused and left alone', () => {
  writeFileSync(file, 'my list\n');
  expect(() => readCoachFile(file)).toThrow('must be a new file, or one that flarewise coach wrote');
  expect(readFileSync(file, 'utf8')).toBe('my list\n');
});

test('unitKey: changes with anything the lines depend on', () => {
  const keys = [
    unitKey({ bowler: 1 }, 1),
    unitKey({ bowler: 2 }, 1),
    unitKey({ bowler: 1 }, 2),
    unitKey({ bowler: 1 }, 1),
  ];
  expect(new Set(keys).size).toBe(3);
});

test('unitKey: changes with a byte of a mesh that a ball names', () => {
  const keyOf = (bytes: Uint8Array) => unitKey({ meshes: new Map([['core.stl', { bytes }]]) }, 1);
  expect(keyOf(Uint8Array.of(1, 2))).toBe(keyOf(Uint8Array.of(1, 2)));
  expect(keyOf(Buffer.from([1, 2]))).not.toBe(keyOf(Buffer.from([1, 3])));
});
