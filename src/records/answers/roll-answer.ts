import { z } from 'zod';
import { ballFaceSchema, ringSchema } from './parts/ball-face.js';
import { drilledSchema } from './parts/drilled-numbers.js';
import { layoutAnswerSchema } from './parts/layout-answer.js';
import { learnedFromSchema } from './parts/learned-from.js';
import {
  bowTieSchema,
  lineSchema,
  missRoomSchema,
  noLineSchema,
  pathPointSchema,
  reactionSchema,
} from './parts/shot-answer.js';
import { assumptionSchema } from './statements/assumptions.js';
import { cautionSchema } from './statements/cautions.js';
import { objectionSchema } from './statements/objections.js';

const n = z.number();

export const rollAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/roll/2'),
    version: z.string(),
    ball: z.string(),
    bowler: z.string(),
    lane: z.string(),
    learned: learnedFromSchema.optional(),
    layout: layoutAnswerSchema,
    line: lineSchema,
    noLine: noLineSchema.nullable(),
    missRoom: missRoomSchema.nullable(),
    reaction: reactionSchema,
    objections: z
      .array(objectionSchema)
      .meta({ description: 'What speaks against this layout for this bowler.' }),
    drilled: drilledSchema,
    face: ballFaceSchema,
    path: z.array(pathPointSchema),
    rings: z.array(ringSchema),
    ringsInOil: n.meta({ description: 'How many of them were laid in oil and can be seen on the ball.' }),
    bowTie: bowTieSchema,
    assumptions: z.array(assumptionSchema),
    cautions: z.array(cautionSchema),
  })
  .meta({ title: 'One shot' });
