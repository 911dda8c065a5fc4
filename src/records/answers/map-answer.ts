import { z } from 'zod';
import { fromKeys } from '../../base/from-keys.js';
import { LANE_IDS } from '../schemas/reaction-numbers.js';
import { drilledBandsSchema, drilledSchema, psaSchema, undrilledSchema } from './drilled-numbers.js';
import { layoutAnswerSchema } from './layout-answer.js';
import { assumptionSchema } from './statements/assumptions.js';
import { cautionSchema } from './statements/cautions.js';
import { visibilitySchema } from './statements/differences.js';

const n = z.number();

const onLaneNumbers = z.strictObject(fromKeys(LANE_IDS, () => n));

export const mapRowSchema = z.strictObject({
  layout: layoutAnswerSchema,
  drilled: drilledSchema,
  bands: drilledBandsSchema,
  psa: psaSchema,
});

export const mapAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/map/3'),
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
        mattersFromIn: n.meta({
          description: 'From how much on it counts that a differential moves; the same for all balls.',
        }),
        matters: z
          .boolean()
          .meta({ description: 'Whether the total or the intermediate differential moves by so much.' }),
      })
      .meta({ description: 'How far the numbers move over the rows.' }),
    onLane: z
      .strictObject({
        lane: z.string(),
        from: z.string(),
        to: z.string(),
        size: onLaneNumbers.meta({
          description:
            'Of the second layout from the first, by physics; mean over the worlds in which both reach the pins.',
        }),
        scatter: onLaneNumbers.meta({ description: 'Standard deviations of the bowler’s shots.' }),
        visibility: visibilitySchema,
        worlds: n,
      })
      .nullable()
      .meta({
        description:
          'What the rows with the least and the greatest differential, the one that moves more, do on a lane; null where none was named.',
      }),
    assumptions: z.array(assumptionSchema),
    cautions: z.array(cautionSchema),
  })
  .meta({ title: 'Map of drilled numbers' });
