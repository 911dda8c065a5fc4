import { readFileSync } from 'node:fs';

/** The version in package.json, two folders above this file in source and in the build alike. */
export const VERSION: string = JSON.parse(
  readFileSync(new URL('../../../package.json', import.meta.url), 'utf8'),
).version;
