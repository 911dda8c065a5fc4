import type { Cause } from '../../records/answers/statements/reasons.js';

/** What each cause of a difference is called at the beginning of a sentence. */
export const CAUSE_NAMES: Readonly<Record<Cause, string>> = {
  centre: 'The centre of mass (static weight)',
  flare: 'Flare',
  inertia: 'RG and differentials',
};
