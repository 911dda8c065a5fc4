import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { LANE_IDS } from '../../schemas/reaction-numbers.js';
import { visibilitySchema } from './differences.js';
import { legalityFindingSchema } from './legality-findings.js';
import { objectionSchema } from './objections.js';
import { n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** One that looks different on the lane: by which numbers, and how much of each. */
const other = z.strictObject({
  name: z.string(),
  visibility: visibilitySchema,
  /** What could be seen; none where nothing could. */
  seen: z.array(z.strictObject({ reading: z.enum(LANE_IDS), size: n })),
  /** Whether physics alone finds nothing that could be seen. */
  onlyByPractice: z.boolean(),
});

/** How two and more stand to one another; names are those of the answer's rows. */
const shapes = {
  'not-to-be-drilled': {
    barred: z.array(
      z.strictObject({ name: z.string(), why: z.union([objectionSchema, legalityFindingSchema]) }),
    ),
  },
  'all-look-alike': { names: z.array(z.string()) },
  'looks-beside-first': { first: z.string(), others: z.array(other) },
  'comes-nearest': { name: z.string(), over: z.string(), ahead: n, worlds: n },
  'none-comes-nearer': { name: z.string(), over: z.string(), ahead: n, worlds: n },
} as const;

export const compareRemarkSchema = statementSchema('compare-remark', shapes);
export type CompareRemarks = TopicOf<typeof shapes>;
export type CompareRemark = StatementOf<CompareRemarks>;
