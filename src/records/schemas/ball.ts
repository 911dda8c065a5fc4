import { z } from 'zod';
import { type BallUncertainty, ballUncertaintySchema } from './ball-uncertainty.js';
import type { CoreFile } from './core.js';
import {
  CORE_FAMILIES,
  CORE_FAMILY_IDS,
  hasMassBias,
  hasNoses,
  LEAST_MASS_BIAS_IN,
} from './core-families.js';
import { earlierDrillingSchema } from './earlier-drilling.js';
import { choice, fileField, nameField, noteField, quantity, recordTag } from './quantity.js';

const weightField = quantity(8, 16, {
  unit: 'lb',
  what: 'Weight before drilling',
  hint: '1 kg is 2.205 lb.',
});

/** What a maker publishes of the core. */
const publishedFields = {
  rgIn: quantity(2.4, 2.8, {
    unit: 'in',
    what: 'Low radius of gyration (RG about the pin axis)',
    hint: 'Radius of gyration in inches, as published; 2.48 to 2.60 is usual.',
  }),
  differentialIn: quantity(0, 0.06, {
    unit: 'in',
    what: 'Total differential (high RG less low RG)',
    hint: 'As published, such as 0.048; the sport allows up to 0.060.',
  }),
  intermediateDifferentialIn: quantity(0, 0.06, {
    unit: 'in',
    what: 'Intermediate differential (high RG less middle RG; mass bias); 0 for a symmetric ball',
    hint: 'As published, such as 0.014; 0 for a symmetric ball.',
  }),
  pinToCgIn: quantity(0, 6, {
    unit: 'in',
    what: 'Arc from the pin to the CG mark',
    hint: '2 to 4 is usual.',
  }),
  topWeightOz: quantity(0, 6, { unit: 'oz', what: 'Top weight before drilling', hint: '2 to 4 is usual.' }),
};

const lobesField = z
  .int({ error: 'must be a whole number, 3 to 6' })
  .min(3, 'must be 3 to 6')
  .max(6, 'must be 3 to 6')
  .meta({
    description: 'How many equal noses a lobed core has around its middle.',
    hint: 'With fewer than 3 a core is not symmetric: give its intermediate differential instead.',
  });

const lobeFromMarkField = quantity(-60, 60, {
  unit: 'degrees',
  what: 'Angle at the pin from the CG mark to the nearest nose of a lobed core, clockwise as seen from outside',
  hint: '0 when a nose points toward the mark; 45 when the mark lies midway between two of four.',
});

/** What a record may say about any ball. */
const outerFields = {
  circumferenceIn: quantity(26.704, 27.002, {
    unit: 'in',
    what: 'Circumference',
    hint: 'The sport allows 26.704 to 27.002 in.',
  }).optional(),
  surfaceGrit: quantity(220, 6000, {
    unit: 'grit',
    what: 'Finish of the cover: the last abrasive used; 5500 and up stands for polish',
    hint: '500 is rough, 2000 usual, 4000 smooth.',
  }).optional(),
  drilledBefore: z.array(earlierDrillingSchema).max(5, 'must be at most 5 drillings').optional().meta({
    description: 'Earlier drillings of a used ball, in order; the other numbers are those it had new.',
  }),
};

const SYMMETRIC = CORE_FAMILY_IDS.filter((id) => !hasMassBias(id));

const quoted = (words: readonly string[]): string => words.map((word) => `"${word}"`).join(' or ');

/** A ball whose maker's numbers are known; its core is fitted to them. */
export const publishedBallSchema = z
  .strictObject({
    schema: recordTag('flarewise/ball/1'),
    name: nameField,
    note: noteField,
    weightLb: weightField,
    ...publishedFields,
    coreShape: choice(
      CORE_FAMILY_IDS,
      `${CORE_FAMILY_IDS.map((id) => `${id}: ${CORE_FAMILIES[id].is}`).join('; ')}.`,
    ).optional(),
    lobes: lobesField.optional(),
    lobeFromMarkDeg: lobeFromMarkField.optional(),
    uncertainty: ballUncertaintySchema.optional(),
    ...outerFields,
  })
  .superRefine((ball, ctx) => {
    const { coreShape: family, intermediateDifferentialIn } = ball;
    for (const field of ['lobes', 'lobeFromMarkDeg'] as const)
      if (ball[field] !== undefined && !(family && hasNoses(family)))
        ctx.addIssue({
          code: 'custom',
          path: [field],
          message: `must be left out unless coreShape is ${quoted(CORE_FAMILY_IDS.filter(hasNoses))}`,
          params: {
            hint: `Only ${CORE_FAMILY_IDS.filter(hasNoses)
              .map((id) => CORE_FAMILIES[id].name)
              .join(' or ')} core has noses.`,
          },
        });
    if (intermediateDifferentialIn > ball.differentialIn)
      ctx.addIssue({
        code: 'custom',
        path: ['intermediateDifferentialIn'],
        message: `must not exceed the total differential (${ball.differentialIn} in)`,
        params: { hint: 'The total differential is high RG less low RG; were the two swapped?' },
      });
    if (family && hasMassBias(family) && intermediateDifferentialIn === 0)
      ctx.addIssue({
        code: 'custom',
        path: ['intermediateDifferentialIn'],
        message: `must be above 0 in when coreShape is "${family}"`,
        params: { hint: `Give the published mass bias, or set coreShape to ${quoted(SYMMETRIC)}.` },
      });
    if (family && !hasMassBias(family) && intermediateDifferentialIn > LEAST_MASS_BIAS_IN)
      ctx.addIssue({
        code: 'custom',
        path: ['coreShape'],
        message: `must be ${quoted(CORE_FAMILY_IDS.filter(hasMassBias))} when the intermediate differential is ${intermediateDifferentialIn} in`,
        params: { hint: 'A symmetric core has 0, or nearly 0.' },
      });
  })
  .meta({ id: 'published-ball', title: 'Ball by its published numbers' });

/** A ball whose core is described in a file of its own; published numbers given beside it are only compared. */
const ownCoreBallSchema = z
  .strictObject({
    schema: recordTag('flarewise/ball/1'),
    name: nameField,
    note: noteField,
    weightLb: weightField,
    core: fileField('File of the core (core.schema.json), seen from the folder of this one.'),
    ...z.strictObject(publishedFields).partial().shape,
    ...outerFields,
  })
  .meta({ id: 'own-core-ball', title: 'Ball with a core of its own' });

export const ballSchema = z
  .union([publishedBallSchema, ownCoreBallSchema])
  .meta({ id: 'ball', title: 'Ball', description: 'One ball, undrilled or drilled before.' });

/** Which of the two a record should meet. Their faults would say nothing if both were tried. */
export const ballSchemaFor = (value: unknown): z.ZodType<BallRecord> =>
  typeof value === 'object' && value !== null && 'core' in value ? ownCoreBallSchema : publishedBallSchema;

/** A ball as it is in its file. */
export type BallRecord = z.infer<typeof ballSchema>;
export type PublishedBall = z.infer<typeof publishedBallSchema>;

/** A ball with what its core file holds. */
export type OwnCoreBall = z.infer<typeof ownCoreBallSchema> & { readonly coreFile: CoreFile };
export type Ball = PublishedBall | OwnCoreBall;

export const hasOwnCore = (ball: Ball): ball is OwnCoreBall => 'core' in ball;

/** How far off a ball's published numbers may be; a core of its own has none that are taken. */
export const ballUncertainty = (ball: BallRecord): BallUncertainty =>
  'core' in ball ? {} : (ball.uncertainty ?? {});

/** The ball as it is in its file. */
export function ballRecord(ball: Ball): BallRecord {
  if (!hasOwnCore(ball)) return ball;
  const { coreFile, ...record } = ball;
  return record;
}

/** Circumference assumed when a ball gives none, in. */
export const USUAL_CIRCUMFERENCE_IN = 27;

/** Finish assumed when a ball gives none, grit. */
export const USUAL_GRIT = 2000;
