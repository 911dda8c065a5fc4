import type { Terminal } from '../terminal/terminal.js';
import { platformFolders } from './platform-folders.js';

/**
 * The folder for what a person keeps: where the platform wants such data (XDG and its counterparts), or
 * `FLAREWISE_HOME` when that is set.
 */
export const homeOf = ({ env }: Pick<Terminal, 'env'>): string =>
  env.FLAREWISE_HOME || platformFolders().data;
