import { z } from 'zod';
import { choice, nameField, noteField, quantity } from './quantity.js';
import { readingErrorsSchema } from './reading-errors.js';
import { RING_OVER } from './ring-over.js';

/*
 * What a bowler saw the ball do, shot by shot. All boards are counted from the bowler's own side, a reading that was not
 * taken is left out.
 */

/** Boards of a shot: board 1 is the outermost, half a board farther out is the gutter's edge. */
const board = (what: string) =>
  quantity(0, 40, {
    unit: '(board)',
    what,
    hint: 'Boards are counted from the bowler’s own side: 1 to 39, and halves such as 17.5.',
  });

/** Readings of a shot that are numbers, in the order in which the ball gets there. */
export const READING_IDS = [
  'laydownBoard',
  'arrowsBoard',
  'breakpointBoard',
  'breakpointFt',
  'boardAt50Ft',
  'pinsBoard',
  'displaySpeedMph',
  'flareIn',
] as const;

export type ReadingId = (typeof READING_IDS)[number];

/** A reading that was not taken is left out. */
const readingFields = {
  laydownBoard: board('Where the ball is laid down').optional(),
  arrowsBoard: board('Where it crosses the arrows').optional(),
  breakpointBoard: board('Farthest out on its way').optional(),
  breakpointFt: quantity(0, 60, { unit: 'ft', what: 'How far down the lane that is' }).optional(),
  boardAt50Ft: board('Where it crosses 50 ft').optional(),
  pinsBoard: board('Where it reaches the pins').optional(),
  displaySpeedMph: quantity(5, 40, {
    unit: 'mph',
    what: 'Speed on the display over the lane, which reads less than at release',
    hint: 'km/h divided by 1.609.',
  }).optional(),
  flareIn: quantity(0, 9, { unit: 'in', what: 'Flare by tape, at the widest place' }).optional(),
} satisfies Readonly<Record<ReadingId, z.ZodType>>;

/** Readings by eye, from a record or a list: kept, shown, and compared with a wish by `adjust`; nothing is learned from them. */
const byEyeFields = {
  hookStartFt: quantity(0, 60, { unit: 'ft', what: 'By eye: where it started to hook' }).optional(),
  totalHookBoards: quantity(0, 39, { unit: 'boards', what: 'By eye: how far it came back' }).optional(),
  entryAngleDeg: quantity(0, 12, { unit: 'degrees', what: 'By eye: entry angle at the pins' }).optional(),
};

export const shotSchema = z
  .strictObject({
    ...readingFields,
    arrowsAgainstTarget: z.boolean({ error: 'must be true or false' }).optional().meta({
      description:
        'Whether the board at the arrows was read against a target that was aimed at; left out, it was where the night has a target.',
    }),
    gutter: z
      .literal(true, { error: 'must be true, or left out' })
      .optional()
      .meta({ description: 'The ball fell into the gutter on the own side before the pins.' }),
    ringOverHole: choice(RING_OVER, 'A gripping hole that an oil ring ran over.').optional(),
    ...byEyeFields,
    confirmed: z
      .literal(true, { error: 'must be true, or left out' })
      .optional()
      .meta({ description: 'The person was asked about what looks odd, and said that it was so.' }),
    note: noteField,
  })
  .superRefine((shot, ctx) => {
    if (shot.gutter && shot.pinsBoard !== undefined)
      ctx.addIssue({
        code: 'custom',
        path: ['pinsBoard'],
        message: 'must be left out where the ball fell into the gutter',
        params: { hint: 'Give one of the two.' },
      });
  })
  .meta({ id: 'shot', description: 'What was seen of one shot.' });

export type LoggedShot = z.infer<typeof shotSchema>;

/**
 * Shots with one drilled ball, on one lane in one state, at one target. An evening on which games go by or the target moves
 * is several of them, with the same day and lane.
 */
export const nightSchema = z
  .strictObject({
    on: z.iso
      .date({ error: 'must be a day, such as "2026-03-31"' })
      .optional()
      .meta({ description: 'The day.' }),
    lane: nameField.meta({ description: 'The lane: the id of a record, or a name.' }),
    games: quantity(0, 300, {
      unit: 'games',
      what: 'Games bowled on the oil before these shots, by all bowlers together',
      hint: 'Five bowlers with three games each make 15.',
    }).optional(),
    targetBoard: board('Board at the arrows that was aimed at').optional(),
    patternFt: quantity(20, 55, {
      unit: 'ft',
      what: 'Where the oil ends, where the sheet or the eye says other than the lane’s record',
    }).optional(),
    readingErrors: readingErrorsSchema.optional(),
    shots: z.array(shotSchema),
  })
  .meta({ id: 'night', description: 'What a drilled ball did on a lane, shot by shot.' });

export type Night = z.infer<typeof nightSchema>;

/** Whether the board at the arrows of a shot was read against a target. */
export const isAgainstTarget = (
  { arrowsAgainstTarget }: LoggedShot,
  { targetBoard }: Pick<Night, 'targetBoard'>,
): boolean => arrowsAgainstTarget ?? targetBoard !== undefined;
