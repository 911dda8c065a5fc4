import { z } from 'zod';
import { gripSchema } from './grip.js';
import { papSchema } from './pap.js';
import { choice, deviationField, nameField, noteField, quantity, recordTag } from './quantity.js';

const scatter = (most: number, unit: string, of: string) =>
  quantity(0, most, { unit, what: `Scatter of ${of} (one standard deviation)` });

/** How much one shot differs from the next: one standard deviation of each release number. */
const scatterSchema = z
  .strictObject({
    speedMph: scatter(3, 'mph', 'ball speed'),
    revRateRpm: scatter(80, 'rpm', 'rev rate'),
    axisTiltDeg: scatter(15, 'degrees', 'axis tilt'),
    axisRotationDeg: scatter(25, 'degrees', 'axis rotation'),
    launchAngleDeg: scatter(3, 'degrees', 'launch direction'),
  })
  .meta({ description: 'Shot-to-shot scatter; left out, a figure by skill is assumed and said.' });

/** How far off the numbers themselves may be, where they were measured or guessed. */
const uncertaintySchema = z
  .strictObject({
    speedMph: deviationField(5, 'mph', 'ball speed'),
    revRateRpm: deviationField(200, 'rpm', 'rev rate'),
    axisTiltDeg: deviationField(30, 'degrees', 'axis tilt'),
    axisRotationDeg: deviationField(45, 'degrees', 'axis rotation'),
    papOverIn: deviationField(3, 'in', 'the PAP over'),
    papUpIn: deviationField(3, 'in', 'the PAP up'),
  })
  .meta({ description: 'How far off the numbers above may be; left out, they count as known.' });

/** Farthest in that a ball can be laid down, board from the own side (common practice, as in `shared/practice.json`). */
export const MOST_LAYDOWN_BOARD = 33;

export const bowlerSchema = z
  .strictObject({
    schema: recordTag('flarewise/bowler/1'),
    name: nameField,
    note: noteField,
    hand: choice(['right', 'left'], 'The hand that delivers the ball.'),
    thumbHole: z
      .boolean({ error: 'must be true or false' })
      .meta({ description: 'False for a delivery without a thumb hole.' }),
    speedMph: quantity(8, 26, {
      unit: 'mph',
      what: 'Ball speed at release',
      hint: 'Release speed in miles per hour; 1 mph is 1.609 km/h.',
    }),
    revRateRpm: quantity(30, 700, {
      unit: 'rpm',
      what: 'Rev rate at release',
      hint: 'Turns per minute, not per shot: 300 is usual, 550 is very high.',
    }),
    axisTiltDeg: quantity(0, 75, {
      unit: 'degrees',
      what: 'Axis tilt at release',
      hint: '10 to 20 is usual.',
    }),
    axisRotationDeg: quantity(0, 110, {
      unit: 'degrees',
      what: 'Axis rotation at release',
      hint: '45 is usual; 0 rolls straight down the lane.',
    }),
    pap: papSchema,
    skill: choice(
      ['beginner', 'league', 'advanced'],
      'How well shots repeat, when no scatter is given.',
    ).optional(),
    scatter: scatterSchema.optional(),
    uncertainty: uncertaintySchema.optional(),
    laydownBoard: quantity(1, MOST_LAYDOWN_BOARD, {
      unit: '(board)',
      what: "Board where the ball is laid down, counted from the bowler's own side",
    }).optional(),
    grip: gripSchema.optional(),
  })
  .meta({ id: 'bowler', title: 'Bowler', description: 'One bowler: release, PAP and grip.' });

export type Bowler = z.infer<typeof bowlerSchema>;
export type Scatter = z.infer<typeof scatterSchema>;

/** A PAP known no better than this (one standard deviation) is a guess, in. */
export const GUESSED_PAP_IN = 0.25;

/** How far a bowler's PAP may be off, one standard deviation, in. */
export const papUncertaintyIn = ({ uncertainty }: Pick<Bowler, 'uncertainty'>): number =>
  Math.max(uncertainty?.papOverIn ?? 0, uncertainty?.papUpIn ?? 0);
