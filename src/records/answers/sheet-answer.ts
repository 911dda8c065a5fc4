import { z } from 'zod';
import { ballSchema } from '../schemas/ball.js';
import { bowlerSchema } from '../schemas/bowler.js';
import { gripSchema } from '../schemas/grip.js';
import { ballFaceSchema, ringSchema } from './ball-face.js';
import {
  drilledBandsSchema,
  drilledSchema,
  legalitySchema,
  psaSchema,
  undrilledSchema,
} from './drilled-numbers.js';
import { bandSchema, layoutAnswerSchema } from './layout-answer.js';
import { assumptionSchema } from './statements/assumptions.js';
import { cautionSchema } from './statements/cautions.js';
import { objectionSchema } from './statements/objections.js';
import type { Unworded } from './statements/statement-schema.js';

const n = z.number();

const tapeStepSchema = z
  .strictObject({
    mark: z.string(),
    arcs: z
      .array(z.strictObject({ from: z.string(), inches: n }))
      .min(1)
      .max(2)
      .meta({
        description:
          'To 1/16 in. One arc alone: in the direction of `turn`; without one, the mark lies on another or in any direction.',
      }),
    turn: z.strictObject({ from: z.string(), deg: n }).nullable().meta({
      description:
        'Laid off with a protractor where arcs would not be exact enough: the angle, to a whole degree, at the mark the arc is swung from, from the way to another mark.',
    }),
    side: z.enum(['left', 'right']).nullable().meta({
      description:
        'Of the way from the first mark to the second, or to the one `turn` is taken from, seen from outside.',
    }),
    crossingDeg: n
      .nullable()
      .meta({ description: 'At which the arcs cross; near 0 a small error of an arc moves the mark far.' }),
    offIn: n.meta({ description: 'How far from its true place the rounded arcs put the mark.' }),
  })
  .meta({ description: 'One mark, found from marks already on the ball.' });

/** How to lay a ball out with a tape, and what rounding to a sixteenth makes of the layout. */
export const tapePlanSchema = z.strictObject({
  given: z.array(z.string()).meta({ description: 'Marks an undrilled ball has.' }),
  steps: z.array(tapeStepSchema).meta({ description: 'In working order.' }),
  readBack: z
    .strictObject({ drillingAngleDeg: n.nullable(), pinToPapIn: n, valAngleDeg: n.nullable() })
    .meta({
      description: 'The layout that marks placed by the rounded arcs have; null where none is defined.',
    }),
  error: z
    .strictObject({ drillingAngleDeg: n.nullable(), pinToPapIn: n, valAngleDeg: n.nullable() })
    .meta({ description: 'The same less what was asked for.' }),
});

const sheetRingsSchema = z.strictObject({
  lane: z.string(),
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
    schema: z.literal('flarewise/sheet/3'),
    version: z.string(),
    date: z.string().meta({ description: 'YYYY-MM-DD' }),
    bowler: bowlerSchema,
    grip: gripSchema.nullable().meta({
      description:
        'Null where the bowler’s is not known: the shop measures it, and the drilled numbers are those of a usual one.',
    }),
    ball: ballSchema,
    layout: layoutAnswerSchema,
    face: ballFaceSchema,
    tape: tapePlanSchema,
    drilled: drilledSchema,
    bands: drilledBandsSchema,
    undrilled: undrilledSchema,
    undrilledOz: z
      .strictObject({ top: n, side: n, finger: n })
      .meta({ description: 'Static weights before drilling, laid out as this.' }),
    psa: psaSchema,
    legality: z.array(legalitySchema).min(1),
    rings: sheetRingsSchema.nullable().meta({ description: 'Null when no lane was given.' }),
    objections: z
      .array(objectionSchema)
      .meta({ description: 'What speaks against this layout for this bowler.' }),
    assumptions: z.array(assumptionSchema),
    cautions: z.array(cautionSchema),
  })
  .meta({ title: 'Marking sheet' });

export type SheetAnswer = Unworded<z.infer<typeof sheetAnswerSchema>>;
export type TapePlan = z.infer<typeof tapePlanSchema>;
export type TapeStep = z.infer<typeof tapeStepSchema>;
