import { z } from 'zod';
import { leverSchema } from './changes.js';
import { sizesSchema } from './differences.js';
import { LEVER_KINDS } from './ids.js';
import { n, wishReading } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** What moves a reaction: the layout, or another lever. */
export const MOVER_KINDS = ['layout', ...LEVER_KINDS] as const;
/** What was tried; what moves the wished numbers farthest, beside the scatter of shots, comes first. */
const ways = z.array(
  z.strictObject({
    kind: z.enum(MOVER_KINDS),
    what: z.union([z.strictObject({ layout: z.string() }), z.strictObject({ lever: leverSchema })]),
    size: sizesSchema.meta({
      description:
        'Of a layout, from the usual one, both voices weighed; of a lever, from the best layout, by physics.',
    }),
    overScatter: n.meta({
      description: 'The greatest of the wished numbers over the standard deviation of the bowler’s shots.',
    }),
    gain: n.meta({
      description: 'Points of score in the nominal world; below 0 it moves away from the wish.',
    }),
  }),
);

const moves = { readings: z.array(wishReading), ways };
const pairShapes = { 'moves-most': moves, 'nothing-moves-much': moves } as const;

const bagShapes = {
  'balls-do-the-same': { one: z.string(), other: z.string() },
  'weights-differ': { lightestLb: n, heaviestLb: n },
  'gap-between-balls': { below: z.string(), belowBoards: n, above: z.string(), aboveBoards: n },
} as const;

export const pairRemarkSchema = statementSchema('pair-remark', pairShapes);
export type PairRemarks = TopicOf<typeof pairShapes>;
export const bagRemarkSchema = statementSchema('bag-remark', bagShapes);
export type BagRemarks = TopicOf<typeof bagShapes>;
