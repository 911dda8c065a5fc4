import { readFileSync, writeFileSync } from 'node:fs';
import { withFigures } from './page-figures.js';
import { withReference } from './reference.js';

/* Rewrites the README's reference from the tables of commands and flags, and the figures of both pages: npm run reference. */

const ROOT = new URL('../../', import.meta.url);

for (const [name, written] of [
  ['README.md', (page: string) => withFigures(withReference(page))],
  ['DEVELOPERS.md', withFigures],
] as const) {
  const file = new URL(name, ROOT);
  writeFileSync(file, written(readFileSync(file, 'utf8')));
}
