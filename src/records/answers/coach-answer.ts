import { z } from 'zod';
import { fromKeys } from '../../base/from-keys.js';
import type { RefusalStatement } from '../refusals/refusal.js';
import { UNCERTAIN_BALL_KEYS } from '../schemas/ball-uncertainty.js';
import { COMPARED_IDS } from '../schemas/reaction-numbers.js';
import { wantSchema } from '../schemas/want.js';
import { RELEASE_KEYS } from '../shared/release-guesses.js';
import { learnedFromSchema } from './parts/learned-from.js';
import { reactionSchema } from './parts/shot-answer.js';
import { targetSchema } from './parts/simulated-layout.js';
import { leverEffectSchema } from './recommend-answer.js';
import { bagRemarkSchema, MOVER_KINDS, pairRemarkSchema } from './statements/coach-remarks.js';
import { differenceSchema, scatterSchema, sizesSchema } from './statements/differences.js';
import type { Unworded } from './statements/statement-schema.js';

const n = z.number();

const rolledSchema = z.strictObject({
  layout: z.string(),
  score: n.meta({ description: '0 to 100, in the nominal world.' }),
  reaction: reactionSchema,
});

/** One bowler with one ball on one lane: the best layout, and what else would move the reaction. */
export const coachPairSchema = z
  .strictObject({
    schema: z.literal('flarewise/coach-pair/4'),
    bowler: z.string(),
    unsure: z.partialRecord(z.enum([...RELEASE_KEYS, ...UNCERTAIN_BALL_KEYS]), n).meta({
      description:
        'How far off the numbers of the release and the ball are that were guessed or measured roughly, one standard deviation; ' +
        'worlds vary them.',
    }),
    ball: z.string(),
    lane: z.string(),
    want: wantSchema,
    best: rolledSchema.extend({
      beatsMiddle: n.meta({
        description: 'Share of worlds in which it scores above the usual middle layout.',
      }),
      meanScore: n.meta({ description: 'Mean over all worlds.' }),
      deviations: z.strictObject(fromKeys(COMPARED_IDS, () => n)).meta({
        description:
          'Standard deviations of its reaction over the worlds in which the ball reaches the pins.',
      }),
    }),
    middle: rolledSchema,
    learned: learnedFromSchema.optional(),
    targets: z.array(targetSchema),
    overMiddle: differenceSchema.nullable().meta({
      description: 'Of the best layout from the usual middle one; null where it is that.',
    }),
    overMiddleDeviations: sizesSchema.nullable().meta({
      description: 'Standard deviations of that difference over the worlds in which both reach the pins.',
    }),
    scatter: scatterSchema,
    levers: z
      .array(leverEffectSchema)
      .meta({ description: 'What other changes would do with the best layout.' }),
    advice: z.enum([...MOVER_KINDS, 'none']).meta({
      description: 'What moves the wished numbers farthest; none where it could not be seen.',
    }),
    says: pairRemarkSchema,
  })
  .meta({ title: 'A pair of bowler and ball' });

/** All balls of one bowler on one lane side by side. */
export const coachBagSchema = z
  .strictObject({
    schema: z.literal('flarewise/coach-bag/3'),
    bowler: z.string(),
    lane: z.string(),
    best: z.string().meta({
      description:
        'The ball that comes nearest to the wish, each with its best layout, against targets between those of all.',
    }),
    alike: z
      .array(z.tuple([z.string(), z.string()]))
      .meta({ description: 'Balls that do the same, each with its best layout.' }),
    gaps: z.array(z.strictObject({ fromBoards: n, toBoards: n })).meta({
      description: 'Total hook, boards, that lies between two balls farther apart than the others.',
    }),
    says: z.array(bagRemarkSchema),
  })
  .meta({ title: 'A bag of balls' });

export const COACH_FAULT = 'flarewise/coach-fault/2';

/** A pair that could not be answered, and why. */
export interface CoachFault {
  readonly schema: typeof COACH_FAULT;
  readonly bowler: string;
  readonly ball: string;
  readonly lane: string;
  readonly refusals: readonly RefusalStatement[];
}

const coachFaultSchema = z
  .strictObject({
    schema: z.literal(COACH_FAULT),
    bowler: z.string(),
    ball: z.string(),
    lane: z.string(),
    refusals: z
      .array(z.strictObject({ code: z.string(), params: z.looseObject({}) }))
      .min(1)
      .meta({ description: 'What cannot be, each by its code and what it is about.' }),
    fault: z.string().meta({ description: 'The same in English.' }),
  })
  .meta({ title: 'A pair that could not be answered' });

export const COACH_DONE = 'flarewise/coach-done/1';

const coachDoneSchema = z
  .strictObject({ schema: z.literal(COACH_DONE), key: z.string() })
  .meta({ title: 'End of one bowler on one lane', description: 'Only in the file that --out writes.' });

/** A line as it is printed, or written to a file. */
export const coachLineSchema = z
  .discriminatedUnion('schema', [coachPairSchema, coachBagSchema, coachFaultSchema, coachDoneSchema])
  .meta({ title: 'Coach', description: 'One JSON line of coach; with --json it prints a list of them.' });

export type CoachPair = Unworded<z.infer<typeof coachPairSchema>>;
export type CoachBag = Unworded<z.infer<typeof coachBagSchema>>;
export type CoachLine = CoachPair | CoachBag | CoachFault;
