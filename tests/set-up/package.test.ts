import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { subset } from 'semver';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ENV } from '../support/run-cli.js';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const read = (name: string) => JSON.parse(readFileSync(join(ROOT, name), 'utf8'));
const manifest = read('package.json');

interface Locked {
  readonly dev?: boolean;
  readonly engines?: { readonly node?: string };
  readonly hasInstallScript?: boolean;
  readonly optional?: boolean;
}
const locked = Object.entries<Locked>(read('package-lock.json').packages).filter(([path]) => path !== '');

/** Environment of npm: nothing of the npm that runs these tests, and no settings of the person. */
const NPM_ENV = { PATH: ENV.PATH, HOME: tmpdir() };

test('every package runs on every Node.js that the manifest allows', () => {
  // optional ones for development are other machines' builds of the tools
  const wanted = locked.filter(([, { engines, optional, dev }]) => engines?.node && !(optional && dev));
  expect(wanted.map(([path]) => path)).toContain('node_modules/adm-zip'); // of the optional runtime
  expect(wanted.length).toBeGreaterThan(50);
  for (const [path, { engines }] of wanted)
    expect(subset(manifest.engines.node, engines?.node as string), `${path} ${engines?.node}`).toBe(true);
  expect(subset(process.versions.node, manifest.engines.node)).toBe(true);
});

test('no package may run a script of its own when it is installed', () => {
  expect(readFileSync(join(ROOT, '.npmrc'), 'utf8')).toMatch(/^ignore-scripts=true$/m);
  // npm that knows this field asks it as well: all that have a script are named, and none that is shipped may run it
  const withScripts = locked
    .filter(([, { hasInstallScript }]) => hasInstallScript)
    .map(([path]) => path.replace(/^.*node_modules\//, ''));
  expect(withScripts.sort()).toEqual(Object.keys(manifest.allowScripts).sort());
  const allowed = Object.keys(manifest.allowScripts).filter((name) => manifest.allowScripts[name]);
  expect(allowed).toEqual(['esbuild']);
  // who installs the packed package has other settings
  const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
  const installs = [...readme.matchAll(/^npm install .*\.tgz$/gm)].map(([line]) => line);
  expect(installs.length).toBeGreaterThan(0);
  for (const line of installs) expect(line).toContain('--ignore-scripts');
});

test('npm warns of nothing in its settings', () => {
  const { status, stderr } = spawnSync('npm', ['config', 'get', 'save-exact'], {
    cwd: ROOT,
    env: NPM_ENV,
    encoding: 'utf8',
  });
  expect([status, stderr]).toEqual([0, '']);
});

describe('the packed package', () => {
  const folder = mkdtempSync(join(tmpdir(), 'flarewise-'));
  const unpacked = join(folder, 'package');
  beforeAll(() => {
    const packed = execFileSync('npm', ['pack', '--json', '--pack-destination', folder], {
      cwd: ROOT,
      env: NPM_ENV,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    expect(packed).toContain('flarewise');
    const [tarball] = readdirSync(folder).filter((name) => name.endsWith('.tgz'));
    execFileSync('tar', ['-xzf', tarball, '-C', folder], { cwd: folder });
    // what an installation has beside it: what the manifest depends on, and nothing for development
    for (const [path] of locked.filter(
      ([each, { dev }]) => !dev && !each.slice(1).includes('node_modules/'),
    )) {
      const link = join(unpacked, path);
      mkdirSync(dirname(link), { recursive: true });
      symlinkSync(join(ROOT, path), link, 'junction');
    }
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  test('holds what a user needs and no more', () => {
    expect(readdirSync(unpacked).sort()).toEqual(
      ['LICENSE', 'README.md', 'data', 'dist', 'models', 'node_modules', 'package.json', 'shared'].sort(),
    );
    expect(readdirSync(join(unpacked, 'dist')).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  test.each([
    [['--version'], manifest.version],
    [
      [
        'sheet',
        '--bowler',
        'average-right',
        '--ball',
        'plain-medium',
        '--layout',
        '70 x 4 1/2 x 30',
        '--json',
      ],
      '"schema"',
    ],
    [
      [
        'recommend',
        ...['--bowler', 'average-right', '--ball', 'plain-medium', '--lane', 'house-easy'],
        ...['--show', 'searched'],
      ],
      'The fitted regression scored',
    ],
  ])('its command answers %j', (args, says) => {
    const command = join(unpacked, manifest.bin.flarewise);
    const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...args], {
      cwd: folder,
      env: ENV,
      encoding: 'utf8',
    });
    expect(status, stderr).toBe(0);
    expect(stdout.replace(/\s+/g, ' ')).toContain(says);
  });
});
