import { z } from 'zod';
import { fromKeys } from '../../base/from-keys.js';
import { ballSchema } from '../schemas/ball.js';
import { bowlerSchema } from '../schemas/bowler.js';
import { laneSchema } from '../schemas/lane.js';
import { COMPARED_IDS, WISHED_IDS, WISHES } from '../schemas/reaction-numbers.js';
import { drilledSchema, legalitySchema, markSchema, redrilledSchema } from './parts/drilled-numbers.js';
import { layoutAnswerSchema } from './parts/layout-answer.js';
import { learnedFromSchema } from './parts/learned-from.js';
import { reactionSchema } from './parts/shot-answer.js';
import { adjustRemarkSchema } from './statements/adjust-remarks.js';
import { adjustmentSchema } from './statements/adjustments.js';
import { assumptionSchema } from './statements/assumptions.js';
import { cautionSchema } from './statements/cautions.js';
import { scatterSchema, visibilitySchema } from './statements/differences.js';
import { wishReading } from './statements/params.js';
import type { Unworded } from './statements/statement-schema.js';

const n = z.number();

/** What a remedy costs. */
const COSTS = ['free', 'minutes', 'practice', 'plugging'] as const;

const wishedSchema = z.strictObject({
  wish: z.enum(WISHES),
  asked: z.string().meta({ description: 'As it was typed.' }),
  reading: wishReading.meta({ description: 'The reaction number it is about; its name carries the unit.' }),
  did: n.meta({ description: 'What the ball did.' }),
  from: z.enum(['told', 'log', 'simulated']),
  deviation: n.nullable().meta({ description: 'How far off a log may be: one standard deviation.' }),
  simulated: n.meta({ description: 'What the ball as drilled does by simulation.' }),
  wanted: n,
  change: n.meta({ description: 'What is wanted less what it did.' }),
});

const remedySchema = z.strictObject({
  remedy: adjustmentSchema,
  cost: z.enum(COSTS),
  isUndone: z.boolean().meta({ description: 'Whether it can be taken back.' }),
  rank: n.nullable().meta({ description: 'From 1, of those recommended; null for the others.' }),
  verdict: z.enum(['helps', 'no-help', 'unseen', 'no-line']).meta({
    description:
      'helps: a person could see that it comes nearer; unseen: its effect cannot be told from the scatter of the bowler’s shots.',
  }),
  effect: z.strictObject(fromKeys(COMPARED_IDS, () => n)).meta({
    description: 'Mean changes over the worlds in which the ball reaches the pins with it and without.',
  }),
  visibility: z.strictObject(fromKeys(COMPARED_IDS, () => visibilitySchema)),
  left: z
    .strictObject(fromKeys(WISHED_IDS, () => n.optional()))
    .meta({ description: 'Still missing of each wanted change.' }),
  miss: n.meta({
    description: 'Root mean square of what is missing, in standard deviations of the bowler’s shots.',
  }),
  nearer: n.meta({ description: 'Share of worlds in which it comes nearer to the wish.' }),
});

export const adjustAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/adjust/1'),
    version: z.string(),
    seed: n,
    id: z.string().meta({ description: 'The drilled layout that is kept.' }),
    inputs: z.strictObject({ bowler: bowlerSchema, ball: ballSchema, lane: laneSchema, layout: z.string() }),
    learned: learnedFromSchema.optional(),
    night: z.string().nullable().meta({ description: 'Day of the night that was read; null for none.' }),
    wished: z.array(wishedSchema).min(1),
    verdict: z.array(adjustRemarkSchema).min(1),
    reaction: reactionSchema.meta({ description: 'Of the ball as drilled, simulated.' }),
    line: z.strictObject({ laydownBoard: n, reachesPocket: z.boolean() }),
    miss: n.meta({ description: 'How far it is from the wish now, as in remedies.' }),
    remedies: z.array(remedySchema),
    redrill: z
      .strictObject({
        layout: layoutAnswerSchema,
        drilled: drilledSchema,
        marks: z.array(markSchema),
        legality: legalitySchema,
        redrilled: redrilledSchema,
      })
      .nullable()
      .meta({ description: 'The best layout found for the plugged ball; null where none was looked for.' }),
    worlds: n.meta({ description: 'In how many simulated tries each was rolled; all met the same ones.' }),
    scatter: scatterSchema,
    assumptions: z.array(assumptionSchema),
    cautions: z.array(cautionSchema),
  })
  .meta({ title: 'What to change' });

export type AdjustAnswer = Unworded<z.infer<typeof adjustAnswerSchema>>;
export type RemedyAnswer = AdjustAnswer['remedies'][number];
