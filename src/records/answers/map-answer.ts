import { z } from 'zod';
import { fromKeys } from '../../base/from-keys.js';
import { MAP_NUMBERS } from '../schemas/map-numbers.js';
import { COMPARED_IDS } from '../schemas/reaction-numbers.js';
import {
  drilledBandsSchema,
  drilledSchema,
  flareStartSchema,
  psaSchema,
  undrilledSchema,
} from './parts/drilled-numbers.js';
import { layoutAnswerSchema } from './parts/layout-answer.js';
import { learnedFromSchema } from './parts/learned-from.js';
import { assumptionSchema } from './statements/assumptions.js';
import { cautionSchema } from './statements/cautions.js';
import { visibilitySchema } from './statements/differences.js';

const n = z.number();

const onLaneNumbers = z.strictObject(fromKeys(COMPARED_IDS, () => n));

const span = z.strictObject({ least: n, most: n });

export const mapRowSchema = z.strictObject({
  layout: layoutAnswerSchema,
  drilled: drilledSchema,
  bands: drilledBandsSchema,
  asymmetry: z
    .strictObject({ middle: n, low: n, high: n })
    .meta({ description: 'Intermediate over total differential; low and high bound 9 of 10 cores.' }),
  psa: psaSchema,
  flareStart: flareStartSchema,
});

const movedSchema = z.strictObject({
  least: n,
  most: n,
  low: n.meta({ description: 'Least end of the bands over cores.' }),
  high: n.meta({ description: 'Greatest end of the bands over cores.' }),
  bandWidth: n.meta({ description: 'Typical width of the band over cores; 0 for a core of its own.' }),
  matters: z.boolean().nullable().meta({
    description:
      'Whether it moves by as much as counts; null of asymmetry, which follows from the differentials.',
  }),
});

export const mapAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/map/4'),
    version: z.string(),
    ball: z.string(),
    bowler: z.string(),
    over: z.enum(['drilling-angle', 'pin-to-pap', 'buffer']),
    undrilled: undrilledSchema,
    rows: z.array(mapRowSchema).min(2),
    reach: z
      .strictObject({
        numbers: z.strictObject(fromKeys(MAP_NUMBERS, () => movedSchema)),
        mattersFrom: z.strictObject({ in: n, flareIn: n, hookStartFt: n }).meta({
          description:
            'From how much on it counts that RG or a differential moves, the same for all balls; so much of total differential moves ' +
            'the flare by about flareIn and the hook start by less than hookStartFt.',
        }),
        matters: z.boolean().meta({ description: 'Whether one of them moves by so much.' }),
      })
      .meta({ description: 'How far the numbers move over the rows.' }),
    scales: z.strictObject(fromKeys(MAP_NUMBERS, () => span)).meta({
      description: 'The same for all balls: what the rules allow of new ones, and what drilling adds.',
    }),
    beside: z
      .array(
        z.strictObject({
          kind: z.enum(['plain', 'asymmetric']),
          ball: z.string(),
          numbers: z.strictObject(fromKeys(MAP_NUMBERS, () => span)),
        }),
      )
      .meta({ description: 'What the same rows do to invented balls of other kinds.' }),
    onLane: z
      .strictObject({
        learned: learnedFromSchema.optional(),
        lane: z.string(),
        from: z.string(),
        to: z.string(),
        size: onLaneNumbers.meta({
          description:
            'Of the second layout from the first, by physics; mean over the worlds in which both reach the pins.',
        }),
        scatter: onLaneNumbers.meta({ description: 'Standard deviations of the bowler’s shots.' }),
        visibility: visibilitySchema,
        centreHeld: z
          .strictObject({ reading: z.enum(['hookStartFt', 'totalHookBoards']), total: n, left: n })
          .nullable()
          .meta({
            description:
              'One steady shot: the whole difference of the number that stands out most from the scatter, and what is left of it where both ' +
              'layouts have one centre of mass; null where such balls cannot be compared.',
          }),
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
