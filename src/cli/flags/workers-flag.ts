import { wholeNumber } from './flags.js';

const MOST_WORKERS = 64;

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
