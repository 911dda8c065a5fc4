import { cpSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { keepAll } from '../../../src/records/home/change-records.js';
import { keptIds, readKept } from '../../../src/records/home/saved-records.js';
import { demoShelf } from '../../../src/records/read/shelf.js';
import { scratchFolder } from '../../support/demo-files.js';
import { keepNew } from '../../support/keep-new.js';
import { expectTidy } from '../../support/killed.js';
import { killedAtStep } from '../../support/killed-at-step.js';

const BUILT = new URL('../../../dist/records/home/change-records.js', import.meta.url).href;
const scratch = scratchFolder();
afterAll(() => scratch.remove());

const lane = demoShelf().lanes[0].record;
const called = (note: string) => ({ ...lane, note });

/** What is kept, by id, with its note. */
const kept = (home: string): Record<string, string | undefined> =>
  Object.fromEntries(keptIds(home, 'lane').map((id) => [id, readKept(home, 'lane', id).note]));

const BEFORE = { x: 'old', y: 'old' };

// biome-ignore format: a change a line
const changes = [
  { what: 'two records replaced and one added', act: `keepAll(home, ['x', 'y', 'z'].map((id) => ({ kind: 'lane', id, record: { ...lane, note: 'new' }, ifTaken: 'replace' })))`, after: { x: 'new', y: 'new', z: 'new' } },
  { what: 'two records removed', act: `removeKept(home, ['x', 'y'].map((id) => ({ kind: 'lane', id })))`, after: {} },
  { what: 'a record changed', act: `changeKept(home, 'lane', 'x', (record) => ({ ...record, note: 'new' }))`, after: { x: 'new', y: 'old' } },
  { what: 'a record renamed', act: `renameKept(home, { kind: 'lane', id: 'x' }, 'z')`, after: { y: 'old', z: 'old' } },
];

test.each(changes)('$what: a kill at any step leaves all as it was, or all done', async ({ act, after }) => {
  const start = join(scratch.path, 'start');
  rmSync(start, { recursive: true, force: true });
  for (const id of ['x', 'y']) await keepNew(start, 'lane', id, called('old'));
  const home = join(scratch.path, 'home');
  const script = `
    const { keepAll, changeKept, renameKept, removeKept } = await import(${JSON.stringify(BUILT)});
    const [home, lane] = ${JSON.stringify([home, lane])};
    await ${act};`;
  const seen = new Set<string>();
  let step = 0;
  for (let isKilled = true; isKilled; ) {
    rmSync(home, { recursive: true, force: true });
    cpSync(start, home, { recursive: true });
    step += 1;
    isKilled = killedAtStep(script, step);
    const found = kept(home);
    expect([BEFORE, after], `killed at step ${step}`).toContainEqual(found);
    seen.add(JSON.stringify(found));
    // the next change is made at once, and what the killed one left half done is gone
    await keepAll(home, [{ kind: 'lane', id: 'next', record: lane, ifTaken: 'refuse' }]);
    expect(kept(home)).toEqual({ ...found, next: lane.note });
    expectTidy(home);
    for (const id of Object.keys(BEFORE)) if (!(id in found)) expectRemovedOrRenamed(home, id, found);
  }
  expect(seen.size).toBe(2); // some kills came before, some after
  expect(step).toBeGreaterThan(10);
});

function expectRemovedOrRenamed(home: string, id: string, found: object): void {
  if ('z' in found) return;
  expect(JSON.parse(readFileSync(join(home, 'removed', 'lanes', `${id}.json`), 'utf8')).note).toBe('old');
}
