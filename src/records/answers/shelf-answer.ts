import { z } from 'zod';
import { ballSchema } from '../schemas/ball.js';
import { bowlerSchema } from '../schemas/bowler.js';
import { drilledLayoutSchema } from '../schemas/drilled-layout.js';
import { laneSchema } from '../schemas/lane.js';

/** A person's own records and the demos. */
export const shelfAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/shelf-answer/1'),
    version: z.string(),
    folder: z.string().meta({ description: 'Where the own records lie.' }),
    records: z.array(
      z.strictObject({
        kind: z.enum(['bowler', 'ball', 'lane', 'layout']),
        id: z.string(),
        demo: z.boolean(),
        record: z.union([bowlerSchema, ballSchema, laneSchema, drilledLayoutSchema]).optional(),
        error: z.string().optional().meta({ description: 'Why its file cannot be read.' }),
      }),
    ),
  })
  .meta({ title: 'Shelf' });

export type ShelfAnswer = z.infer<typeof shelfAnswerSchema>;
