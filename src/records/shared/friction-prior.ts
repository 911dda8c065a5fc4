import { loadFrictionPrior } from './shared-data.js';

/** What is known of friction, read once. */
export const FRICTION_PRIOR = loadFrictionPrior();
