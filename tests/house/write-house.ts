import { readFileSync, writeFileSync } from 'node:fs';
import { lintSettings, withMaps } from './written.js';

const ROOT = new URL('../../', import.meta.url);

for (const [name, written] of [
  ['.biome.jsonc', lintSettings],
  ['DEVELOPERS.md', withMaps],
] as const) {
  const file = new URL(name, ROOT);
  writeFileSync(file, written(readFileSync(file, 'utf8')));
}
