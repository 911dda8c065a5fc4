import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { tryLock, underLock } from '../../src/files/lock.js';
import { isGone, newOwner } from '../../src/files/owner.js';
import { deadOwner } from '../support/dead-owner.js';
import { scratchFolder } from '../support/demo-files.js';
import { waitsForLock } from '../support/killed.js';

const scratch = scratchFolder();
afterAll(() => scratch.remove());

let made = 0;
let folder: string;
let path: string;
beforeEach(() => {
  folder = join(scratch.path, String(++made));
  mkdirSync(folder);
  path = join(folder, 'lock');
});

/** A lock as a process leaves it that is killed while it holds it. */
function leaveLock(owner: string, when = new Date()): void {
  mkdirSync(path);
  writeFileSync(join(path, owner), '');
  utimesSync(path, when, when);
}

const YEAR = 365 * 24 * 3600 * 1000;

test('isGone: neither this process nor one that cannot be asked is taken for ended', () => {
  expect(isGone(newOwner())).toBe(false);
  expect(isGone(deadOwner())).toBe(true);
  expect(isGone('notes')).toBe(false);
  expect(isGone(deadOwner().replace(/[0-9a-f]{8}-[0-9a-f]{8}$/, '00000000-00000000'))).toBe(false);
});

test.runIf(process.platform === 'linux')(
  'isGone: a process number that was given again is another process',
  () => {
    expect(isGone(newOwner().replace(/^(\d+)-\d+/, '$1-1'))).toBe(true);
  },
);

test('tryLock: one at a time; given back it leaves nothing', () => {
  const first = tryLock(path);
  expect(tryLock(path)).toEqual({ owner: expect.stringMatching(new RegExp(`^${process.pid}-`)) });
  if ('release' in first) first.release();
  const second = tryLock(path);
  expect(second).toHaveProperty('release');
  if ('release' in first) first.release(); // given back twice: the lock of who came next stays
  expect(tryLock(path)).toHaveProperty('owner');
  if ('release' in second) second.release();
  expect(readdirSync(folder)).toEqual([]);
});

test.each([
  { when: 'a year ago', ms: -YEAR },
  { when: 'now', ms: 0 },
  { when: 'in a year', ms: YEAR },
])('tryLock: the lock of a process that has ended, dated $when, is taken at once', ({ ms }) => {
  leaveLock(deadOwner(), new Date(Date.now() + ms));
  const got = tryLock(path);
  expect(got).toHaveProperty('release');
  if ('release' in got) got.release();
});

test.each([-YEAR, 0, YEAR])(
  'tryLock: the lock of a process that runs is never taken (dated %i ms from now)',
  (ms) => {
    const owner = newOwner();
    leaveLock(owner, new Date(Date.now() + ms));
    expect(tryLock(path)).toEqual({ owner });
  },
);

test('underLock: waits as long as it was told, by a clock that nothing sets back, and then says who has it', async () => {
  leaveLock(newOwner());
  const begun = performance.now();
  // a timer that is due later fires later, however busy the machine is
  const over = new AbortController();
  const first = Promise.race([
    underLock(path, 'the shelf', 300, () => 1),
    sleep(5000, 'waits on', { signal: over.signal }),
  ]);
  await expect(first).rejects.toMatchObject({
    code: 'locked',
    message: expect.stringMatching(
      /the shelf must not be in use .*process \d+ is changing.*remove the folder .*lock/,
    ),
  });
  expect(performance.now() - begun).toBeGreaterThanOrEqual(300);
  over.abort();
});

test('waitsForLock: counts how often a lock that is held was looked at again', async () => {
  leaveLock(newOwner());
  const act = () => underLock(path, 'it', 200, () => 1).catch(() => {});
  expect(await waitsForLock(act)).toBeGreaterThan(0);
  expect(await waitsForLock(() => underLock(`${path}-free`, 'it', 200, () => 1))).toBe(0);
});

test('underLock: an act that fails gives the lock back', async () => {
  const act = () => Promise.reject(new Error('no'));
  await expect(underLock(path, 'it', 0, act)).rejects.toThrow('no');
  expect(await underLock(path, 'it', 0, () => 'yes')).toBe('yes');
});

test('a buried lock is removed after an hour', () => {
  const lock = () => {
    const got = tryLock(path);
    if ('release' in got) got.release();
  };
  const owner = deadOwner();
  leaveLock(owner);
  lock();
  expect(readdirSync(folder)).toEqual([`lock.${owner}`]);
  const then = new Date(Date.now() - 2 * 3600 * 1000);
  utimesSync(join(folder, `lock.${owner}`), then, then);
  lock();
  expect(readdirSync(folder)).toEqual([]);
});

test('processes that count under the lock, some of them killed while they hold it, miss no number', async () => {
  const built = new URL('../../dist/files/lock.js', import.meta.url).href;
  const counter = join(folder, 'count');
  const log = join(folder, 'log');
  writeFileSync(counter, '0');
  writeFileSync(log, '');
  // one in ten takes the lock and ends without giving it back, between two numbers
  const script = `
    import { appendFileSync, readFileSync, writeFileSync } from 'node:fs';
    const { underLock } = await import(${JSON.stringify(built)});
    for (let i = 0; i < 25; i++)
      await underLock(${JSON.stringify(path)}, 'it', 60000, () => {
        const n = Number(readFileSync(${JSON.stringify(counter)}, 'utf8'));
        for (const begun = performance.now(); performance.now() - begun < 1; );
        writeFileSync(${JSON.stringify(counter)}, String(n + 1));
        appendFileSync(${JSON.stringify(log)}, n + '\\n');
        if (Math.random() < 0.1) process.kill(process.pid, 'SIGKILL');
      });`;
  const ended = Array.from({ length: 8 }, () => {
    const child = spawn(process.execPath, ['--input-type=module', '-e', script], { stdio: 'inherit' });
    return new Promise<string | number | null>((resolve) =>
      child.on('close', (code, signal) => resolve(signal ?? code)),
    );
  });
  const ends = await Promise.all(ended);
  expect(ends.every((end) => end === 0 || end === 'SIGKILL')).toBe(true);
  const numbers = readFileSync(log, 'utf8').trim().split('\n').map(Number);
  expect(numbers).toEqual(Array.from({ length: numbers.length }, (_, i) => i));
});
