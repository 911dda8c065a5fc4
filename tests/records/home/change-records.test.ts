import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { changeKept, keepAll, removeKept, renameKept } from '../../../src/records/home/change-records.js';
import { allKept, keptIds, pathOf, readKept } from '../../../src/records/home/saved-records.js';
import { demoShelf } from '../../../src/records/read/shelf.js';
import { keepNew } from '../../support/keep-new.js';

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

test('keepAll: what is kept is read back the same, from a file a person can read', async () => {
  expect(await keepNew(home, 'lane', 'tuesday-league', lane)).toBe('tuesday-league');
  expect(readKept(home, 'lane', 'tuesday-league')).toEqual(lane);
  expect(readFileSync(join(home, 'lanes', 'tuesday-league.json'), 'utf8')).toMatch(
    /^{\n {2}"schema": "flarewise\/lane\/1",\n/,
  );
});

test('keepAll: an id that is taken is never written over, but gets a number', async () => {
  await keepNew(home, 'lane', 'a', called('first'));
  expect(await keepNew(home, 'lane', 'a', called('second'))).toBe('a-2');
  expect(readKept(home, 'lane', 'a').note).toBe('first');
});

test('keepAll: of many at once none is lost', async () => {
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

const replace = (id: string, record: typeof lane) =>
  keepAll(home, [{ kind: 'lane', id, record, ifTaken: 'replace' }]);

test('keepAll, removeKept: what went is still in the folder removed', async () => {
  await keepNew(home, 'lane', 'a', called('first'));
  await replace('a', called('second'));
  await removeKept(home, [{ kind: 'lane', id: 'a' }]);
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

test('keepAll: of records where one id is taken none is kept, and all that are taken are named', async () => {
  await keepNew(home, 'lane', 'a', called('first'));
  await keepNew(home, 'lane', 'b', lane);
  const wanted = ['x', 'a', 'y', 'b'].map(
    (id) => ({ kind: 'lane', id, record: called('new'), ifTaken: 'refuse' }) as const,
  );
  await expect(keepAll(home, wanted)).rejects.toMatchObject({
    code: 'id-taken',
    faults: [{ got: '"a"' }, { got: '"b"' }],
  });
  expect(keptIds(home, 'lane')).toEqual(['a', 'b']);
  expect(readKept(home, 'lane', 'a').note).toBe('first');
});

test('keepAll: two records for one id are refused, whether or not records are to be replaced', async () => {
  for (const ifTaken of ['refuse', 'replace'] as const) {
    const twice = ['a', 'a'].map((id) => ({ kind: 'lane', id, record: lane, ifTaken }) as const);
    await expect(keepAll(home, twice)).rejects.toMatchObject({ code: 'id-taken' });
  }
  expect(keptIds(home, 'lane')).toEqual([]);
});

test('keepAll: where one file cannot be written none is, and no half-written file stays', async () => {
  await keepNew(home, 'lane', 'a', called('first'));
  writeFileSync(join(home, 'bowlers'), 'a file where a folder should be');
  const bowler = demoShelf().bowlers[0].record;
  await expect(
    keepAll(home, [
      { kind: 'lane', id: 'a', record: called('second'), ifTaken: 'replace' },
      { kind: 'bowler', id: 'b', record: bowler, ifTaken: 'replace' },
    ]),
  ).rejects.toMatchObject({ code: 'no-access' });
  expect(readKept(home, 'lane', 'a').note).toBe('first');
  expect(readdirSync(join(home, 'lanes'))).toEqual(['a.json']);
  expect(readdirSync(join(home, 'removed', 'lanes'))).toEqual([]);
});

test('keepNew: an id of 61 characters is kept whole, and a number behind it leaves it an id', async () => {
  const id = 'x'.repeat(61);
  expect(await keepNew(home, 'lane', id, lane)).toBe(id);
  const second = await keepNew(home, 'lane', id, lane);
  expect(second).toBe(`${'x'.repeat(59)}-2`);
  expect(keptIds(home, 'lane')).toEqual([second, id].sort());
});

test('removeKept: of several records all are removed, or none when one is not there', async () => {
  for (const id of ['a', 'b']) await keepNew(home, 'lane', id, lane);
  const names = (...ids: string[]) => ids.map((id) => ({ kind: 'lane', id }) as const);
  await expect(removeKept(home, names('a', 'x', 'b'))).rejects.toMatchObject({ code: 'no-such-record' });
  expect(keptIds(home, 'lane')).toEqual(['a', 'b']);
  await removeKept(home, names('a', 'b', 'a')); // one named twice is removed once
  expect(keptIds(home, 'lane')).toEqual([]);
  expect(readdirSync(join(home, 'removed', 'lanes')).sort()).toEqual(['a.json', 'b.json']);
});

test('removeKept: records whose names meet in removed both stay there', async () => {
  await keepNew(home, 'lane', 'a', called('earlier'));
  await removeKept(home, [{ kind: 'lane', id: 'a' }]);
  for (const id of ['a', 'a-2']) await keepNew(home, 'lane', id, called(id));
  await removeKept(home, [
    { kind: 'lane', id: 'a' },
    { kind: 'lane', id: 'a-2' },
  ]);
  const folder = join(home, 'removed', 'lanes');
  const notes = readdirSync(folder).map((file) => JSON.parse(readFileSync(join(folder, file), 'utf8')).note);
  expect(notes.sort()).toEqual(['a', 'a-2', 'earlier']);
});

test.runIf(process.platform !== 'win32')('what is kept can be read by its owner alone', async () => {
  await replace('a', lane);
  await replace('a', lane);
  await changeKept(home, 'lane', 'a', () => called('changed'));
  const rights = (path: string): string => (statSync(path).mode & 0o777).toString(8);
  expect(['', 'lanes', 'removed'].map((folder) => rights(join(home, folder)))).toEqual(['700', '700', '700']);
  expect(rights(pathOf(home, { kind: 'lane', id: 'a' }))).toBe('600');
  expect(rights(join(home, 'removed', 'lanes', 'a.json'))).toBe('600');
});

test('a change leaves no lock and no half-written file behind', async () => {
  await keepNew(home, 'lane', 'a', lane);
  expect(readdirSync(home)).toEqual(['lanes']);
  expect(readdirSync(join(home, 'lanes'))).toEqual(['a.json']);
});

test.each([
  { what: 'a file stands in its place', make: () => writeFileSync(home, '') },
  { what: 'a file stands in place of a folder above it', make: () => writeFileSync(home, ''), below: 'x/y' },
  { what: 'its name is too long', make: () => undefined, below: 'x'.repeat(300) },
])('a home that cannot be made is the person’s to mend: $what', async ({ make, below = '' }) => {
  make();
  await expect(keepNew(join(home, below), 'lane', 'a', lane)).rejects.toMatchObject({
    code: 'no-access',
    message: expect.stringMatching(
      /the folder of kept records must be one that can be written to.*FLAREWISE_HOME/,
    ),
  });
});

test('moves that a killed program left are finished before anything is read', async () => {
  for (const id of ['a', 'b']) await keepNew(home, 'lane', id, lane);
  mkdirSync(join(home, 'removed', 'lanes'), { recursive: true });
  writeFileSync(
    join(home, 'pending-moves.json'),
    JSON.stringify([
      { from: 'lanes/gone-already.json', to: 'removed/lanes/gone-already.json' },
      { from: 'lanes/a.json', to: 'removed/lanes/a.json' },
    ]),
  );
  expect(keptIds(home, 'lane')).toEqual(['b']);
  expect(existsSync(join(home, 'pending-moves.json'))).toBe(false);
  expect(readdirSync(join(home, 'removed', 'lanes'))).toEqual(['a.json']);
});

test('keptIds: a file where a folder should be is told of as something to mend', () => {
  mkdirSync(home);
  writeFileSync(join(home, 'lanes'), '');
  expect(() => keptIds(home, 'lane')).toThrow(
    /kept records must be one that can be read; got ".*lanes", where a file/,
  );
});
