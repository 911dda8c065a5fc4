import type { Cause } from '../../records/answers/statements/ids.js';

/** What each cause of a difference is called. */
export const CAUSE_NAMES: Readonly<Record<Cause, string>> = {
  centre: 'the centre of mass (static weight)',
  flare: 'flare',
  inertia: 'RG and differentials',
};
