import { z } from 'zod';
import { readingErrorsSchema } from '../schemas/reading-errors.js';
import { nightSchema, shotSchema } from '../schemas/shot-log.js';
import { logRemarkSchema } from './statements/log-remarks.js';
import type { Unworded } from './statements/statement-schema.js';

const n = z.int().nonnegative();

const headSchema = nightSchema
  .omit({ shots: true })
  .meta({ id: 'night-head', description: 'What is said of a night beside its shots.' });

const nightAnswerSchema = z.strictObject({
  head: headSchema,
  errors: readingErrorsSchema
    .required()
    .meta({ description: 'How far off these readings are taken to be, one standard deviation each.' }),
  shots: z.array(
    z.strictObject({
      number: n.meta({ description: 'Counted over all nights of this ball.' }),
      shot: shotSchema,
    }),
  ),
  says: z.array(logRemarkSchema),
});

/** The shots of one ball or of all, night by night. */
export const logAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/log-answer/1'),
    version: z.string(),
    logs: z.array(
      z.strictObject({
        id: z.string(),
        bowler: z.string(),
        ball: z.string(),
        layout: z.string(),
        shots: n,
        nights: z.array(nightAnswerSchema),
      }),
    ),
  })
  .meta({ title: 'Log of shots' });

/** What a command did to a log. */
export const loggedAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/logged-answer/1'),
    version: z.string(),
    id: z.string().meta({ description: 'The drilled layout.' }),
    did: z.enum(['kept', 'changed', 'taken-back']),
    first: n.meta({ description: 'Number of the first of these shots in the log.' }),
    shots: z.array(shotSchema).min(1),
    head: headSchema.meta({ description: 'Of the last of these shots.' }),
    carried: z
      .array(headSchema.keyof())
      .meta({ description: 'What of the night was not typed, but taken over from the shots before.' }),
    isNewNight: z.boolean(),
    errors: readingErrorsSchema.required(),
    nightShots: n,
    allShots: n,
    says: z.array(logRemarkSchema),
  })
  .meta({ title: 'Logged shots' });

export type LogAnswer = Unworded<z.infer<typeof logAnswerSchema>>;
export type LoggedAnswer = Unworded<z.infer<typeof loggedAnswerSchema>>;
