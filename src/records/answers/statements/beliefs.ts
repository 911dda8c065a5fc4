import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { BELIEF_QUANTITIES, BELIEVED_IDS } from '../../shared/beliefs.js';
import { n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** What a belief of practice says, and what physics finds when its quantity alone is moved. */
const shapes = {
  'belief-beside-physics': {
    id: z.string(),
    says: z.string(),
    quantity: z.enum(BELIEF_QUANTITIES),
    from: n,
    to: n,
    /** The reaction number it is about; its name carries the unit. */
    reading: z.enum(BELIEVED_IDS),
    /** What practice adds at most, and what it adds at least, from one end of the quantity's range to the other. */
    least: n,
    most: n,
    standing: z.enum(['published', 'common-practice']),
    /** By physics, mean over worlds; null where the quantity cannot be moved alone. */
    byPhysics: n.nullable(),
    /** Whether physics finds what the belief says: so, the opposite, or nothing that shows beside the scatter of shots. */
    verdict: z.enum(['agrees', 'disagrees', 'hardly-shows', 'not-tried']),
    worlds: n,
  },
} as const;

export const beliefSchema = statementSchema('belief', shapes);
export type BeliefTopic = TopicOf<typeof shapes>;
export type BeliefFinding = StatementOf<BeliefTopic>;
