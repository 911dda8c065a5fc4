import { OUNCES } from './flag-table.js';
import { oneOf } from './flags.js';

/** What `--ounce` takes an ounce of static weight to be; moment unless said otherwise. */
export const ounceFlag = (given = 'moment'): (typeof OUNCES)[number] =>
  oneOf(
    '--ounce',
    given,
    OUNCES,
    'moment: weight times distance over the radius; halves: one half of the ball less the other.',
  );
