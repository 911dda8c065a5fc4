import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

/** A real browser without a window. @throws {Error} when none is installed */
export const startChromium = async (): Promise<Browser> => {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error(`no Chromium on the PATH. ${HOW_TO_GET_IT}`);
  return chromium.launch({ executablePath, args: ['--no-sandbox'], timeout: 0 }); // a busy machine is no fault
};

/**
 * What to tell where the pages cannot be tried in a browser; null where they can, and where they must be: with
 * `FLAREWISE_BROWSER=required` the tests run without a browser as well, and fail.
 */
export const whyNoBrowser = (): string | null =>
  process.env.FLAREWISE_BROWSER === 'required' || findChromium() !== null
    ? null
    : `The browser tests were skipped: no Chromium on the PATH. ${HOW_TO_GET_IT}`;

const HOW_TO_GET_IT = 'To run them: apt-get install chromium, then npm test.';

function findChromium(): string | null {
  const folders = (process.env.PATH ?? '').split(delimiter);
  for (const path of folders.flatMap((folder) => NAMES.map((name) => join(folder, name)))) {
    try {
      accessSync(path, constants.X_OK);
      return path;
    } catch {} // not there: the next one
  }
  return null;
}
