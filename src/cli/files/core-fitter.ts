import { join } from 'node:path';
import { cachedFitter } from '../../prepare/cached-fitter.js';
import type { CoreFitter } from '../../prepare/fit-cores.js';
import type { Terminal } from '../terminal/terminal.js';
import { platformFolders } from './platform-folders.js';

/**
 * What fits cores to published numbers: remembering them where the platform wants what can be made again
 * (XDG and its counterparts), or in the folder that `FLAREWISE_CACHE` names; `off` remembers nothing.
 */
export function coreFitter(terminal: Pick<Terminal, 'env'>): CoreFitter | undefined {
  const folder = cacheFolder(terminal);
  return folder === undefined ? undefined : cachedFitter(folder);
}

/** The folder in which fitted cores are remembered; undefined when nothing is to be. */
export const cacheFolder = ({ env }: Pick<Terminal, 'env'>): string | undefined =>
  env.FLAREWISE_CACHE === 'off' ? undefined : join(env.FLAREWISE_CACHE || platformFolders().cache, 'cores');
