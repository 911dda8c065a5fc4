import { z } from 'zod';
import { fromKeys } from '../../../base/from-keys.js';
import { SHARED_IDS } from '../../schemas/reaction-numbers.js';

const n = z.number();

export const causesOfSchema = z
  .strictObject({
    total: n,
    centre: n.meta({ description: 'By where the centre of mass lies (static weight).' }),
    flare: n.meta({ description: 'By flare: what goes when no oil stays on the ball.' }),
    inertia: n.meta({ description: 'By RG and differentials, but for flare.' }),
    without: z.strictObject({ centre: n, flare: n, inertia: n }).meta({
      description:
        'What is left of the total where both balls have the reference’s centre of mass; where no oil stays on either; where both ' +
        'have the reference’s inertia, and so its flare.',
    }),
  })
  .meta({ id: 'causes', description: 'A difference split by what of the drilled ball makes it; exact.' });

/** When there are no causes, in the descriptions of schemas. */
export const WHEN_NO_CAUSES =
  'null where the balls tried cannot be compared: one does not reach the pins, or is laid down on another board than the others';

/** What of the drilled ball makes its shot differ from the reference's, each on its own line in the nominal world. */
export const causesSchema = z.strictObject({
  score: causesOfSchema,
  ...fromKeys(SHARED_IDS, () => causesOfSchema),
  atUsualFinish: z
    .strictObject({ grit: n, usualGrit: n, ...fromKeys(SHARED_IDS, () => n) })
    .nullable()
    .meta({
      description:
        'The differences with the usual finish; null where the ball has it, or with it plays the layouts from different boards.',
    }),
  byDrillingAngle: z
    .strictObject({
      score: n,
      withCentreHeld: n,
      movesOz: z.strictObject({ top: n, side: n, finger: n }),
    })
    .nullable()
    .meta({
      description:
        'What the drilling angle brings last, after the other two numbers: points, those left with the centre of mass held where it ' +
        'was, and what it changes of the static weights. Null for a ball without a mark, or where these balls are played from different boards.',
    }),
});
