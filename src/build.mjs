/*
 * Compiles `src` into `dist` where anything changed since it was last compiled, and says so on stderr while it
 * does; where nothing changed it is silent and quick. Plain JavaScript: it runs before anything is compiled.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const DIST = join(ROOT, 'dist');
/** What `dist` was compiled from; in `dist` itself, so that both come and go together. */
const STAMP = join(DIST, '.sources.json');
const BUILD_INFO = join(DIST, '.tsbuildinfo');

const typescript = findTypescript();
const sources = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => name.replaceAll('\\', '/'))
  .sort();
const wanted = { sources, hash: hashOf(sources) };
const found = readStamp();
const outputs = sources.filter((name) => !name.endsWith('.d.ts')).flatMap(compiled);
const isComplete = outputs.every((name) => existsSync(join(DIST, name)));
const hasStrays = filesIn(DIST).some((name) => !name.startsWith('.') && !outputs.includes(name));

if (!isComplete || hasStrays || found?.hash !== wanted.hash) {
  process.stderr.write('Building flarewise…\n');
  // no compiled file may outlive its source, and the compiler's memory must fit what is there
  if (!isComplete || hasStrays || found?.sources.join() !== sources.join())
    rmSync(DIST, { recursive: true, force: true });
  else rmSync(STAMP); // until it has been compiled whole
  const options = ['--incremental', '--tsBuildInfoFile', BUILD_INFO, '--noEmitOnError'];
  const { status } = spawnSync(process.execPath, [typescript.compiler, '-p', ROOT, ...options], {
    stdio: ['ignore', 2, 2], // stdout is for answers
  });
  if (status !== 0) process.exit(1);
  writeFileSync(STAMP, JSON.stringify(wanted));
}

/** Of all that decides what comes out: sources, how they are compiled, and by which compiler. */
function hashOf(names) {
  const hash = createHash('sha256').update(typescript.version);
  for (const name of ['tsconfig.json', ...names.map((each) => `src/${each}`)])
    hash.update(`\0${name}\0`).update(readFileSync(join(ROOT, name)));
  return hash.digest('hex');
}

/** What a source is compiled to, as seen from `dist`: the program, and its declarations for other programs. */
function compiled(name) {
  return ['.js', '.d.ts'].map((ending) => name.replace(/\.ts$/, ending));
}

/** Files of a folder and of those in it, as seen from it; none where there is no folder. */
function filesIn(folder) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/'));
}

function readStamp() {
  try {
    return JSON.parse(readFileSync(STAMP, 'utf8'));
  } catch {
    return null; // nothing was compiled, or not to its end
  }
}

function findTypescript() {
  try {
    const { resolve } = createRequire(import.meta.url);
    const { version } = JSON.parse(readFileSync(resolve('typescript/package.json'), 'utf8'));
    return { version, compiler: resolve('typescript/bin/tsc') };
  } catch {
    process.stderr.write('TypeScript is not installed. Run: npm ci --include=dev\n');
    process.exit(1);
  }
}
