import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { scratchFolder } from '../support/demo-files.js';
import { ENV, MAIN } from '../support/run-cli.js';

/* What a command loads, as a loader hook sees it: a rule on modules holds on any machine, one on time does not. */

const HOOK = `import { writeSync } from 'node:fs';
export async function load(url, context, next) { writeSync(2, 'loads ' + url + '\\n'); return next(url, context); }`;
const REGISTER = `import { register } from 'node:module'; register(${JSON.stringify(`data:text/javascript,${encodeURIComponent(HOOK)}`)});`;

/** Files of the project and packages that a command line loads. @param entry  what is run; the program when left out */
function loadedBy(args: readonly string[], entry = MAIN): readonly string[] {
  const hooked = ['--import', `data:text/javascript,${encodeURIComponent(REGISTER)}`, entry, ...args];
  const { status, stderr } = spawnSync(process.execPath, hooked, { env: ENV, encoding: 'utf8' });
  expect(status, stderr).toBe(0);
  return [...stderr.matchAll(/^loads file:\S*\/(dist|node_modules)\/(\S+)$/gm)].map(
    ([, where, path]) => `${where}/${path}`,
  );
}

test('--help loads one package, and of the code only what says the help', () => {
  const loaded = loadedBy(['--help']);
  const packages = new Set(loaded.flatMap((path) => /^node_modules\/([^/]+)/.exec(path)?.[1] ?? []));
  expect([...packages]).toEqual(['commander']);
  expect(loaded.filter((path) => /^dist\/(report|interview|motion|ball|regression)\//.test(path))).toEqual(
    [],
  );
  expect(loaded.length).toBeLessThanOrEqual(20);
  expect(loaded).toContain('dist/cli/command-table.js'); // else nothing was watched
});

test.each([
  { args: ['lane', '--lane', 'house-easy'] },
  { args: ['explain', 'flare'] },
  { args: ['drilled', '--ball', 'plain-medium', '--bowler', 'average-right', '--layout', '70 x 4 1/2 x 30'] },
])('$args.0 loads no ONNX runtime and no prompts', ({ args }) => {
  const loaded = loadedBy(args);
  expect(loaded.some((path) => path.startsWith('dist/report/'))).toBe(true);
  expect(loaded.filter((path) => /onnxruntime|^dist\/(interview|regression)\//.test(path))).toEqual([]);
});

test('a command that has all its flags loads no prompts', () => {
  const records = ['--bowler', 'average-right', '--ball', 'plain-medium'];
  const loaded = loadedBy(['sheet', ...records, '--layout', '70 x 4 1/2 x 30']);
  expect(loaded).toContain('dist/cli/answering/with-records.js'); // which asks where flags are left out
  expect(loaded.filter((path) => /^node_modules\/@?inquirer/.test(path))).toEqual([]);
});

test('a sheet as SVG loads no PNG library', () => {
  const folder = scratchFolder();
  const layout = ['--bowler', 'average-right', '--ball', 'plain-medium', '--layout', '70 x 4 1/2 x 30'];
  const loaded = loadedBy(['sheet', ...layout, '--out', `${folder.path}/sheet.svg`]);
  expect(loaded).toContain('dist/report/scene/svg-file.js');
  expect(loaded.filter((path) => path.includes('resvg'))).toEqual([]);
  folder.remove();
});

test('a thread that rolls shots loads no package', () => {
  const loaded = loadedBy([], MAIN.replace('cli/main.js', 'simulate/shot-worker.js'));
  expect(loaded).toContain('dist/simulate/simulator.js');
  expect(loaded.filter((path) => path.startsWith('node_modules/'))).toEqual([]);
});
