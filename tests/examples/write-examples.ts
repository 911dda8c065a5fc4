import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { RecommendAnswer } from '../../src/records/answers/answer.js';
import { pngFile } from '../../src/report/scene/png-file.js';
import { startChromium } from '../browser/chromium.js';
import { visit } from '../browser/visit.js';
import { exampleReport, exampleScreen, exampleSheet, exampleSources } from './examples.js';
import { withScreen } from './readme-screen.js';

/* Writes shared/examples and the README's first screen, from the built program's answer for the demo: npm run examples. */

const root = fileURLToPath(new URL('../../', import.meta.url));
const examples = join(root, 'shared/examples');

const answer: RecommendAnswer = JSON.parse(
  execFileSync(process.execPath, [join(root, 'dist/cli/main.js'), '--json'], {
    stdio: ['ignore', 'pipe', 'ignore'],
    env: { ...process.env, FLAREWISE_HOME: join(examples, 'no-such-home') },
  }).toString(),
);

const screen = exampleScreen(answer);
writeFileSync(join(examples, 'first-screen.txt'), screen);
const readme = join(root, 'README.md');
writeFileSync(readme, withScreen(readFileSync(readme, 'utf8'), screen));

/** Dots per inch of the sheet: text of its size can be read, and the file stays small. */
const SHEET_DPI = 84;
const { page: sheet, typeface } = await exampleSheet(answer);
writeFileSync(join(examples, 'sheet.png'), await pngFile(sheet, typeface, SHEET_DPI));

const folder = mkdtempSync(join(tmpdir(), 'flarewise-examples-'));
const browser = await startChromium();
try {
  const file = join(folder, 'report.html');
  writeFileSync(file, exampleReport(answer));
  const picture = await visit(browser, file, { width: 1000, scheme: 'light' }, ({ page }) =>
    page.screenshot(),
  );
  writeFileSync(join(examples, 'report.png'), picture);
} finally {
  await browser.close();
  rmSync(folder, { recursive: true });
}

writeFileSync(join(examples, 'sources.json'), `${JSON.stringify(await exampleSources(answer), null, 2)}\n`);
