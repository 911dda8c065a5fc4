import { z } from 'zod';
import { ballFaceSchema } from './parts/ball-face.js';
import {
  drilledBandsSchema,
  drilledSchema,
  flareStartSchema,
  legalitySchema,
  markSchema,
  psaSchema,
  redrilledSchema,
  undrilledSchema,
} from './parts/drilled-numbers.js';
import { layoutAnswerSchema } from './parts/layout-answer.js';
import { assumptionSchema } from './statements/assumptions.js';
import { cautionSchema } from './statements/cautions.js';

export const drilledAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/drilled/2'),
    version: z.string(),
    ball: z.string(),
    bowler: z.string(),
    layout: layoutAnswerSchema,
    undrilled: undrilledSchema,
    redrilled: redrilledSchema.nullable(),
    drilled: drilledSchema,
    bands: drilledBandsSchema,
    psa: psaSchema,
    flareStart: flareStartSchema,
    marks: z.array(markSchema),
    face: ballFaceSchema,
    legality: legalitySchema,
    assumptions: z.array(assumptionSchema),
    cautions: z.array(cautionSchema),
  })
  .meta({ title: 'Drilled numbers' });
