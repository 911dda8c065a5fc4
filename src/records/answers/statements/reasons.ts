import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { n, wishReading } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

const differentials = { undrilledIn: n, drilledIn: n };
const withAngle = { ...differentials, byDrillingAngleIn: n };
const twoWays = z.strictObject({ asDrilled: n, balanced: n });

/** Why a layout does what it does. */
const shapes = {
  'meets-wish': { reading: wishReading, step: n.nullable(), found: n, wanted: n, usual: n },
  'flare-and-differential': {
    ...differentials,
    flareIn: n,
    usualFlareIn: n,
    /** What flare has to do with where the hook starts; null where it is not the cause. */
    grips: z.enum(['more', 'less']).nullable(),
    /** Where flare is greatest, when the pin lies near it. */
    peakIn: n.nullable(),
  },
  'offset-of-centre': { hookStartFt: twoWays.nullable(), totalHookBoards: twoWays.nullable() },
  'intermediate-without-mark': differentials,
  'intermediate-of-many-cores': differentials,
  'intermediate-of-plain-core': withAngle,
  'intermediate-of-lobed-core': withAngle,
  'intermediate-of-own-core': withAngle,
  'intermediate-of-asymmetric-core': withAngle,
  'shares-of-score': { total: n, drillingAngle: n.nullable(), pinToPap: n, valAngle: n },
  'next-layout': {
    layout: z.string(),
    /** Points of mean score. */
    behind: n,
    mostOf: z.strictObject({ reading: wishReading, next: n, found: n }).nullable(),
  },
} as const;

export const reasonSchema = statementSchema('reason', shapes);
export type Reasons = TopicOf<typeof shapes>;
export type Reason = StatementOf<Reasons>;
