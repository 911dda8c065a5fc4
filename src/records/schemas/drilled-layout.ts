import { z } from 'zod';
import { InputError } from '../../base/errors.js';
import { readLayout } from '../text/written-layout.js';
import { nameField, noteField, quantity, recordTag } from './quantity.js';

const day = z.iso.date({ error: 'must be a day, such as "2026-03-31"' });

/** What a bowler saw the ball do; whatever was not looked at is left out. */
export const resultSchema = z
  .strictObject({
    on: day.optional().meta({ description: 'The day.' }),
    lane: nameField.meta({ description: 'The lane or its pattern, in words or by its id.' }),
    hookStartFt: quantity(0, 60, { unit: 'ft', what: 'Where it started to hook' }).optional(),
    totalHookBoards: quantity(0, 39, { unit: 'boards', what: 'How far it came back' }).optional(),
    breakpointBoard: quantity(0, 39, { unit: '(board)', what: 'Outermost board' }).optional(),
    entryAngleDeg: quantity(0, 12, { unit: 'degrees', what: 'Entry angle at the pins' }).optional(),
    flareIn: quantity(0, 9, { unit: 'in', what: 'Flare by tape, at the widest place' }).optional(),
    note: noteField,
  })
  .meta({ description: 'What the drilled ball did on a lane.' });

export const drilledLayoutSchema = z
  .strictObject({
    schema: recordTag('flarewise/layout/1'),
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
    results: z.array(resultSchema).max(1000, 'must hold at most 1000 results').default([]),
  })
  .meta({ title: 'Drilled layout', description: 'A layout as drilled, and what the ball did with it.' });

export type DrilledLayout = z.infer<typeof drilledLayoutSchema>;
