import { InputError } from '../base/errors.js';
import type { Shot } from '../motion/shot/shot.js';

/** How a shot that was computed ends. */
export type Ending = Exclude<Shot['outcome'], 'hops' | 'invalid'>;

/**
 * The outcome of a nominal shot that is to be told to a person.
 *
 * @throws {InputError} `ball-would-hop` when the lane would have to pull the ball down: there is no shot to tell of
 */
export function staysOnLane(outcome: Shot['outcome']): Ending {
  if (outcome !== 'hops' && outcome !== 'invalid') return outcome;
  throw new InputError('ball-would-hop', {
    field: 'bowler.revRateRpm',
    rule: 'must be low enough for the ball to stay on the lane, with its centre of mass as far off its centre as it is',
    got: 'a shot in which the ball would hop at every turn',
    hint: 'Check the rev rate, and the top weight and pin-to-CG of the ball.',
  });
}
