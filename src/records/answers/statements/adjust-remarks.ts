import { z } from 'zod';
import { fromKeys } from '../../../base/from-keys.js';
import type { StatementOf } from '../../../base/statement.js';
import { LANE_IDS } from '../../schemas/reaction-numbers.js';
import { adjustmentSchema } from './adjustments.js';
import { logReading, n, wishReading } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

const amount = z.strictObject({ reading: wishReading, by: n });

/** What the log says that the release or the lane does, beside what was stated of them. */
const explains = { shots: n, reading: wishReading, stated: n, learned: n, share: n };

/** What to do where a drilled ball does not do what was wanted, and what was taken into account. */
const shapes = {
  'reads-off': { of: logReading, by: n },
  /** By as many feet longer. */
  'pattern-off': { by: n, lane: z.string() },
  'release-explains': explains,
  'lane-explains': explains,
  'does-it-already': {},
  'try-first': {
    remedy: adjustmentSchema,
    effect: z.strictObject(fromKeys(LANE_IDS, () => n)),
    left: z.array(amount),
    nearer: n,
    worlds: n,
  },
  /** Nothing that can be undone helps. */
  'only-redrill': { remedy: adjustmentSchema, left: z.array(amount) },
  'none-helps': { tried: n },
  'no-line-now': {},
  'not-as-simulated': { reading: wishReading, did: n, simulated: n },
  'learned-used': { shots: n, reading: wishReading, before: n, after: n },
} as const;

export const adjustRemarkSchema = statementSchema('adjust-remark', shapes);
export type AdjustRemarks = TopicOf<typeof shapes>;
export type AdjustRemark = StatementOf<AdjustRemarks>;
