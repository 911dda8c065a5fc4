import { z } from 'zod';
import { laneSchema } from '../schemas/lane.js';
import { assumptionSchema } from './statements/assumptions.js';
import { laneRemarkSchema } from './statements/lane-remarks.js';
import type { Unworded } from './statements/statement-schema.js';

/*
 * What `flarewise lane --json` prints. Boards count from the own side of the hand asked for.
 */

const n = z.number();

const amountsSchema = z.strictObject({ own: n, middle: n, far: n });

export const laneAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/lane-answer/2'),
    version: z.string(),
    lane: laneSchema,
    hand: z.enum(['right', 'left']),
    film: z
      .array(z.strictObject({ distanceFt: n, units: z.array(n) }))
      .meta({ description: 'Film as the ball meets it, by foot and by board: 39 numbers, board 1 first.' }),
    oil: z
      .strictObject({
        total: n.meta({ description: 'Units of film times square feet of lane.' }),
        meanUnits: amountsSchema.meta({
          description: 'Mean film over the pattern: boards 3 to 7, 18 to 22, and 33 to 37.',
        }),
        middleToOwn: n.nullable().meta({ description: 'Null when the outside is bare.' }),
        middleToFar: n.nullable(),
        endsByFoot: z
          .array(z.strictObject({ toFt: n, share: n }))
          .meta({ description: 'Share of all oil that lies before each distance.' }),
      })
      .meta({ description: 'Only what the zones, and the games bowled on them, say.' }),
    friction: z
      .array(z.strictObject({ distanceFt: n, boards: z.array(z.strictObject({ board: n, friction: n })) }))
      .meta({ description: 'Kinetic friction of a cover of 2000 grit at some places.' }),
    wear: z
      .strictObject({
        games: n,
        wornSide: z.enum(['right', 'left']),
        takenFromTrack: n.meta({ description: 'Share of the film in the middle of the track that is gone.' }),
        takenOfAll: n.meta({ description: 'Share of all oil that balls took up.' }),
        carriedDown: n.meta({ description: 'Share of all oil that lies past the end of the pattern.' }),
        carriedOff: n.meta({ description: 'Share of all oil that left on balls.' }),
      })
      .nullable(),
    says: z.array(laneRemarkSchema),
    assumptions: z.array(assumptionSchema),
  })
  .meta({ title: 'Lane' });

export type LaneAnswer = Unworded<z.infer<typeof laneAnswerSchema>>;
