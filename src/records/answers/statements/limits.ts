import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { LEVER_KINDS } from './ids.js';
import { objectionSchema } from './objections.js';
import { n, wishReading } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** Wishes that the first layout misses, and by how much: its number less what was aimed for. */
const missed = z.array(z.strictObject({ reading: wishReading, by: n, shareOfRange: n }));

/** What holds a result back: a constraint, the ball, the lane. */
const shapes = {
  'layout-moves-little': {
    reading: wishReading,
    low: n,
    high: n,
    /** From the 5th to the 95th percentile over worlds. */
    spread: n,
    /** What moves the number farther than all layouts do, by this answer's own trials, and how far. */
    movedMoreBy: z.array(z.strictObject({ kind: z.enum(LEVER_KINDS), by: n })),
  },
  /** Of a layout that comes near to the wishes in most simulated tries; another meets them in one undisturbed shot. */
  'wish-missed': { missed },
  /** No layout that was rolled meets all wishes. */
  'wishes-do-not-join': { missed },
  'many-set-aside': { count: n, why: objectionSchema },
  'slides-at-pins': {},
} as const;

export const limitSchema = statementSchema('limit', shapes);
export type Limits = TopicOf<typeof shapes>;
export type Limit = StatementOf<Limits>;
