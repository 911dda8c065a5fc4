import { z } from 'zod';
import { RELEASE_KEYS } from '../shared/release-guesses.js';
import { logReading } from './statements/params.js';

/*
 * What a bowler's logged shots teach, as `flarewise learned --json` would print it. Boards count from the bowler's own side.
 */

const n = z.number();
const text = z.string();

const LEARNED_NUMBER_IDS = [
  ...RELEASE_KEYS,
  'frictionOiled',
  'frictionDry',
  'filmScale',
  'lawShape',
  'finishExponent',
  'finishOnDry',
  'carriedShare',
  'wornPerPass',
  'bandWidthIn',
  'burnPerGame',
  'carriedDown',
] as const;

export type LearnedNumberId = (typeof LEARNED_NUMBER_IDS)[number];

export const FORETOLD_IDS = [
  'pinsBoard',
  'breakpointBoard',
  'hookStartFt',
  'totalHookBoards',
  'entryAngleDeg',
] as const;

export type ForetoldId = (typeof FORETOLD_IDS)[number];

const spreadSchema = z
  .strictObject({ mean: n, deviation: n.meta({ description: 'One standard deviation.' }) })
  .meta({ id: 'mean-and-deviation' });

const learnedNumberSchema = z
  .strictObject({
    id: z.enum(LEARNED_NUMBER_IDS),
    before: spreadSchema,
    after: spreadSchema,
    leftShare: n.meta({
      description: 'What is left of the standard deviation; 1 where nothing was learned.',
    }),
    isLearned: z.boolean(),
  })
  .meta({ id: 'learned-number' });

export type LearnedNumber = z.infer<typeof learnedNumberSchema>;

const foretoldSchema = z
  .strictObject(
    Object.fromEntries(FORETOLD_IDS.map((id) => [id, spreadSchema])) as Record<
      ForetoldId,
      typeof spreadSchema
    >,
  )
  .nullable()
  .meta({
    description: 'Means of a night still to come; null where most of what may be never reaches the pins.',
  });

export const learnedAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/learned-answer/1'),
    version: text,
    seed: n,
    bowler: text,
    balls: z.array(z.strictObject({ ball: text, nights: n, shots: n })),
    leftOut: z
      .array(
        z.strictObject({
          id: text,
          why: z.enum(['ball-not-kept', 'layout-not-of-ball', 'lane-not-kept']),
          named: text,
          nights: n,
        }),
      )
      .meta({ description: 'Nights that are kept and were not learned from.' }),
    nights: z
      .array(z.strictObject({ on: text.nullable(), ball: text, lane: text, shots: n }))
      .meta({ description: 'Those learned from, in the order of the balls.' }),
    lane: text.meta({ description: 'The lane that is asked about.' }),
    elsewhere: n.meta({ description: 'How many of those were on other lanes.' }),
    nightsInGutter: n.meta({
      description: 'Nights left out because more than a third of the shots fell into the gutter.',
    }),
    notLearned: z
      .strictObject({ displaySpeed: n, ringOverHole: n })
      .meta({ description: 'Shots with readings that are kept and would teach next to nothing.' }),
    numbers: z
      .array(learnedNumberSchema)
      .meta({ description: 'What lasts, as it is on the lane asked about, learned most first.' }),
    foretold: z
      .strictObject({
        ball: text,
        lane: text,
        laydownBoard: n,
        launchAngleDeg: n,
        before: foretoldSchema,
        after: foretoldSchema,
      })
      .meta({
        description:
          'The ball thrown last on the lane asked about, aimed as it was read on that night; where none was, the ball thrown last, on the line it would usually be played on there.',
      }),
    misfit: z
      .strictObject({
        chiSquare: n,
        means: n.meta({ description: 'Means of nights that were compared.' }),
        chance: n.meta({
          description: 'Of as great a misfit of all means together if the log is as it is taken to be.',
        }),
        luck: n.meta({
          description:
            'Greatest chance that a log looks as odd, in all means together or by its surest cause, if it is as it is taken to be; a log is doubted by this.',
        }),
        isDoubtful: z.boolean(),
        surprises: z.array(
          z.strictObject({
            of: z.union([
              z.strictObject({ reading: logReading }),
              z.strictObject({
                night: n.meta({ description: 'Its place among those learned from, from 0.' }),
              }),
            ]),
            means: n,
            chance: n,
          }),
        ),
        causes: z.array(
          z.strictObject({
            code: z.enum(['reads-off', 'pattern-length']),
            reading: logReading.nullable(),
            lane: text.nullable().meta({ description: 'That of the pattern.' }),
            by: n.meta({ description: 'In the unit of the reading; ft for the length of the pattern.' }),
            deviation: n,
          }),
        ),
        arrowsReadOff: n.meta({ description: 'Nights on which the arrows were read off, without a target.' }),
      })
      .meta({ description: 'Whether the log can be as it is taken to be, and what may be otherwise.' }),
    next: z
      .array(
        z.strictObject({
          reading: logReading,
          surer: n.meta({
            description:
              'Share by which the variance of the board at the pins falls after one more night of ten shots.',
          }),
        }),
      )
      .meta({
        description:
          'Which reading would teach most next on this lane, besides laydown and arrows; none where no night was on it.',
      }),
    beliefs: z.array(
      z.strictObject({
        id: text,
        says: text,
        chanceBefore: n,
        chanceAfter: n,
        factor: n.meta({ description: 'How much likelier the log is if the belief holds (Bayes factor).' }),
        silent: z.enum(['not-read', 'balls-alike']).nullable(),
        moreShots: n.nullable().meta({
          description:
            'Further shots after which the log would decide if it holds; null where it never would.',
        }),
      }),
    ),
  })
  .meta({ title: 'Learned' });

export type LearnedAnswer = z.infer<typeof learnedAnswerSchema>;
