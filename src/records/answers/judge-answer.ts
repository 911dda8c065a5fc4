import { z } from 'zod';
import { causesSchema, WHEN_NO_CAUSES } from './parts/causes-answer.js';
import { legalitySchema, markSchema, psaSchema } from './parts/drilled-numbers.js';
import { learnedFromSchema } from './parts/learned-from.js';
import { noLineSchema } from './parts/shot-answer.js';
import {
  inputsSchema,
  pairedSchema,
  regressionSchema,
  sharesSchema,
  simulatedLayoutSchema,
  targetSchema,
} from './parts/simulated-layout.js';
import { leverEffectSchema } from './recommend-answer.js';
import { assumptionSchema } from './statements/assumptions.js';
import { cautionSchema } from './statements/cautions.js';
import { markingErrorSchema } from './statements/changes.js';
import { differenceSchema, scatterSchema } from './statements/differences.js';

const n = z.number();

export const judgeAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/judge/3'),
    version: z.string(),
    seed: n,
    inputs: inputsSchema,
    verdict: z.enum(['not-allowed', 'clearly-worse', 'probably-worse', 'no-difference-seen', 'as-good']),
    noLine: noLineSchema.nullable(),
    learned: learnedFromSchema.optional(),
    targets: z.array(targetSchema),
    layout: simulatedLayoutSchema.extend({
      psa: psaSchema,
      marks: z.array(markSchema),
      legality: legalitySchema,
    }),
    place: z.strictObject({ betterThan: n, of: n, by: z.enum(['physics', 'regression']) }).meta({
      description:
        'How many layouts score below it: by physics, allowed ones of an even grid in the nominal world; by the ' +
        'regression, all that may be marked, over plausible worlds.',
    }),
    best: simulatedLayoutSchema,
    regression: regressionSchema,
    confidence: z
      .strictObject({
        bestBeatsIt: n,
        beatsMiddle: n,
        worlds: n,
        byPhysics: z
          .strictObject({ bestBeatsIt: n, beatsMiddle: n })
          .meta({ description: 'The same by physics alone.' }),
        bestOverIt: differenceSchema.meta({ description: 'Of the best from it.' }),
        paired: pairedSchema.meta({ description: 'Of the best from it, world by world.' }),
        overMiddle: differenceSchema,
      })
      .meta({ description: 'Shares of the worlds in which both reach the pins, and differences.' }),
    scatter: scatterSchema,
    shares: sharesSchema.meta({ description: 'Of the change from this layout to the best one.' }),
    causes: causesSchema.nullable().meta({ description: `Of the same change; ${WHEN_NO_CAUSES}.` }),
    marking: z
      .array(z.strictObject({ error: markingErrorSchema, score: n, flareIn: n, totalHookBoards: n }))
      .meta({ description: 'What the worse side of each marking error changes.' }),
    levers: z
      .array(leverEffectSchema)
      .meta({ description: 'Finish, line, other balls of the person: what they would do with this layout.' }),
    assumptions: z.array(assumptionSchema),
    cautions: z.array(cautionSchema),
  })
  .meta({ title: 'Second opinion' });
