import { z } from 'zod';
import { InputError } from '../../base/errors.js';
import { readLayout } from '../text/written-layout.js';
import { nameField, noteField, recordTag } from './quantity.js';
import { nightSchema } from './shot-log.js';

const day = z.iso.date({ error: 'must be a day, such as "2026-03-31"' });

/** Most nights and shots of one ball: more than it lives, and what keeps its file under what is read of one (16 MB). */
const MOST_NIGHTS = 1000;
const MOST_SHOTS = 10_000;

export const drilledLayoutSchema = z
  .strictObject({
    schema: recordTag('flarewise/layout/2'),
    name: nameField,
    note: noteField,
    bowler: nameField.meta({ description: 'Whose ball it is: the id of a record, or a name.' }),
    ball: nameField.meta({ description: 'Which ball: the id of a record, or a name.' }),
    layout: z
      .string({ error: 'must be a text' })
      .superRefine((text, ctx) => {
        try {
          readLayout(text);
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          for (const { rule, hint } of error.faults)
            ctx.addIssue({ code: 'custom', message: rule, params: { hint } });
        }
      })
      .meta({
        description: 'In angles, such as "70 x 4 1/2 x 30", or in distances, such as "4 1/2 x 3 3/8 x 2".',
      }),
    drilledOn: day.optional().meta({ description: 'The day it was drilled.' }),
    nights: z
      .array(nightSchema)
      .max(MOST_NIGHTS, `must hold at most ${MOST_NIGHTS} nights`)
      .default([])
      .refine(
        (nights) => nights.reduce((sum, { shots }) => sum + shots.length, 0) <= MOST_SHOTS,
        `must hold at most ${MOST_SHOTS} shots`,
      )
      .meta({ description: 'The log of its shots, in the order of time.' }),
  })
  .meta({
    id: 'drilled-layout',
    title: 'Drilled layout',
    description: 'A layout as drilled, and what the ball did with it.',
  });

export type DrilledLayout = z.infer<typeof drilledLayoutSchema>;
