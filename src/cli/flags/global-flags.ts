import type { Terminal } from '../terminal/terminal.js';
import type { GlobalOptions } from './options.js';
import { unitsFlag } from './units-flag.js';
import { workersFlag } from './workers-flag.js';

/** Readers of the flags that every command takes, so that a bad one is refused even where it would change nothing. */
export const globalFlags = (options: GlobalOptions, { cores }: Pick<Terminal, 'cores'>) => ({
  units: () => unitsFlag(options.units),
  workers: () => workersFlag(options.workers, cores),
});
