import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

let folder: string;
/** A project of two files, compiled: made once, and copied for each test. */
const project = mkdtempSync(join(tmpdir(), 'flarewise-'));
beforeAll(() => {
  folder = project;
  for (const part of ['src/build.mjs', 'tsconfig.json'])
    cpSync(join(ROOT, part), join(folder, part), { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'), 'junction');
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  mkdirSync(join(folder, 'src/inner'), { recursive: true });
  write('one.ts', "export { two } from './inner/two.js';");
  write('inner/two.ts', 'export const two: number = 2;');
  expect(build()).toEqual(BUILT);
});
afterAll(() => rmSync(project, { recursive: true }));
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'flarewise-'));
  cpSync(project, folder, { recursive: true, verbatimSymlinks: true });
});
afterEach(() => rmSync(folder, { recursive: true }));

const write = (name: string, text: string): void => writeFileSync(join(folder, 'src', name), text);
const compiled = (name: string): string => readFileSync(join(folder, 'dist', name), 'utf8');

function build() {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(folder, 'src/build.mjs')], {
    encoding: 'utf8',
  });
  expect(stdout).toBe(''); // it is for answers
  return { status, told: stderr };
}

const BUILT = { status: 0, told: 'Building flarewise…\n' };
const NOTHING_TO_DO = { status: 0, told: '' };

test('compiles once, says so on stderr, and then has nothing to do', () => {
  rmSync(join(folder, 'dist'), { recursive: true });
  expect(build()).toEqual(BUILT);
  expect(compiled('inner/two.js')).toContain('two = 2');
  const { mtimeMs } = statSync(join(folder, 'dist/one.js'));
  expect(build()).toEqual(NOTHING_TO_DO);
  expect(statSync(join(folder, 'dist/one.js')).mtimeMs).toBe(mtimeMs);
});

test('a changed source is compiled again, even with its old date', () => {
  const path = join(folder, 'src/inner/two.ts');
  const { atime, mtime } = statSync(path);
  write('inner/two.ts', 'export const two: number = 3;');
  utimesSync(path, atime, mtime);
  expect(build()).toEqual(BUILT);
  expect(compiled('inner/two.js')).toContain('two = 3');
});

test('a new date alone is no change', () => {
  utimesSync(join(folder, 'src/one.ts'), new Date(), new Date(Date.now() + 60_000));
  expect(build()).toEqual(NOTHING_TO_DO);
});

test('a compiled file does not outlive the renaming or removal of its source', () => {
  renameSync(join(folder, 'src/inner/two.ts'), join(folder, 'src/inner/deux.ts'));
  write('one.ts', "export { two } from './inner/deux.js';");
  expect(build()).toEqual(BUILT);
  expect(existsSync(join(folder, 'dist/inner/two.js'))).toBe(false);
  expect(existsSync(join(folder, 'dist/inner/deux.js'))).toBe(true);

  write('one.ts', 'export const one = 1;');
  rmSync(join(folder, 'src/inner'), { recursive: true });
  expect(build()).toEqual(BUILT);
  expect(existsSync(join(folder, 'dist/inner'))).toBe(false);
});

test('a file in dist that no source makes is taken away, though nothing else has changed', () => {
  for (const stray of ['stray.js', 'inner/stray.d.ts'])
    writeFileSync(join(folder, 'dist', stray), '// stray');
  expect(build()).toEqual(BUILT);
  expect(readdirSync(join(folder, 'dist/inner')).sort()).toEqual(['two.d.ts', 'two.js']);
  expect(existsSync(join(folder, 'dist/stray.js'))).toBe(false);
  expect(build()).toEqual(NOTHING_TO_DO);
});

test('declarations are made beside the program', () => {
  expect(compiled('inner/two.d.ts')).toBe('export declare const two: number;\n');
});

test.each([
  'dist',
  'dist/inner',
  'dist/one.js',
  'dist/inner/two.d.ts',
  'dist/.sources.json',
  'dist/.tsbuildinfo',
])('what is lost of it comes back: %s', (lost) => {
  rmSync(join(folder, lost), { recursive: true });
  expect(build().status).toBe(0);
  expect(compiled('one.js')).toContain('two');
  expect(compiled('inner/two.js')).toContain('two');
  expect(build()).toEqual(NOTHING_TO_DO);
});

test('a fault of the source is shown on stderr, fails, and is found again until it is mended', () => {
  write('inner/two.ts', "export const two: number = 'two';");
  for (let time = 1; time <= 2; time++) {
    const { status, told } = build();
    expect(status).toBe(1);
    expect(told).toContain('src/inner/two.ts(1,14): error TS2322');
  }
  write('inner/two.ts', 'export const two: number = 22;');
  expect(build()).toEqual(BUILT);
  expect(compiled('inner/two.js')).toContain('22');
});

test('without TypeScript it says how to get it', () => {
  rmSync(join(folder, 'dist'), { recursive: true });
  rmSync(join(folder, 'node_modules'));
  expect(build()).toEqual({ status: 1, told: 'TypeScript is not installed. Run: npm ci --include=dev\n' });
});
