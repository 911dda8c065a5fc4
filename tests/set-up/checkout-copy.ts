import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** What of a checkout its scripts read. */
const PARTS = [
  'src',
  'tests',
  'data',
  'models',
  'shared',
  '.biome.jsonc',
  '.gitignore',
  '.npmrc',
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'package-lock.json',
  'package.json',
  'tsconfig.json',
];

/**
 * A checkout in an empty folder, with nothing built, kept or remembered; the packages it depends on are this one's.
 *
 * @param watched  files of which one can ask later whether they changed
 */
export function checkoutCopy(watched: readonly string[]) {
  const path = mkdtempSync(join(tmpdir(), 'flarewise-checkout-'));
  for (const part of PARTS) cpSync(join(ROOT, part), join(path, part), { recursive: true });
  const read = (file: string): string => readFileSync(join(path, file), 'latin1');
  const before = new Map(watched.map((file) => [file, read(file)]));
  symlinkSync(join(ROOT, 'node_modules'), join(path, 'node_modules'), 'junction');
  return {
    path,
    /** Whether a watched file still is as it was copied. */
    isUnchanged: (file: string): boolean => before.get(file) === read(file),
    remove: () => rmSync(path, { recursive: true, force: true }),
  };
}
