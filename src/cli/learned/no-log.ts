import { InputError } from '../../base/errors.js';

/** Said where there is nothing to learn from, or to forget. */
export const noLog = (bowler: string): InputError =>
  new InputError('no-log', {
    field: 'the log',
    rule: 'must hold a night of this bowler that can be learned from',
    got: `none of ${bowler} by these flags`,
    hint: 'flarewise log lists what is kept, and flarewise log ID 20 14 8 17 --lane house-easy keeps a shot of a ball that is on the shelf with its lane.',
  });
