import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

/**
 * A real browser without a window.
 *
 * @throws {Error} when none is installed: what it would check is then not checked, and must not pass
 */
export const startChromium = (): Promise<Browser> =>
  chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });

function findChromium(): string {
  const folders = (process.env.PATH ?? '').split(delimiter);
  for (const path of folders.flatMap((folder) => NAMES.map((name) => join(folder, name)))) {
    try {
      accessSync(path, constants.X_OK);
      return path;
    } catch {} // not there: the next one
  }
  throw new Error('these tests need Chromium on the PATH: `apt-get install chromium` (.ci/run does)');
}
