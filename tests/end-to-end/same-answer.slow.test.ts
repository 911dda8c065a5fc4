import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demo, scratchFolder } from '../support/demo-files.js';
import { runCli, runSmall } from '../support/run-cli.js';

/* The same bytes in any language, time zone, folder, by any number of threads, and whatever the language's engine makes of last digits. */

const scratch = scratchFolder();
afterAll(() => scratch.remove());

/** Balls that are kept are tried as other levers, and compete in a coach's table. */
const HOME = join(scratch.path, 'home');
beforeAll(async () => {
  const records = ['Alpha', 'Beta', 'Gamma'].map((name, i) =>
    scratch.write(`${name}.json`, { ...demo.ball(), name, surfaceGrit: 500 * (i + 1) }),
  );
  const kept = await runCli(['shelf', 'import', ...records], { env: { FLAREWISE_HOME: HOME } });
  expect(kept.code).toBe(0);
});

const before = (file: string): string =>
  `--import ${new URL(`../support/${file}`, import.meta.url).href} --no-warnings`;

interface Circumstances {
  readonly env?: Record<string, string>;
  readonly workers?: number;
  readonly cwd?: string;
}

/** An answer in JSON and one in words, a table and a work sheet. */
async function answers({ env = {}, workers = 1, cwd }: Circumstances): Promise<readonly string[]> {
  const pair = ['--bowler', 'average-right', '--ball', 'plain-medium'];
  const layout = ['--layout', '70 x 4 1/2 x 30'];
  const all = [
    ['recommend', ...pair, '--lane', 'house-easy', '--hook-start', '3', '--json'],
    ['recommend', ...pair, '--lane', 'house-easy', '--full'],
    ['coach', '--bowlers', 'average-right', '--balls', 'alpha,beta', '--lanes', 'short', '--jsonl'],
    ['sheet', ...pair, ...layout, '--date', '2026-03-31'],
    ['shelf', 'export'],
  ];
  const told: string[] = [];
  for (const args of all) {
    const { code, out, err } = await runSmall([...args, '--workers', String(workers)], {
      env: { FLAREWISE_HOME: HOME, ...env },
      ...(cwd === undefined ? {} : { cwd }),
    });
    expect(code, err).toBe(0);
    told.push(out);
  }
  return told;
}

let usual: readonly string[];
beforeAll(async () => {
  usual = await answers({});
});

const somewhere = fileURLToPath(new URL('../../shared/', import.meta.url));

test.each<{ name: string } & Circumstances>([
  {
    name: 'German, Kiritimati, 2 threads',
    env: { LC_ALL: 'de_DE.UTF-8', TZ: 'Pacific/Kiritimati' },
    workers: 2,
  },
  { name: 'Turkish, Newfoundland', env: { LC_ALL: 'tr_TR.UTF-8', TZ: 'America/St_Johns' } },
  { name: 'Arabic, Kathmandu, 4 threads', env: { LANG: 'ar_EG.UTF-8', TZ: 'Asia/Kathmandu' }, workers: 4 },
  { name: 'another folder', cwd: somewhere },
  { name: 'files listed the other way round', env: { NODE_OPTIONS: before('files-reversed.mjs') } },
  ...[1, 2].map((seed) => ({
    name: `an engine whose functions differ in their last digits, ${seed}`,
    env: { NODE_OPTIONS: before(`other-engine.mjs?seed=${seed}`) },
    workers: seed,
  })),
])('the same bytes: $name', async (circumstances) => {
  expect(await answers(circumstances)).toEqual(usual);
});

test('that engine does differ, in threads too', async () => {
  const script = 'console.log(Math.sin(1), Math.hypot(1, 2), Math.log(3), 10 ** 2, Math.cos(0))';
  const told = async (env: Record<string, string>) =>
    (await runCli(['-e', script], { main: [], env })).out.trim().split(' ').map(Number);
  const [here, there] = [await told({}), await told({ NODE_OPTIONS: before('other-engine.mjs?seed=1') })];
  expect(there).not.toEqual(here);
  for (const [i, value] of there.entries()) expect(Math.abs(value / here[i]! - 1)).toBeLessThan(2 ** -51);
});
