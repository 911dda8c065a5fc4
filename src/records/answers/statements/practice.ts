import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { COMPARED_IDS } from '../../schemas/reaction-numbers.js';
import { n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** A belief, and what the engine finds of it with the first layout; names of numbers carry their units. */
const found = {
  /** The layout number that is moved, the others staying. */
  number: z.enum(['drillingAngleDeg', 'pinToPapIn', 'valAngleDeg']),
  from: n,
  to: n,
  /** The reaction number that grows, by the belief. */
  reading: z.enum(COMPARED_IDS),
  change: n.meta({ description: 'In the nominal world.' }),
  holdsIn: n.meta({ description: 'Share of the worlds in which the belief holds.' }),
  worlds: n,
  verdict: z.enum(['agrees', 'disagrees', 'depends', 'hardly-shows']),
};

/** What common practice expects of a number of the layout. */
const shapes = {
  'drilling-angle-hooks-later': found,
  'val-angle-turns-sharper': found,
  'pin-to-pap-flares-most': found,
  'flare-hooks-more': found,
} as const;

export const practiceSchema = statementSchema('practice', shapes);
export type Practices = TopicOf<typeof shapes>;
export type PracticeFinding = StatementOf<Practices>;
