import { posix } from 'node:path';
import { FOLDERS, type Folder, maySee } from './folders.js';

/** Everything but paths. */
const PACKAGES = ['*', '!./**', '!../**', '!.*'];

/** The linter's overrides that forbid every import of a folder that the list of folders does not allow. */
export const importRules = (): readonly object[] =>
  FOLDERS.map((folder) => ({
    includes: [`src/${folder.path}/*.ts`],
    linter: {
      rules: {
        style: { noRestrictedImports: { level: 'error', options: { patterns: patternsOf(folder) } } },
      },
    },
  }));

const patternsOf = (folder: Folder): readonly object[] => [
  {
    group: FOLDERS.filter((other) => !maySee(folder, other)).map((other) => `${pathTo(other, folder)}/*.js`),
    message: `src/${folder.path} may not import this folder: see tests/house/folders.ts`,
  },
  ...(folder.isPure
    ? [{ group: PACKAGES, message: `src/${folder.path} imports no package and does no I/O` }]
    : []),
];

function pathTo(to: Folder, from: Folder): string {
  const path = posix.relative(from.path, to.path);
  return path.startsWith('.') ? path : `./${path}`;
}
