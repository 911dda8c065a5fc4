import { z } from 'zod';

const n = z.number();

/** What an answer took from a bowler's logged shots, for the line that says so. */
export const learnedFromSchema = z
  .strictObject({
    shots: n,
    nights: n,
    elsewhere: n.meta({ description: 'How many of those were on other lanes.' }),
    pinsBoardOff: z.strictObject({ before: n, after: n }).nullable().meta({
      description:
        'How far off the board at the pins of a night to come on this lane may be foretold, one standard deviation, with the ball logged last; null where it cannot be.',
    }),
    isDoubtful: z.boolean().meta({ description: 'Whether the log can hardly be as it is taken to be.' }),
  })
  .meta({
    id: 'learned-from',
    description: 'What was learned from logged shots and is counted in; left out where nothing was.',
  });

export type LearnedFrom = z.infer<typeof learnedFromSchema>;
