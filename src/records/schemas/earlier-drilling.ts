import { z } from 'zod';
import { InputError } from '../../base/errors.js';
import { parseDistances } from '../text/distances-text.js';
import { parseLayout } from '../text/layout-text.js';
import { gripSchema } from './grip.js';
import { papSchema } from './pap.js';
import { choice, quantity } from './quantity.js';

/** Density assumed of what old holes are filled with, g/cc (common practice, no source). */
export const USUAL_PLUG_GCC = 1.2;

/** A text that `parse` must be able to read; what it finds wrong becomes faults of the record. */
const readBy = (parse: (text: string) => unknown, description: string) =>
  z
    .string({ error: 'must be a text' })
    .superRefine((text, ctx) => {
      try {
        parse(text);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        for (const { field, rule, hint } of error.faults) {
          const [, part] = field.split(': ');
          ctx.addIssue({ code: 'custom', message: part ? `${rule} for ${part}` : rule, params: { hint } });
        }
      }
    })
    .meta({ description });

/** One earlier drilling of a ball, whose holes were plugged. */
export const earlierDrillingSchema = z
  .strictObject({
    layout: readBy(
      parseLayout,
      'Its layout in angles: drilling angle x pin-to-PAP x VAL angle, such as "70 x 4 1/2 x 30".',
    ).optional(),
    layoutDistances: readBy(
      parseDistances,
      'The same in distances: pin-to-PAP x marker-to-PAP x pin buffer, such as "4 1/2 x 3 3/8 x 2".',
    ).optional(),
    pinSide: choice(
      ['above', 'below'],
      'With layoutDistances: where the pin lies along the vertical axis line, seen from the PAP; left out, above.',
    ).optional(),
    hand: choice(['right', 'left'], 'The hand it was drilled for.'),
    pap: papSchema,
    grip: gripSchema.optional(),
    plugDensityGcc: quantity(0.8, 1.8, {
      unit: 'g/cc',
      what: `Density of what the old holes are filled with; left out, ${USUAL_PLUG_GCC} is assumed and said`,
      hint: '1.1 to 1.3 is usual.',
    }).optional(),
  })
  .superRefine((drilling, ctx) => {
    if ((drilling.layout === undefined) === (drilling.layoutDistances === undefined))
      ctx.addIssue({
        code: 'custom',
        path: ['layout'],
        message: 'must be given, or layoutDistances in its place, not both',
        params: { hint: 'Angles: "70 x 4 1/2 x 30". Distances: "4 1/2 x 3 3/8 x 2".' },
      });
  })
  .meta({
    id: 'earlier-drilling',
    description: 'An earlier drilling. Its holes must be plugged: old holes left open are not provided for.',
  });

export type EarlierDrilling = z.infer<typeof earlierDrillingSchema>;
