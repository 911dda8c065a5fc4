import {
  appendFileSync,
  existsSync,
  linkSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { coachFileFlag, openCoachFile, unitKey } from '../../../src/cli/files/coach-file.js';
import type { CoachLine } from '../../../src/records/answers/coach-answer.js';
import { coachPairOf } from '../../support/coach-answer.js';
import { inputErrorOf } from '../../support/faults-of.js';

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'flarewise-'));
  file = join(folder, 'out.jsonl');
});
afterEach(() => rmSync(folder, { recursive: true }));

/** One run over the file: adds units, and gives back what it held before. */
function run(...units: readonly [key: string, lines: readonly CoachLine[]][]) {
  const { known, append, close } = openCoachFile(file);
  for (const [key, lines] of units) append(key, lines);
  close();
  return [...known];
}

test('openCoachFile: a file that is not there holds nothing, and is made by the first unit', () => {
  expect(run()).toEqual([]);
  expect(existsSync(file)).toBe(false);
  run(['a', [coachPairOf('one')]]);
  expect(readdirSync(folder)).toEqual(['out.jsonl']); // and neither a lock nor half a file beside it
});

test('openCoachFile: gives back the units that were appended', () => {
  run(['a', [coachPairOf('one'), coachPairOf('two')]], ['b', [coachPairOf('three')]]);
  expect(run()).toEqual([
    ['a', [coachPairOf('one'), coachPairOf('two')]],
    ['b', [coachPairOf('three')]],
  ]);
});

test.each([1, 5, 30, undefined])(
  'openCoachFile: a unit that a kill cut short (after %s characters) is left out of a new copy; the rest stays',
  (cut) => {
    run(['a', [coachPairOf('one')]]);
    const whole = readFileSync(file, 'utf8');
    appendFileSync(file, `${JSON.stringify(coachPairOf('two'))}\n`.slice(0, cut));
    linkSync(file, join(folder, 'as it was')); // sees a change in place, and nothing of a swap
    const before = readFileSync(file, 'utf8');
    expect(run().map(([key]) => key)).toEqual(['a']);
    expect(readFileSync(file, 'utf8')).toBe(whole);
    expect(readFileSync(join(folder, 'as it was'), 'utf8')).toBe(before);
  },
);

test.each(['flarewise/coach-pair/3', 'flarewise/coach-bag/2', 'flarewise/coach-pair/5'])(
  'openCoachFile: lines of another version (%s) are refused, not misread, and stay as they are',
  (schema) => {
    run(['a', [coachPairOf('one')]]);
    appendFileSync(file, `${JSON.stringify({ schema, says: 'text' })}\n`);
    const before = readFileSync(file, 'utf8');
    for (const open of [() => openCoachFile(file), () => coachFileFlag(file)])
      expect(inputErrorOf(open)).toMatchObject({
        code: 'older-coach-lines',
        message: expect.stringMatching(
          new RegExp(`must be a new file.*${schema}.*Another version wrote it\\. Name another file`),
        ),
      });
    expect(readFileSync(file, 'utf8')).toBe(before);
  },
);

test('openCoachFile: a first unit that was cut short leaves nothing', () => {
  writeFileSync(file, JSON.stringify(coachPairOf('one')).slice(0, 200));
  expect(run()).toEqual([]);
});

test.each([
  'my notes',
  'my list\n',
  '{',
  '{"schema":',
  '{"schema":"flarewise/bowler/1"}\n',
  '{"schema":"flarewise/coach-pair/1",\n',
  '\n',
  `${JSON.stringify(coachPairOf('one'))}\nmy notes behind it`,
  `my notes before it\n${JSON.stringify(coachPairOf('one'))}\n`,
])('coachFileFlag, openCoachFile: another file (%j) is named, refused and left as it is', (text) => {
  writeFileSync(file, text);
  utimesSync(file, 1000, 1000);
  for (const open of [coachFileFlag, openCoachFile]) {
    expect(() => open(file)).toThrow('must be a new file, or one that flarewise coach wrote');
    expect(() => open(file)).toThrow(file);
  }
  expect(readFileSync(file, 'utf8')).toBe(text);
  expect(statSync(file).mtimeMs).toBe(1e6);
  expect(readdirSync(folder)).toEqual(['out.jsonl']);
});

test('coachFileFlag: an empty file may be written to, and is not yet', () => {
  writeFileSync(file, '');
  expect(coachFileFlag(file)).toBe(file);
  expect(coachFileFlag(undefined)).toBeUndefined();
});

test('openCoachFile: while one run adds to a file another is refused, by a link to it too', () => {
  run(['a', [coachPairOf('one')]]);
  symlinkSync(file, join(folder, 'link.jsonl'));
  const first = openCoachFile(file);
  for (const path of [file, join(folder, 'link.jsonl')])
    expect(() => openCoachFile(path)).toThrow(/must be a file that no other run adds to; got .*process \d+/);
  first.append('b', [coachPairOf('two')]);
  first.close();
  expect(run().map(([key]) => key)).toEqual(['a', 'b']);
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
