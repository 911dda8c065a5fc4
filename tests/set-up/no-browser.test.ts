import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const VITEST = join(ROOT, 'node_modules/vitest/vitest.mjs');

// a PATH on which there is Node.js and nothing else
const folder = mkdtempSync(join(tmpdir(), 'flarewise-'));
symlinkSync(process.execPath, join(folder, 'node'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Runs one quick test file and one that needs a browser. */
const runTests = (env: Record<string, string>) =>
  spawnSync(
    process.execPath,
    [
      VITEST,
      'run',
      '--config',
      'tests/vitest.config.ts',
      'tests/math/vec3.test.ts',
      'tests/browser/sheet.test.ts',
    ],
    { cwd: ROOT, env: { PATH: folder, NO_COLOR: '1', ...env }, encoding: 'utf8' },
  );

test('without Chromium the browser tests are skipped, and that is said with how to run them', () => {
  const { status, stdout } = runTests({});
  expect(stdout).toMatch(
    /\nThe browser tests were skipped: no Chromium on the PATH\. To run them: apt-get install chromium, then npm test\.\n\n\d+ passed, 0 failed\n$/,
  );
  expect(status).toBe(0);
});

test('where a browser is required they fail without one', () => {
  const { status, stdout, stderr } = runTests({ FLAREWISE_BROWSER: 'required' });
  expect(stdout + stderr).toContain('no Chromium on the PATH. To run them');
  expect(stdout).toMatch(/\d+ passed, [1-9]\d* failed\n$/);
  expect(status).toBe(1);
});
