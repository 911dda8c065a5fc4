import { readFileSync } from 'node:fs';

/** A package that an installation brings along, and under which licence. */
interface Licensed {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** Whether it is needed only to work on flarewise. */
  readonly dev: boolean;
}

interface Locked {
  readonly version: string;
  readonly dev?: boolean;
  readonly devOptional?: boolean;
  readonly license?: string;
}

const ROOT = new URL('../../', import.meta.url);
const read = (path: string): unknown => JSON.parse(readFileSync(new URL(path, ROOT), 'utf8'));

/** All packages of the lock file, by name; licences as the packages themselves say, and else as the lock file has them. */
export const licences = (): readonly Licensed[] =>
  Object.entries((read('package-lock.json') as { packages: Record<string, Locked> }).packages)
    .filter(([path]) => path !== '')
    .map(([path, { version, dev, devOptional, license }]) => ({
      name: path.replace(/^.*node_modules\//, ''),
      version,
      licence: ownLicence(path) ?? license ?? 'none said',
      dev: Boolean(dev || devOptional),
    }));

/** MIT, for a package that says so only in its file LICENSE. */
const inItsFile = (path: string): string | null =>
  /^(The )?MIT License/i.test(readFileSync(new URL(`${path}/LICENSE`, ROOT), 'utf8').trim()) ? 'MIT' : null;

/** What the package.json of an installed package says; null for one that is not installed on this machine. */
function ownLicence(path: string): string | null {
  try {
    const { license } = read(`${path}/package.json`) as { license?: string | { type?: string } };
    return (typeof license === 'object' ? license.type : license) ?? inItsFile(path);
  } catch {
    return null;
  }
}
