import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { whyNoBrowser } from '../browser/chromium.js';
import { ENV } from '../support/run-cli.js';
import { checkoutCopy } from './checkout-copy.js';
import { npmCommands } from './page-commands.js';

/*
 * What the pages tell a person to type with npm and npx, in a checkout of its own where nothing is built, kept or remembered, in
 * the order in which it is built and packed.
 */

interface Trial {
  /** What is typed in place of the command, where the command itself takes long. */
  readonly line?: string;
  /** On stdout or stderr. */
  readonly says?: RegExp;
  /** Files that it writes, and that are then as they are committed. */
  readonly rewrites?: readonly string[];
  /** Files that there are afterwards. */
  readonly makes?: readonly string[];
  /** Where it needs a browser. */
  readonly browses?: true;
}

const PAGES = ['README.md', 'DEVELOPERS.md'];
const SCHEMAS = ['ball', 'recommend-answer', 'parts'].map((name) => `shared/schemas/${name}.schema.json`);

/** Commands that take seconds, each tried whole or in its smallest run. */
const SHORT: Readonly<Record<string, Trial>> = {
  'npm run build': { says: /Building flarewise/, makes: ['dist/cli/main.js', 'dist/api/flarewise.d.ts'] },
  'npm start': { says: /DRILL +\d+ x / },
  'npm start -- --units metric': { says: /from the PAP/ },
  'npm run house': { rewrites: ['.biome.jsonc', 'DEVELOPERS.md'] },
  'npm run schemas': { rewrites: SCHEMAS },
  'npm run reference': { rewrites: PAGES },
  'npm run screens': { rewrites: ['tests/report/screens/adjust, 80 columns.txt'] },
  'npm run examples': {
    rewrites: ['README.md', 'shared/examples/first-screen.txt', 'shared/examples/sources.json'],
    browses: true,
  },
  'npm run licences': { says: /MIT/ },
  'npm run fit -- --help': { says: /Usage: npm run fit --/ },
  'npm run fuzz': { line: 'npm run fuzz -- --share 0.00001', says: /\{"/ },
  'npx tsx tests/support/ten-answers.ts': {
    line: 'npx tsx tests/support/ten-answers.ts compare answers answers',
    says: /one\.json: 1 numbers, 0 gone or changed/,
  },
  'npm run package': { makes: ['flarewise-0.1.0.tgz'] },
  'npm pack': { makes: ['flarewise-0.1.0.tgz'] },
  'npm link': { line: 'npm link && prefix/bin/flarewise explain pin', says: /pin/i },
};

/** Commands that take long, or are tried by what is named: their scripts name files that are there. */
const LONG: Readonly<Record<string, string>> = {
  'npm test': '.ci/run',
  'npm run check:slow': 'tests/vitest.slow.config.ts',
  'npx vitest run --config tests/vitest.config.ts PATH': 'tests/vitest.config.ts',
  'npm install --global --ignore-scripts ./flarewise-0.1.0.tgz': 'tests/set-up/installed.slow.test.ts',
  'npm run fit': 'tests/fit/fit-command.test.ts',
  'npm run bench': 'tests/bench/run.ts',
  'npm run kills': 'tests/end-to-end/killed-commands.slow.test.ts',
  'npm run mutate -- FOLDER': 'tests/mutation/run.ts',
  'npm run study': 'tests/studies/beliefs.ts',
  'npm run study:friction': 'tests/studies/friction-table.ts',
  'npm run study:learning -- FOLDER': 'tests/studies/learning-table.ts',
  'npm run study:regression -- FOLDER': 'tests/studies/regression-proof-table.ts',
  'npm run study:voices': 'tests/studies/voices-table.ts',
};

const copy = checkoutCopy(Object.values(SHORT).flatMap(({ rewrites = [] }) => rewrites));
afterAll(copy.remove);

const env = {
  PATH: ENV.PATH ?? '',
  LANG: 'C.UTF-8',
  HOME: join(copy.path, 'home'),
  npm_config_prefix: join(copy.path, 'prefix'),
  npm_config_cache: process.env.npm_config_cache ?? join(process.env.HOME ?? '', '.npm'),
};

const run = (line: string) =>
  spawnSync('sh', ['-c', line], {
    cwd: copy.path,
    env,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
    maxBuffer: 2 ** 26,
  });

test('every command of the pages is tried, or is among those that take long', () => {
  expect([...npmCommands()].sort()).toEqual([...Object.keys(SHORT), ...Object.keys(LONG)].sort());
});

describe.skipIf(process.platform === 'win32')('in a checkout of its own', () => {
  mkdirSync(join(copy.path, 'answers'));
  writeFileSync(join(copy.path, 'answers/one.json'), '{ "number": 1 }');

  test.each(Object.entries(SHORT))(
    '%s',
    (command, { line, says = /^/, rewrites = [], makes = [], browses }) => {
      if (browses && whyNoBrowser() !== null) return;
      const { status, stdout, stderr } = run(line ?? command);
      expect(`${stdout}${stderr}`).toMatch(says);
      expect(status, stderr).toBe(0);
      for (const file of rewrites) expect(copy.isUnchanged(file), file).toBe(true);
      for (const file of makes) expect(existsSync(join(copy.path, file)), file).toBe(true);
    },
  );
});

test('scripts that take long name files that are there', () => {
  const { scripts } = JSON.parse(readFileSync(join(copy.path, 'package.json'), 'utf8'));
  const named = Object.values<string>(scripts).flatMap(
    (script) => script.match(/\b(?:src|tests)\/[\w./-]+/g) ?? [],
  );
  expect(named.length).toBeGreaterThan(15);
  for (const file of [...named, ...Object.values(LONG)].filter((each) => each !== '.ci/run'))
    expect(existsSync(join(copy.path, file)), file).toBe(true);
});
