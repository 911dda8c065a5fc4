import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** Why a layout is set aside; worded as a clause, to stand after "because". */
const shapes = {
  'pin-near-hole': {},
  'marker-near-hole': {},
  'static-weight-over-limit': { ruleSet: z.string() },
  'ball-goes-into-gutter': {},
  /** Of one shown shot that reaches the pins: released with the ball turned half a turn farther about its axis, it would not. */
  'gutter-half-a-turn-on': {},
  'ball-stops-short': {},
  'no-line-to-pocket': {},
  'ring-near-hole': {},
  /** The same of one shown layout: which hole, and how far its edge is from the nearest ring; negative where that runs over it. */
  'ring-at-hole': { hole: z.string(), clearanceIn: n, leastIn: n },
} as const;

export const objectionSchema = statementSchema('objection', shapes);
export type Objections = TopicOf<typeof shapes>;
export type Objection = StatementOf<Objections>;
