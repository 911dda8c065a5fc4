import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { mkdtemp, rm, truncate } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type DataRun, runDesign } from './data-run.js';
import { shotRows } from './shot-rows.js';

const MODULE = new URL('./data-run.ts', import.meta.url).href;

const SIZE = { seed: 3, lanes: 8, part: 2 };
const whole = shotRows(SIZE.seed, 0, SIZE.lanes);

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'flarewise-data-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const kept = (name: string): string[] =>
  existsSync(join(folder, name))
    ? readdirSync(join(folder, name)).filter((file) => file.endsWith('.f32'))
    : [];

const run = (name: string, workers: number): Promise<Float32Array> =>
  runDesign({ ...SIZE, workers, directory: join(folder, name) });

test('rows come in the order of the design, whatever the workers', async () => {
  expect(await run('one', 1)).toEqual(whole);
  expect(await run('two', 2)).toEqual(whole);
  expect(kept('two').length).toBe(4);
});

test('a run that was killed goes on where it was and gives the same rows', async () => {
  const options: DataRun = { ...SIZE, workers: 1, directory: join(folder, 'killed') };
  // it kills itself as soon as the first part is kept: from outside a busy machine might come too late
  const script = `import(${JSON.stringify(MODULE)}).then((m) => m.runDesign({
    ...${JSON.stringify(options)},
    onProgress: () => process.kill(process.pid, 'SIGKILL'),
  }))`;
  const { signal } = spawnSync(process.execPath, ['--import', 'tsx', '-e', script], { stdio: 'ignore' });
  expect(signal).toBe('SIGKILL');
  expect(kept('killed').length).toBeGreaterThan(0);
  expect(kept('killed').length).toBeLessThan(4);
  expect(await run('killed', 2)).toEqual(whole);
});

test('a file cut short is rolled again', async () => {
  const [first] = kept('one').sort();
  await truncate(join(folder, 'one', first), 1001);
  expect(await run('one', 1)).toEqual(whole);
});
