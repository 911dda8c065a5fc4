import type { Excavation } from '../../src/ball/drill/excavation.js';
import type { Moments } from '../../src/ball/mass/mass-properties.js';
import { uniformMoments } from '../../src/ball/solid/stretch.js';

/** What an excavation takes out of matter of density one. */
export const takenOut = ({ stretches }: Excavation): Moments => uniformMoments(stretches, 1);
