import { z } from 'zod';
import { differenceSchema } from '../statements/differences.js';
import { layoutAnswerSchema } from './layout-answer.js';

const n = z.number();

/** What one voice would choose, and what all three make of it. */
const choiceSchema = layoutAnswerSchema.extend({
  scores: z
    .strictObject({ weighed: n, physics: n, practice: n })
    .meta({ description: '0 to 100, each against what layouts of this ball attain by that voice.' }),
  overMiddle: differenceSchema.meta({ description: 'Against the usual middle layout.' }),
});

/** What physics alone, practice alone and both combined would choose. */
export const voicesSchema = z
  .strictObject({
    practicePercent: n.meta({ description: 'The chance that a belief of practice holds.' }),
    weighed: choiceSchema.meta({ description: 'The recommendation.' }),
    physics: choiceSchema,
    practice: choiceSchema,
    apart: z
      .strictObject({
        difference: differenceSchema.meta({ description: 'Of practice’s choice from physics’.' }),
        belief: z
          .strictObject({ id: z.string(), says: z.string(), share: n })
          .meta({
            description:
              'The belief that does most for practice’s choice beside physics’, and its share of what practice finds between them.',
          })
          .nullable(),
      })
      .nullable()
      .meta({ description: 'Null where physics and practice choose layouts that hardly differ.' }),
  })
  .meta({ id: 'voices' });
