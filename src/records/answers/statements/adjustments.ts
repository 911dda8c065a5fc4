import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** What can be changed where a drilled ball does not do what was wanted: from what costs least to what cannot be undone. */
const shapes = {
  /** Boards farther inside where positive; `laydownBoard` and `arrowsBoard` are the line that results. */
  'move-on-lane': {
    hand: z.enum(['right', 'left']),
    feetBoards: n,
    targetBoards: n,
    laydownBoard: n,
    arrowsBoard: n,
  },
  'another-drilled-ball': { id: z.string(), ball: z.string(), layout: z.string() },
  refinish: { grit: n, insteadOf: n },
  'speed-by': { mph: n },
  'plug-and-redrill': { layout: z.string() },
} as const;

export const adjustmentSchema = statementSchema('adjustment', shapes);
export type Adjustments = TopicOf<typeof shapes>;
export type Adjustment = StatementOf<Adjustments>;

export type RemedyKind = Adjustment['code'];

/** In the order of what they cost. */
export const REMEDY_KINDS = Object.keys(shapes) as readonly RemedyKind[];
