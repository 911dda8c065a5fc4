import { createHook } from 'node:async_hooks';
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { keepAll } from '../../src/records/home/change-records.js';
import { keptIds, readKept } from '../../src/records/home/saved-records.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { keepNew } from './keep-new.js';

const BUILT = new URL('../../dist/records/home/change-records.js', import.meta.url).href;
const lane = demoShelf().lanes[0].record;
const called = (note: string) => ({ ...lane, note });

/** A program that changes records without end, each change with a number of its own; it says when it begins. */
const changing = (home: string, from: number): string => `
  const { keepAll, changeKept, renameKept, removeKept } = await import(${JSON.stringify(BUILT)});
  const home = ${JSON.stringify(home)};
  const lane = ${JSON.stringify(lane)};
  const replace = (ids, note) =>
    keepAll(home, ids.map((id) => ({ kind: 'lane', id, record: { ...lane, note }, ifTaken: 'replace' })));
  process.stdout.write('begun');
  for (let n = ${from}; ; n++) {
    const note = String(n);
    await replace(['one'], note);
    await replace(['x', 'y', 'z'], note);
    await changeKept(home, 'lane', 'changed', (record) => ({ ...record, note }));
    await renameKept(home, { kind: 'lane', id: n % 2 ? 'odd' : 'even' }, n % 2 ? 'even' : 'odd');
    await replace(['p', 'q'], note);
    await removeKept(home, ['p', 'q'].map((id) => ({ kind: 'lane', id })));
  }`;

/** Starts a program, kills it some moment after it says it has begun, and waits until it has ended. */
export async function killedAfter(script: string, ms: number): Promise<void> {
  const child: ChildProcess = spawn(process.execPath, ['--input-type=module', '-e', script], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise<NodeJS.Signals | null>((resolve) =>
    child.on('close', (_, signal) => resolve(signal)),
  );
  await new Promise((resolve) => child.stdout?.once('data', resolve));
  await new Promise((resolve) => setTimeout(resolve, ms));
  child.kill('SIGKILL');
  expect(await ended).toBe('SIGKILL');
}

/**
 * Kills a program that changes records, as often as told and each time at another moment, and makes sure after each time
 * that every change was made whole or not at all, and that the next change waits for nothing.
 */
export async function killOften(home: string, times: number): Promise<void> {
  for (const id of ['one', 'x', 'y', 'z', 'changed', 'odd']) await keepNew(home, 'lane', id, called('0'));
  for (let time = 0; time < times; time++) {
    const from = keptIds(home, 'lane').includes('odd') ? 1 : 2;
    await killedAfter(changing(home, from + 1000 * time * 2), 120 * Math.random());
    expectWhole(home);
    const waits = await waitsForLock(() =>
      keepAll(home, [{ kind: 'lane', id: 'after', record: called(String(time)), ifTaken: 'replace' }]),
    );
    expect(waits).toBe(0);
    expectTidy(home);
  }
}

/** How often an act waits for a lock: timers that are set by the file of locks. */
export async function waitsForLock(act: () => Promise<unknown>): Promise<number> {
  let waits = 0;
  const hook = createHook({
    init(_id, type) {
      if (type === 'Timeout' && /files[\\/]lock\./.test(new Error().stack ?? '')) waits += 1;
    },
  }).enable();
  try {
    await act();
  } finally {
    hook.disable();
  }
  return waits;
}

function expectWhole(home: string): void {
  const ids = keptIds(home, 'lane').filter((id) => id !== 'after');
  const [p, q] = ['p', 'q'].map((id) => ids.includes(id));
  expect(p).toBe(q);
  expect(ids.includes('odd')).toBe(!ids.includes('even'));
  expect(ids.filter((id) => id.length > 1 || !/[pq]/.test(id)).length).toBe(6); // none went missing
  const notes = Object.fromEntries(ids.map((id) => [id, readKept(home, 'lane', id).note])); // all can be read
  expect([notes.y, notes.z]).toEqual([notes.x, notes.x]);
}

/** What went is in `removed`, whole; and no half-written file is anywhere. */
export function expectTidy(home: string): void {
  expect(readdirSync(home).filter((name) => !/^(lanes|removed|lock\..*)$/.test(name))).toEqual([]);
  for (const folder of ['lanes', join('removed', 'lanes')]) {
    if (!existsSync(join(home, folder))) continue;
    for (const file of readdirSync(join(home, folder))) {
      expect(file).toMatch(/^[a-z][a-z0-9-]*\.json$/);
      const { schema } = JSON.parse(readFileSync(join(home, folder, file), 'utf8'));
      expect(schema).toBe('flarewise/lane/1');
    }
  }
}
