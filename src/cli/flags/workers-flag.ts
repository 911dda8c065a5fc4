import { MOST_WORKERS } from '../../base/search-limits.js';
import { wholeNumber } from './flags.js';

/** Threads to search with: those of `--workers`, else one for each core. */
export const workersFlag = (given: string | undefined, cores: number): number =>
  given === undefined
    ? cores
    : wholeNumber(
        '--workers',
        given,
        [1, MOST_WORKERS],
        '1 searches without further threads; the answer is the same.',
      );
