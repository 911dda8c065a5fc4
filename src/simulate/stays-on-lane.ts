import type { Shot } from '../motion/shot/shot.js';
import { Refusal } from '../records/refusals/refusal.js';

/** How a shot that could be computed ended. */
export type Ending = Exclude<Shot['outcome'], 'hops' | 'invalid'>;

/**
 * The outcome of a nominal shot that is to be shown to a person.
 *
 * @throws {Refusal} `ball-would-hop` when the lane would have to pull the ball down, so that there is no shot to show
 */
export function staysOnLane(outcome: Shot['outcome']): Ending {
  if (outcome !== 'hops' && outcome !== 'invalid') return outcome;
  throw new Refusal([{ code: 'ball-would-hop', params: {} }]);
}
