import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import {
  allKept,
  changeKept,
  checkedId,
  idFrom,
  keepNew,
  keptIds,
  pathOf,
  readKept,
  removeKept,
  renameKept,
  replaceKept,
} from '../../src/records/saved-records.js';
import { demoShelf } from '../../src/records/shelf.js';

const lane = demoShelf().lanes[0].record;
let home: string;
beforeEach(() => {
  home = join(mkdtempSync(join(tmpdir(), 'flarewise-')), 'home');
});
afterEach(() => rmSync(join(home, '..'), { recursive: true, force: true }));

const called = (note: string) => ({ ...lane, note });

test('keptIds: none where nothing was ever kept, and no folder is made by looking', () => {
  expect(keptIds(home, 'lane')).toEqual([]);
  expect(() => readFileSync(home)).toThrow('ENOENT');
});

test('keepNew: what is kept is read back the same, from a file a person can read', async () => {
  expect(await keepNew(home, 'lane', 'Tuesday league', lane)).toBe('tuesday-league');
  expect(readKept(home, 'lane', 'tuesday-league')).toEqual(lane);
  expect(readFileSync(join(home, 'lanes', 'tuesday-league.json'), 'utf8')).toMatch(
    /^{\n {2}"schema": "flarewise\/lane\/1",\n/,
  );
});

test('keepNew: an id that is taken is never written over', async () => {
  await keepNew(home, 'lane', 'a', called('first'));
  expect(await keepNew(home, 'lane', 'a', called('second'))).toBe('a-2');
  expect(readKept(home, 'lane', 'a').note).toBe('first');
});

test('keepNew: of many at once none is lost', async () => {
  const ids = await Promise.all(
    Array.from({ length: 12 }, (_, i) => keepNew(home, 'lane', 'same', called(String(i)))),
  );
  expect(new Set(ids).size).toBe(12);
  const notes = ids.map((id) => readKept(home, 'lane', id).note);
  expect(notes.sort()).toEqual(Array.from({ length: 12 }, (_, i) => String(i)).sort());
});

test('changeKept: of many changes at once each is made on top of the others', async () => {
  await keepNew(home, 'lane', 'a', called(''));
  await Promise.all(
    [...'abcdefgh'].map((letter) =>
      changeKept(home, 'lane', 'a', (record) => called((record.note ?? '') + letter)),
    ),
  );
  expect([...(readKept(home, 'lane', 'a').note ?? '')].sort().join('')).toBe('abcdefgh');
});

test('replaceKept, removeKept: what went is still in the folder removed', async () => {
  await keepNew(home, 'lane', 'a', called('first'));
  await replaceKept(home, 'lane', 'a', called('second'));
  await removeKept(home, { kind: 'lane', id: 'a' });
  expect(keptIds(home, 'lane')).toEqual([]);
  const removed = ['a', 'a-2'].map((id) =>
    JSON.parse(readFileSync(join(home, 'removed', 'lanes', `${id}.json`), 'utf8')),
  );
  expect(removed.map(({ note }) => note)).toEqual(['first', 'second']);
});

test('renameKept: refuses an id that is taken, and one that is not there', async () => {
  await keepNew(home, 'lane', 'a', lane);
  await keepNew(home, 'lane', 'b', lane);
  await expect(renameKept(home, { kind: 'lane', id: 'a' }, 'b')).rejects.toMatchObject({ code: 'id-taken' });
  await expect(renameKept(home, { kind: 'lane', id: 'x' }, 'y')).rejects.toMatchObject({
    code: 'no-such-record',
  });
  await renameKept(home, { kind: 'lane', id: 'a' }, 'c');
  expect(keptIds(home, 'lane')).toEqual(['b', 'c']);
});

test('allKept: a damaged file stands in the list with its error; the others are read', async () => {
  await keepNew(home, 'lane', 'good', lane);
  mkdirSync(join(home, 'balls'));
  writeFileSync(pathOf(home, { kind: 'ball', id: 'bad' }), '{"schema": "flarewise/ball/1"');
  writeFileSync(join(home, 'lanes', '.good.json.123'), 'left by a program that was killed');
  const [bad, good] = allKept(home);
  expect(bad).toMatchObject({ kind: 'ball', id: 'bad', error: { code: 'broken-json' } });
  expect(good).toMatchObject({ kind: 'lane', id: 'good', record: lane });
});

test.each([
  ["Kim's ball, 15 lb", 'kim-s-ball-15-lb'],
  ['Müller Örtel', 'muller-ortel'],
  ['../../etc/passwd', 'etc-passwd'],
  ['木村', 'record'],
])('idFrom: %j becomes %j', (name, id) => {
  expect(idFrom(name)).toBe(id);
  expect(checkedId(id)).toBe(id);
});

test.each(['../x', 'A', '', 'a b', `${'x'.repeat(62)}`])('checkedId: %j is refused', (id) => {
  expect(() => checkedId(id)).toThrow('small letters, digits and hyphens');
});
