import { z } from 'zod';
import { gripSchema } from './grip.js';
import { choice, nameField, noteField, quantity, recordTag } from './quantity.js';

/** Positive axis point: arcs from the grip centre along the midline, then up along the vertical axis line. */
const papSchema = z
  .strictObject({
    overIn: quantity(2, 7.5, {
      unit: 'in',
      what: 'PAP: arc from the grip centre over along the midline',
      hint: 'Arc length on the ball in inches: 5 1/8 is written 5.125.',
    }),
    upIn: quantity(-3, 3, {
      unit: 'in',
      what: 'PAP: arc up (negative: down) from the midline along the vertical axis line',
      hint: 'Arc length in inches; down is negative.',
    }),
  })
  .meta({ description: 'Positive axis point, measured on the ball with a tape.' });

/** How much one shot differs from the next: one standard deviation of each release number. */
const scatterSchema = z
  .strictObject({
    speedMph: quantity(0, 3, { unit: 'mph', what: 'Scatter of ball speed (one standard deviation)' }),
    revRateRpm: quantity(0, 80, { unit: 'rpm', what: 'Scatter of rev rate (one standard deviation)' }),
    axisTiltDeg: quantity(0, 15, { unit: 'degrees', what: 'Scatter of axis tilt (one standard deviation)' }),
    axisRotationDeg: quantity(0, 25, {
      unit: 'degrees',
      what: 'Scatter of axis rotation (one standard deviation)',
    }),
    launchAngleDeg: quantity(0, 3, {
      unit: 'degrees',
      what: 'Scatter of launch direction (one standard deviation)',
    }),
  })
  .meta({ description: 'Shot-to-shot scatter; left out, a figure by skill is assumed and said.' });

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
      hint: 'Turns per minute, not per shot: 325 is usual, 550 is very high.',
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
    laydownBoard: quantity(1, 39, {
      unit: '(board)',
      what: "Board where the ball is laid down, counted from the bowler's own side",
    }).optional(),
    grip: gripSchema.optional(),
  })
  .meta({ title: 'Bowler', description: 'One bowler: release, PAP and grip.' });

export type Bowler = z.infer<typeof bowlerSchema>;
export type Scatter = z.infer<typeof scatterSchema>;
