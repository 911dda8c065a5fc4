import { z } from 'zod';
import { drilledBandsSchema, drilledSchema, psaSchema, undrilledSchema } from './drilled-numbers.js';
import { layoutAnswerSchema } from './layout-answer.js';
import { assumptionSchema } from './statements/assumptions.js';
import { cautionSchema } from './statements/cautions.js';

const n = z.number();

export const mapRowSchema = z.strictObject({
  layout: layoutAnswerSchema,
  drilled: drilledSchema,
  bands: drilledBandsSchema,
  psa: psaSchema,
});

export const mapAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/map/2'),
    version: z.string(),
    ball: z.string(),
    bowler: z.string(),
    over: z.enum(['drilling-angle', 'pin-to-pap', 'buffer']),
    undrilled: undrilledSchema,
    rows: z.array(mapRowSchema).min(2),
    reach: z
      .strictObject({
        differentialIn: z.strictObject({ least: n, most: n }),
        intermediateDifferentialIn: z.strictObject({ least: n, most: n }),
        bandIn: n.meta({
          description:
            'Typical width of the band of intermediate differential over cores; 0 for a core of its own.',
        }),
        matters: z.boolean().meta({
          description: 'Whether the numbers move by more than the cores, or else made balls, differ.',
        }),
      })
      .meta({ description: 'How far the numbers move over the rows.' }),
    assumptions: z.array(assumptionSchema),
    cautions: z.array(cautionSchema),
  })
  .meta({ title: 'Map of drilled numbers' });
