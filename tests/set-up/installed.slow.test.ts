import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ENV } from '../support/run-cli.js';

/* The packed package, really installed in an empty folder: from npm's cache where that has all, else from the registry. */

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'flarewise-installed-'));
afterAll(() => rmSync(folder, { recursive: true }));

const RECORDS = ['--bowler', 'average-right', '--ball', 'plain-medium'];

/** How npm says that it cannot get at a package. */
const OUT_OF_REACH = /ENOTCACHED|ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH/;

let tarball: string;
beforeAll(() => {
  execFileSync('npm', ['pack', '--pack-destination', folder], { cwd: ROOT, stdio: 'ignore' });
  tarball = join(folder, readdirSync(folder).find((name) => name.endsWith('.tgz')) as string);
});

/** Installs it; null when it is there, or why that cannot be tried here. */
function install(place: string, flags: readonly string[]): string | null {
  mkdirSync(place);
  writeFileSync(join(place, 'package.json'), '{ "private": true, "type": "module" }');
  const npm = (...more: readonly string[]) =>
    spawnSync('npm', ['install', tarball, '--no-audit', '--no-fund', ...flags, ...more], {
      cwd: place,
      encoding: 'utf8',
    });
  const offline = npm('--offline');
  if (offline.status === 0) return null;
  const { status, stderr } = npm('--prefer-offline');
  if (status === 0) return null;
  if (OUT_OF_REACH.test(stderr))
    return `the packages are neither in npm's cache nor to be had: ${stderr.slice(0, 300)}`;
  throw new Error(stderr);
}

describe.each([
  { kind: 'without install scripts', flags: ['--ignore-scripts'], arithmetic: 'runtime' },
  { kind: 'without optional packages', flags: ['--ignore-scripts', '--omit=optional'], arithmetic: 'plain' },
])('installed $kind', ({ flags, arithmetic }) => {
  const place = join(folder, arithmetic);
  const missing: { why: string | null } = { why: null };
  beforeAll(() => {
    missing.why = install(place, flags);
  });

  const command = (...args: readonly string[]): string =>
    execFileSync(join(place, 'node_modules/.bin/flarewise'), args, {
      cwd: place,
      env: ENV,
      encoding: 'utf8',
      maxBuffer: 2 ** 26,
      stdio: ['ignore', 'pipe', 'inherit'],
    });

  test('the runtime is there or not, as was wanted', (context) => {
    if (missing.why !== null) context.skip(missing.why);
    expect(existsSync(join(place, 'node_modules/onnxruntime-node'))).toBe(arithmetic === 'runtime');
  });

  test('the command recommends, with the regression', (context) => {
    if (missing.why !== null) context.skip(missing.why);
    const { layouts, search } = JSON.parse(
      command('recommend', ...RECORDS, '--lane', 'house-easy', '--json'),
    );
    expect(layouts[0].score).toBeGreaterThan(0);
    expect(search.regression).toMatchObject({ notice: null, arithmetic });
  });

  test('the command writes a sheet', (context) => {
    if (missing.why !== null) context.skip(missing.why);
    command('sheet', ...RECORDS, '--layout', '70 x 4 1/2 x 30', '--out', 'sheet.pdf');
    expect(existsSync(join(place, 'sheet.pdf'))).toBe(true);
  });

  test('another program may import it', (context) => {
    if (missing.why !== null) context.skip(missing.why);
    const code = `
      import { readFileSync } from 'node:fs';
      import { drilled, readBall } from 'flarewise';
      const data = 'node_modules/flarewise/data/';
      const bowler = JSON.parse(readFileSync(data + 'bowlers/average-right.json', 'utf8'));
      const ball = readBall(data + 'balls/plain-medium.json');
      console.log(drilled({ bowler, ball, layout: '70 x 4 1/2 x 30' }).legality.legal);`;
    writeFileSync(join(place, 'program.js'), code);
    expect(execFileSync(process.execPath, ['program.js'], { cwd: place, encoding: 'utf8' })).toBe('true\n');
  });
});
