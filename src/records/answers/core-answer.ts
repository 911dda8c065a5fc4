import { z } from 'zod';
import { LENGTH_UNITS } from '../schemas/core.js';
import { assumptionSchema } from './statements/assumptions.js';
import { cautionSchema } from './statements/cautions.js';

const n = z.number();

const place = z.tuple([n, n]);

/** What a maker publishes of a ball; null for what is not known. */
const published = {
  rgIn: n.nullable(),
  differentialIn: n.nullable(),
  intermediateDifferentialIn: n.nullable(),
  pinToCgIn: n.nullable(),
  topWeightOz: n.nullable(),
};

const corePartSchema = z.strictObject({
  sign: z.string().meta({ description: 'The letter that stands for it in drawings.' }),
  name: z.string(),
  shape: z.string(),
  densityGcc: n,
  weightLb: n
    .nullable()
    .meta({ description: 'Of what no later part covers; null where the core makes no ball.' }),
  share: n.nullable().meta({
    description: 'Share of its volume that no later part covers; null where the core makes no ball.',
  }),
});

export const sectionSchema = z
  .strictObject({
    plane: z.enum(['pin-marker', 'equator']).meta({
      description:
        'pin-marker: through pin and marker, pin up and marker to the right. equator: across the pin, seen from it, marker to the right.',
    }),
    parts: z
      .array(z.strictObject({ part: n, loops: z.array(z.array(place)) }))
      .meta({ description: 'In their order; where two share space, the later one is there.' }),
    marks: z.array(z.strictObject({ mark: z.enum(['pin', 'marker', 'CG', 'PSA']), at: place })),
    axes: z
      .array(z.strictObject({ axis: z.enum(['low', 'middle', 'high']), ends: z.tuple([place, place]) }))
      .meta({
        description: 'Principal axes that lie within 45° of the plane, through the CG, seen square to it.',
      }),
    holes: z
      .array(z.strictObject({ hole: z.string(), outline: z.array(place) }))
      .meta({ description: 'Seen square to the plane, wherever they lie before or behind it.' }),
  })
  .meta({ description: 'Inches from the ball’s centre.' });

export const coreAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/core-check/1'),
    version: z.string(),
    core: z.string(),
    note: z.string().nullable(),
    ball: z
      .string()
      .nullable()
      .meta({ description: 'The ball it was weighed for; null where none was named.' }),
    weightLb: n,
    unit: z.enum(LENGTH_UNITS),
    radiusIn: n,
    cover: z.strictObject({ thicknessIn: n, densityGcc: n }),
    parts: z.array(corePartSchema).min(1),
    reachIn: n.meta({ description: 'How far the core reaches from the ball’s centre.' }),
    numbers: z
      .strictObject({
        rgIn: n,
        differentialIn: n,
        intermediateDifferentialIn: n,
        pinToCgIn: n,
        topWeightOz: n,
        cgOffsetIn: n,
        fillerGcc: n,
      })
      .nullable()
      .meta({ description: 'Before drilling; null where the core makes no ball.' }),
    published: z
      .strictObject(published)
      .nullable()
      .meta({ description: 'What the ball’s record says; null where no ball was named.' }),
    refused: z
      .array(z.string())
      .meta({ description: 'Codes of what keeps it from being a ball; empty where it is one.' }),
    sections: z.array(sectionSchema).length(2),
    layout: z.string().nullable().meta({ description: 'Whose holes are drawn; null where none are.' }),
    known: z.array(assumptionSchema),
    doubts: z.array(cautionSchema).meta({ description: 'What looks like a slip, and what is unusual.' }),
    cautions: z.array(cautionSchema),
  })
  .meta({ title: 'Check of a core' });
