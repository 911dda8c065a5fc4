import { readFileSync, writeFileSync } from 'node:fs';
import { withReference } from './reference.js';

/* Rewrites the reference in README.md from the tables of commands and flags: npm run reference. */

const readme = new URL('../../README.md', import.meta.url);
writeFileSync(readme, withReference(readFileSync(readme, 'utf8')));
