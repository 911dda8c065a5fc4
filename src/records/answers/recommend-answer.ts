import { z } from 'zod';
import { fromKeys } from '../../base/from-keys.js';
import { SHARED_IDS } from '../schemas/reaction-numbers.js';
import { causesSchema, WHEN_NO_CAUSES } from './parts/causes-answer.js';
import { legalitySchema, markSchema, psaSchema } from './parts/drilled-numbers.js';
import { learnedFromSchema } from './parts/learned-from.js';
import { noLineSchema, reactionSchema } from './parts/shot-answer.js';
import {
  inputsSchema,
  pairedSchema,
  regressionSchema,
  sharesSchema,
  simulatedLayoutSchema,
  targetSchema,
} from './parts/simulated-layout.js';
import { surerSchema } from './parts/surer-answer.js';
import { voicesSchema } from './parts/voices.js';
import { assumptionSchema } from './statements/assumptions.js';
import { beliefSchema } from './statements/beliefs.js';
import { cautionSchema } from './statements/cautions.js';
import { leverSchema, stepSchema } from './statements/changes.js';
import { differenceSchema, scatterSchema } from './statements/differences.js';
import { headlineSchema } from './statements/headlines.js';
import { LEVER_KINDS } from './statements/ids.js';
import { limitSchema } from './statements/limits.js';
import { objectionSchema } from './statements/objections.js';
import { reasonSchema } from './statements/reasons.js';

const n = z.number();

export const stepEffectSchema = z
  .strictObject({
    change: stepSchema,
    score: n,
    ...fromKeys(SHARED_IDS, () => n),
  })
  .meta({
    description:
      'What one more step in one layout number would change, in the mean over the same worlds; only steps that can be marked and drilled.',
  });

const confidenceShares = {
  beatsRunnerUp: n.meta({
    description:
      'Share of the worlds in which both reach the pins in which it scores above the next in rank.',
  }),
  beatsMiddle: n.meta({ description: 'The same against the usual middle layout.' }),
};

export const rankedLayoutSchema = simulatedLayoutSchema.extend({
  rank: n,
  confidence: z.strictObject({
    ...confidenceShares,
    worlds: n,
    byPhysics: z.strictObject(confidenceShares).meta({ description: 'The same by physics alone.' }),
    overMiddle: differenceSchema.nullable().meta({ description: 'Null of the usual middle layout itself.' }),
    paired: pairedSchema.nullable().meta({
      description: 'From the usual middle layout, world by world; null of that layout itself.',
    }),
    overRunnerUp: differenceSchema.nullable().meta({ description: 'Null where no layout follows.' }),
  }),
  psa: psaSchema,
  marks: z.array(markSchema),
  legality: legalitySchema,
  shares: sharesSchema,
  causes: causesSchema
    .nullable()
    .meta({ description: `Against the usual middle layout; ${WHEN_NO_CAUSES}.` }),
  steps: z.array(stepEffectSchema).meta({ description: 'Of the first layout; empty for the others.' }),
  reasons: z.array(reasonSchema),
});

export const leverEffectSchema = z
  .strictObject({
    kind: z.enum(LEVER_KINDS),
    change: leverSchema,
    score: n,
    reaction: reactionSchema,
  })
  .meta({
    description:
      'What one other change would do with the best layout, in the nominal world, on the line it then takes.',
  });

export const recommendAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/recommend/3'),
    version: z.string(),
    seed: n,
    inputs: inputsSchema,
    assumptions: z.array(assumptionSchema),
    noLine: noLineSchema.nullable(),
    learned: learnedFromSchema.optional(),
    targets: z.array(targetSchema),
    search: z.strictObject({
      candidates: n,
      shots: n,
      rejected: z.array(z.strictObject({ reason: objectionSchema, count: n })),
      regression: regressionSchema,
    }),
    middle: simulatedLayoutSchema,
    layouts: z.array(rankedLayoutSchema).min(1),
    limits: z
      .array(limitSchema)
      .meta({ description: 'What holds the result back: a constraint, the ball, the lane.' }),
    levers: z
      .array(leverEffectSchema)
      .meta({ description: 'Finish, line, other balls of the person: when layout is not enough.' }),
    headline: headlineSchema.meta({ description: 'How the first layout stands to the usual one.' }),
    scatter: scatterSchema,
    voices: voicesSchema.nullable().meta({ description: 'Null where practice has no weight.' }),
    beliefs: z.array(beliefSchema).meta({
      description: 'What practice believes beside what physics finds with the first layout.',
    }),
    surer: z.array(surerSchema).meta({
      description:
        'What would make the recommendation surer: things not known whose knowledge may change it, most chance first.',
    }),
    cautions: z.array(cautionSchema),
  })
  .meta({ title: 'Recommendation' });
