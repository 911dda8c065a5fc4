import { z } from 'zod';
import { keptRecordSchema, RECORD_KINDS } from '../schemas/kept-record.js';

/** A person's own records and the demos. */
export const shelfAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/shelf-answer/1'),
    version: z.string(),
    folder: z.string().meta({ description: 'Where the own records lie.' }),
    records: z.array(
      z.strictObject({
        kind: z.enum(RECORD_KINDS),
        id: z.string(),
        demo: z.boolean(),
        record: keptRecordSchema.optional(),
        error: z.string().optional().meta({ description: 'Why its file cannot be read.' }),
      }),
    ),
  })
  .meta({ title: 'Shelf' });

export type ShelfAnswer = z.infer<typeof shelfAnswerSchema>;
