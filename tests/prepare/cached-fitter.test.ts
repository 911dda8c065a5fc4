import { existsSync, readdirSync, readFileSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { type Ensemble, fitEnsemble } from '../../src/ball/core/ensemble.js';
import { cachedFitter } from '../../src/prepare/cached-fitter.js';
import { EDGE_BALLS, publishedBall, USUAL_BALLS } from '../support/balls.js';
import { scratchFolder } from '../support/demo-files.js';

const scratch = scratchFolder();
afterAll(() => scratch.remove());

let made = 0;
const freshFolder = (): string => join(scratch.path, `cache-${++made}`);
const text = (ensemble: Ensemble): string =>
  JSON.stringify([ensemble.bodies, ensemble.points, ensemble.tried]);
const onlyFile = (folder: string): string => join(folder, readdirSync(folder)[0]);

test.each([...USUAL_BALLS, EDGE_BALLS[0], EDGE_BALLS[4]])(
  'cachedFitter: a remembered $family ensemble is the fitted one to the last digit',
  (wanted) => {
    const folder = freshFolder();
    const fresh = text(fitEnsemble(wanted, 64));
    expect(text(cachedFitter(folder)(wanted, 64))).toBe(fresh);
    expect(readdirSync(folder).length).toBe(1);
    expect(text(cachedFitter(folder)(wanted, 64))).toBe(fresh);
    expect(readFileSync(onlyFile(folder)).length).toBeLessThan(2000);
  },
);

test('cachedFitter: what is remembered is used, not found again', () => {
  const folder = freshFolder();
  const [wanted] = USUAL_BALLS;
  cachedFitter(folder)(wanted, 8);
  utimesSync(onlyFile(folder), 1000, 1000);
  cachedFitter(folder)(wanted, 8);
  expect(statSync(onlyFile(folder)).mtimeMs).toBe(1e6); // a search would have written it anew
});

test('cachedFitter: every number asked for, and how many cores, has an entry of its own', () => {
  const folder = freshFolder();
  const fitter = cachedFitter(folder);
  const [wanted] = USUAL_BALLS;
  const others = [
    { ...wanted, mass: wanted.mass + 1e-12 },
    { ...wanted, radius: wanted.radius + 1e-12 },
    { ...wanted, lowRg: wanted.lowRg + 1e-12 },
    { ...wanted, differential: wanted.differential + 1e-12 },
    { ...wanted, intermediateDifferential: 1e-12 },
    { ...wanted, pinToCg: wanted.pinToCg + 1e-12 },
    { ...wanted, topMoment: wanted.topMoment + 1e-12 },
    { ...wanted, family: 'lobed' as const },
  ];
  for (const each of [wanted, ...others]) fitter(each, 2);
  fitter(wanted, 3);
  expect(readdirSync(folder).length).toBe(others.length + 2);
});

const spoil =
  (change: (entry: Record<string, unknown> & { found: { points: number[] } }) => unknown) =>
  (file: string): void =>
    writeFileSync(file, JSON.stringify(change(JSON.parse(readFileSync(file, 'utf8')))));

test.each<{ name: string; damage: (file: string) => void }>([
  { name: 'an empty file', damage: (file) => writeFileSync(file, '') },
  { name: 'half a file', damage: (file) => writeFileSync(file, readFileSync(file, 'utf8').slice(0, 200)) },
  { name: 'another kind of file', damage: (file) => writeFileSync(file, '{"schema":"flarewise/ball/1"}') },
  { name: 'bytes that are no text', damage: (file) => writeFileSync(file, Buffer.from([0, 255, 254, 7])) },
  {
    name: 'a point changed',
    damage: spoil((e) => ({ ...e, found: { ...e.found, points: e.found.points.map((n) => n + 1) } })),
  },
  {
    name: 'a core left out',
    damage: spoil((e) => ({ ...e, found: { ...e.found, points: e.found.points.slice(1) } })),
  },
  { name: 'the entry of another ball', damage: spoil((e) => ({ ...e, key: '0'.repeat(64) })) },
  { name: 'a field nobody knows', damage: spoil((e) => ({ ...e, more: 1 })) },
])('cachedFitter: $name is noticed and made good, in silence', ({ damage }) => {
  const folder = freshFolder();
  const [wanted] = EDGE_BALLS;
  const fresh = text(cachedFitter(folder)(wanted, 16));
  const sound = readFileSync(onlyFile(folder), 'utf8');
  damage(onlyFile(folder));
  expect(readFileSync(onlyFile(folder), 'utf8')).not.toBe(sound);
  expect(text(cachedFitter(folder)(wanted, 16))).toBe(fresh);
  expect(readFileSync(onlyFile(folder), 'utf8')).toBe(sound);
});

test('cachedFitter: a folder that cannot be made is no failure', () => {
  const [wanted] = USUAL_BALLS;
  const notAFolder = scratch.write('a-file', 'in the way');
  expect(text(cachedFitter(join(notAFolder, 'cores'))(wanted, 4))).toBe(text(fitEnsemble(wanted, 4)));
  expect(readFileSync(notAFolder, 'utf8')).toBe('in the way');
});

test('cachedFitter: nothing is remembered of a ball that cannot be', () => {
  const folder = freshFolder();
  expect(cachedFitter(folder)(publishedBall('plain', 12, 2.45, 0.05), 64).bodies).toEqual([]);
  expect(existsSync(folder)).toBe(false);
});

test('cachedFitter: of more than 500 entries the oldest go, and files of others stay', () => {
  const folder = freshFolder();
  const fitter = cachedFitter(folder);
  fitter(USUAL_BALLS[0], 2);
  writeFileSync(join(folder, 'notes.json'), '{}');
  const old = Array.from({ length: 520 }, (_, i) => `${i.toString(16).padStart(64, '0')}.json`);
  old.forEach((name, i) => {
    writeFileSync(join(folder, name), '{}');
    utimesSync(join(folder, name), 1000 + i, 1000 + i);
  });
  fitter(USUAL_BALLS[1], 2);
  const left = new Set(readdirSync(folder));
  expect(left.size).toBe(501);
  expect(left.has('notes.json')).toBe(true);
  expect(old.filter((name) => left.has(name))).toEqual(old.slice(22)); // the newest 498, and two fits
});
