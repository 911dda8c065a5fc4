import { z } from 'zod';
import { leverSchema } from './changes.js';
import { n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** What was tried in place of the usual middle layout, the greatest gain of score first. */
const ways = z.array(
  z.union([z.strictObject({ layout: z.string(), gain: n }), z.strictObject({ lever: leverSchema, gain: n })]),
);

const pairShapes = { 'something-helps': { ways }, 'nothing-helps-much': { ways } } as const;

const bagShapes = {
  'balls-do-the-same': { one: z.string(), other: z.string() },
  'gap-between-balls': { below: z.string(), belowBoards: n, above: z.string(), aboveBoards: n },
} as const;

export const pairRemarkSchema = statementSchema('pair-remark', pairShapes);
export type PairRemarks = TopicOf<typeof pairShapes>;
export const bagRemarkSchema = statementSchema('bag-remark', bagShapes);
export type BagRemarks = TopicOf<typeof bagShapes>;
