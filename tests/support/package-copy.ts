import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Parts of the package that a command needs besides the packages it depends on. */
const PARTS = ['dist', 'data', 'models', 'shared', 'package.json'];

/** The built package in a folder of its own, with some of the packages it depends on left out, and some that do not load here. */
export function packageCopy({ without = [] as readonly string[], broken = [] as readonly string[] } = {}) {
  const path = mkdtempSync(join(tmpdir(), 'flarewise-'));
  for (const part of PARTS) cpSync(join(ROOT, part), join(path, part), { recursive: true });
  for (const name of installed().filter((each) => !without.includes(each) && !broken.includes(each))) {
    const link = join(path, 'node_modules', name);
    mkdirSync(dirname(link), { recursive: true });
    symlinkSync(join(ROOT, 'node_modules', name), link, 'junction');
  }
  for (const name of broken) {
    const folder = join(path, 'node_modules', name);
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, 'package.json'), JSON.stringify({ name, main: 'index.js' }));
    writeFileSync(join(folder, 'index.js'), "throw new Error('native.node: invalid ELF header');\n");
  }
  return {
    path,
    main: join(path, 'dist/cli/main.js'),
    remove: () => rmSync(path, { recursive: true, force: true }),
  };
}

/** Names of all packages in `node_modules`, scoped ones with their scope. */
const installed = (): readonly string[] =>
  readdirSync(join(ROOT, 'node_modules'))
    .filter((name) => !name.startsWith('.'))
    .flatMap((name) =>
      name.startsWith('@')
        ? readdirSync(join(ROOT, 'node_modules', name)).map((inner) => `${name}/${inner}`)
        : [name],
    );
