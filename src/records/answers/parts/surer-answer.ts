import { z } from 'zod';
import { sizesSchema } from '../statements/differences.js';
import { RELEASE_IDS } from '../statements/ids.js';
import { unknownSchema } from '../statements/unknowns.js';

const n = z.number();

/** Where a person can say more of what was not known: a release number, the PAP, the ball or the lane. */
const SURER_FIELDS = [...RELEASE_IDS, 'pap', 'ball', 'lane'] as const;

export type SurerField = (typeof SURER_FIELDS)[number];

/** What knowing one thing would be worth to the recommendation. */
export const surerSchema = z
  .strictObject({
    unknown: unknownSchema,
    field: z
      .enum(SURER_FIELDS)
      .nullable()
      .meta({ description: 'What is to be told or measured; null where neither can be.' }),
    chance: n.meta({ description: 'Share of worlds in which another layout would then be recommended.' }),
    gain: n.meta({
      description:
        'Points of score that the answer would gain, mean over all worlds: the expected value of partial perfect information.',
    }),
    size: sizesSchema.meta({
      description:
        'How much nearer to what is wished for the other layout comes, mean over the worlds in which it is chosen; 0 for what is not wished for.',
    }),
  })
  .meta({ id: 'surer' });
