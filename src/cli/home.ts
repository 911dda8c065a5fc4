import { platformFolders } from './platform-folders.js';
import type { Terminal } from './terminal.js';

/**
 * The folder for what a person keeps: where the platform wants such data (XDG and its counterparts), or
 * `FLAREWISE_HOME` when that is set.
 */
export const homeOf = ({ env }: Pick<Terminal, 'env'>): string =>
  env.FLAREWISE_HOME || platformFolders().data;
