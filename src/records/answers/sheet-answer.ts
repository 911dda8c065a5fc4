import { z } from 'zod';
import { ballSchema } from '../schemas/ball.js';
import { bowlerSchema } from '../schemas/bowler.js';
import { gripSchema } from '../schemas/grip.js';
import { ballFaceSchema, ringSchema } from './parts/ball-face.js';
import {
  drilledBandsSchema,
  drilledSchema,
  legalitySchema,
  psaSchema,
  undrilledSchema,
} from './parts/drilled-numbers.js';
import { bandSchema, layoutAnswerSchema } from './parts/layout-answer.js';
import { learnedFromSchema } from './parts/learned-from.js';
import { markingPlanSchema } from './sheet/marking-plan.js';
import { assumptionSchema } from './statements/assumptions.js';
import { cautionSchema } from './statements/cautions.js';
import { legalityFindingSchema } from './statements/legality-findings.js';
import { objectionSchema } from './statements/objections.js';
import type { Unworded } from './statements/statement-schema.js';

const n = z.number();

/** What the sheet assumes of the ball, to be measured before anything is marked; null where there is no such thing or it was not given. */
const checkSchema = z.strictObject({
  pinToCgIn: n.nullable(),
  pinToMassBiasIn: n.nullable(),
  circumferenceIn: n,
  topWeightOz: n.nullable(),
  weightLb: n,
});

/** Marks and sizes of a grip that was given, to 1/64 in. */
const gripMarksSchema = z.strictObject({
  holes: z.array(
    z.strictObject({ hole: z.string(), alongIn: n, acrossIn: n }).meta({
      description:
        'Middle of the mouth from the grip centre: along the centre line (positive: toward the fingers), then across, square to it (positive: toward the PAP’s side).',
    }),
  ),
  spans: z
    .array(z.strictObject({ finger: z.enum(['middle', 'ring']), orderedIn: n, markedIn: n, boredIn: n }))
    .meta({
      description:
        'Thumb edge to finger edge: as ordered, as the marks give it, and between the edges of what is drilled. None without a thumb.',
    }),
  bridge: z.strictObject({ orderedIn: n, markedIn: n, wallIn: n }).meta({
    description:
      'Between the finished finger holes, across the centre line; and the wall between the bores drilled for them.',
  }),
});

const limitSchema = z.strictObject({
  ruleSet: z.string(),
  mostOz: n,
  aboveLb: n,
  applies: z.boolean().meta({ description: 'Whether the ball is heavy enough for the limit.' }),
});

const sheetRingsSchema = z.strictObject({
  lane: z.string(),
  learned: learnedFromSchema.optional(),
  seed: n,
  worlds: n,
  rings: z.array(ringSchema),
  ringsInOil: n.meta({ description: 'Rings laid in oil, which can be seen on the ball.' }),
  flareIn: n,
  clearances: z.array(z.strictObject({ hole: z.string(), clearanceIn: n })).meta({
    description: 'Least distance from any ring to a hole’s edge; negative when a ring runs over it.',
  }),
  bands: z.strictObject({ flareIn: bandSchema, ringClearanceIn: bandSchema }).meta({
    description: '9 of 10 worlds: release scatter, marking error, core, friction, fresh surface.',
  }),
});

export const sheetAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/sheet/4'),
    version: z.string(),
    date: z.string().meta({ description: 'YYYY-MM-DD' }),
    bowler: bowlerSchema,
    grip: gripSchema.nullable().meta({
      description:
        'Null where the bowler’s is not known: the shop measures it, and the drilled numbers are those of a usual one.',
    }),
    ball: ballSchema,
    layout: layoutAnswerSchema,
    typed: z
      .string()
      .nullable()
      .meta({ description: 'The layout as it was typed; null where it was not typed.' }),
    invented: z.array(z.string()).meta({ description: 'Which of bowler, ball and lane are demo records.' }),
    stop: z.array(z.union([objectionSchema, legalityFindingSchema])).meta({
      description: 'Why the ball must not be drilled as it stands; empty where nothing forbids it.',
    }),
    check: checkSchema,
    face: ballFaceSchema,
    marking: markingPlanSchema,
    gripMarks: gripMarksSchema.nullable().meta({ description: 'Null where no grip was given.' }),
    depths: z
      .array(
        z.strictObject({
          hole: z.string(),
          coverIn: n.nullable(),
          coverBelowIn: n.nullable(),
          coreIn: n.nullable(),
        }),
      )
      .meta({
        description:
          'How deep each hole of a given fit leaves the cover and meets a core whose shape is known, along its axis; null where it ends before; and how much cover is left below one that ends in it.',
      }),
    drilled: drilledSchema,
    bands: drilledBandsSchema,
    undrilled: undrilledSchema,
    undrilledOz: z
      .strictObject({ top: n, side: n, finger: n })
      .meta({ description: 'Static weights before drilling, laid out as this.' }),
    psa: psaSchema,
    legality: z.array(legalitySchema).min(1),
    limits: z.array(limitSchema),
    rings: sheetRingsSchema.nullable().meta({ description: 'Null when no lane was given.' }),
    assumptions: z.array(assumptionSchema),
    cautions: z.array(cautionSchema),
  })
  .meta({ title: 'Work sheet' });

export type SheetAnswer = Unworded<z.infer<typeof sheetAnswerSchema>>;
export type GripMarks = z.infer<typeof gripMarksSchema>;
