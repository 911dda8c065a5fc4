import { z } from 'zod';
import { fromKeys } from '../../base/from-keys.js';
import { ballSchema } from '../schemas/ball.js';
import { bowlerSchema } from '../schemas/bowler.js';
import { laneSchema } from '../schemas/lane.js';
import { COMPARED_IDS, type ComparedId } from '../schemas/reaction-numbers.js';
import { wantSchema } from '../schemas/want.js';
import { BELIEVED_IDS, type BelievedId } from '../shared/beliefs.js';
import {
  flareStartSchema,
  legalitySchema,
  markSchema,
  psaSchema,
  undrilledSchema,
} from './parts/drilled-numbers.js';
import { learnedFromSchema } from './parts/learned-from.js';
import { pairedSchema, simulatedLayoutSchema, targetSchema } from './parts/simulated-layout.js';
import { assumptionSchema } from './statements/assumptions.js';
import { cautionSchema } from './statements/cautions.js';
import { compareRemarkSchema } from './statements/compare-remarks.js';
import { scatterSchema, visibilitySchema } from './statements/differences.js';
import type { Unworded } from './statements/statement-schema.js';

const n = z.number();

/** How many are compared. */
export const LEAST_COMPARED = 2;
export const MOST_COMPARED = 6;

/** What may vary; all else is the same. */
export const VARIED = ['layout', 'ball', 'finish'] as const;
export type Varied = (typeof VARIED)[number];

/** The numbers compared that practice believes something about. */
export const BELIEVED_COMPARED_IDS = COMPARED_IDS.filter((id): id is ComparedId & BelievedId =>
  BELIEVED_IDS.some((believed) => believed === id),
);

/** Differences in some numbers, each with how well a person could see it. */
const sizesOf = <K extends string>(ids: readonly K[]) =>
  z.strictObject({
    size: z.strictObject(fromKeys(ids, () => n)),
    visibility: z.strictObject(fromKeys(ids, () => visibilitySchema)).meta({
      description: 'Of each number by itself, beside the scatter of the bowler’s shots.',
    }),
  });

const allSizes = sizesOf(COMPARED_IDS);

/** How a row differs from the first one: means over the worlds in which both reach the pins. */
const fromFirstSchema = z.strictObject({
  weighed: allSizes,
  physics: allSizes,
  paired: pairedSchema.meta({ description: 'From the first, world by world.' }),
  practice: sizesOf(BELIEVED_COMPARED_IDS).meta({
    description:
      'What the beliefs of practice add, all of them in the middle of their sizes. Practice has none about the entry angle.',
  }),
  ahead: n.nullable().meta({
    description:
      'Share of worlds in which it comes nearer to the wish, a tie counting half; null without a wish.',
  }),
  aheadByPhysics: n.nullable().meta({ description: 'The same by physics alone.' }),
});

const compareRowSchema = simulatedLayoutSchema.extend({
  name: z.string().meta({ description: 'What tells it from the others: a layout, a ball, or a finish.' }),
  ball: z.string(),
  grit: n.meta({ description: 'Finish of the cover.' }),
  undrilled: undrilledSchema.meta({ description: 'Its ball as made.' }),
  psa: psaSchema,
  flareStart: flareStartSchema,
  marks: z.array(markSchema),
  legality: legalitySchema,
  fromFirst: fromFirstSchema.nullable().meta({ description: 'Null for the first.' }),
});

export const compareAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/compare/1'),
    version: z.string(),
    seed: n,
    inputs: z.strictObject({
      bowler: bowlerSchema,
      balls: z.array(ballSchema).min(1).max(MOST_COMPARED),
      lane: laneSchema,
      want: wantSchema,
    }),
    varies: z.enum(VARIED).meta({ description: 'What differs from row to row; all else is the same.' }),
    verdict: z.array(compareRemarkSchema).min(1),
    learned: learnedFromSchema.optional(),
    targets: z
      .array(targetSchema)
      .meta({ description: 'Of what layouts of all the balls attain; none without a wish.' }),
    rows: z.array(compareRowSchema).min(LEAST_COMPARED).max(MOST_COMPARED),
    worlds: n.meta({ description: 'In how many simulated tries each was rolled; all met the same ones.' }),
    scatter: scatterSchema,
    assumptions: z.array(assumptionSchema),
    cautions: z.array(cautionSchema),
  })
  .meta({ title: 'Comparison' });

export type CompareAnswer = Unworded<z.infer<typeof compareAnswerSchema>>;
export type CompareRow = Unworded<z.infer<typeof compareRowSchema>>;
export type FromFirst = Unworded<z.infer<typeof fromFirstSchema>>;
