import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demo, scratchFolder } from '../support/demo-files.js';
import { type Ended, runCli } from '../support/run-cli.js';

const scratch = scratchFolder();
afterAll(() => scratch.remove());

/** A ball whose core nobody knows: two families, two entries. */
const { coreShape: _, ...unshaped } = demo.ball();
const ARGS = ['drilled', '--bowler', 'average-right', '--layout', '70 x 4 1/2 x 30', '--json', '--ball'];
const BALL = scratch.write('ball.json', unshaped);

const withCache = (folder: string, ball = BALL): Promise<Ended> =>
  runCli([...ARGS, ball], { env: { FLAREWISE_CACHE: folder } });
const entries = (folder: string): string[] =>
  readdirSync(join(folder, 'cores')).map((name) => join(folder, 'cores', name));

let uncached: Ended;
beforeAll(async () => {
  uncached = await withCache('off');
  expect(uncached.code).toBe(0);
});

const expectSame = (ended: Ended): void => {
  expect(ended.code).toBe(0);
  expect(ended.err).toBe('');
  expect(ended.out).toBe(uncached.out);
};

test('fitted cores are remembered, and the answer is the same bytes with them and without', async () => {
  const folder = join(scratch.path, 'usual');
  expectSame(await withCache(folder));
  expect(entries(folder).length).toBe(2);
  const kept = entries(folder).map((file) => readFileSync(file, 'utf8'));
  expectSame(await withCache(folder));
  expect(entries(folder).map((file) => readFileSync(file, 'utf8'))).toEqual(kept);
});

test('without FLAREWISE_CACHE they lie where the platform keeps such files', async () => {
  const platform = { FLAREWISE_CACHE: '', HOME: scratch.path, XDG_CACHE_HOME: join(scratch.path, 'xdg') };
  expectSame(await runCli([...ARGS, BALL], { env: platform }));
  if (process.platform === 'linux') expect(entries(join(scratch.path, 'xdg', 'flarewise')).length).toBe(2);
});

test('damaged entries are made good in silence', async () => {
  const folder = join(scratch.path, 'damaged');
  await withCache(folder);
  const [one, other] = entries(folder);
  const sound = readFileSync(one, 'utf8');
  writeFileSync(one, sound.slice(0, 100));
  writeFileSync(other, readFileSync(other, 'utf8').replace(/"tried":\d+/, '"tried":1'));
  expectSame(await withCache(folder));
  expect(readFileSync(one, 'utf8')).toBe(sound);
});

test('a folder that cannot be written is no failure', async () => {
  const locked = join(scratch.path, 'locked');
  mkdirSync(locked, { mode: 0o500 }); // an administrator may write there all the same
  expectSame(await withCache(locked));
  chmodSync(locked, 0o700);
  expectSame(await withCache(scratch.write('in-the-way', 'a file, not a folder')));
});

test('four programs at once leave whole entries and give the same bytes', async () => {
  const folder = join(scratch.path, 'at-once');
  for (const ended of await Promise.all([1, 2, 3, 4].map(() => withCache(folder)))) expectSame(ended);
  expect(entries(folder).length).toBe(2);
  for (const file of entries(folder)) expect(() => JSON.parse(readFileSync(file, 'utf8'))).not.toThrow();
  expectSame(await withCache(folder));
});

test('nothing is remembered of a ball that cannot be, and the number at fault is named', async () => {
  const folder = join(scratch.path, 'impossible');
  const ball = scratch.write('impossible.json', { ...unshaped, weightLb: 11, rgIn: 2.42 });
  const { code, out, err } = await withCache(folder, ball);
  expect(code).toBe(2);
  expect(out).toBe('');
  expect(err).toMatch(/ball\.rgIn must go with the ball's other numbers in a plain or lobed core/);
  expect(err.replace(/\s+/g, ' ')).toMatch(
    /Nearest that works, the others kept: RG 2\.\d\d in; or weight 1\d\.\d lb/,
  );
  expect(existsSync(folder)).toBe(false);
});
