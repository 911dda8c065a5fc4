import { z } from 'zod';
import { FRICTION_PRIOR } from '../shared/friction-prior.js';
import { choice, nameField, noteField, quantity, recordTag } from './quantity.js';

/** Kinetic friction on heavy oil and on dry boards where a lane states none. */
const [FRICTION_OILED, FRICTION_DRY] = FRICTION_PRIOR.median;

const feet = (what: string) => quantity(0, 60, { unit: 'ft', what, hint: 'Feet from the foul line.' });
const board = (what: string) =>
  quantity(0, 39, { unit: '(board edge)', what, hint: '0 is the right edge of the lane, 39 the left edge.' });
const units = (what: string) =>
  quantity(0, 150, { unit: 'units', what, hint: 'Thickness of the oil film; 5 is thin, 60 is heavy.' });

const zoneSchema = z
  .strictObject({
    fromFt: feet('Where the zone begins'),
    toFt: feet('Where the zone ends'),
    fromBoard: board('Its right edge'),
    toBoard: board('Its left edge'),
    units: units('Oil at its beginning'),
    unitsAtEnd: units('Oil at its end; the same as at its beginning when left out').optional(),
  })
  .superRefine((zone, ctx) => {
    if (!(zone.toFt > zone.fromFt))
      ctx.addIssue({
        code: 'custom',
        path: ['toFt'],
        message: `must be greater than fromFt (${zone.fromFt})`,
      });
    if (!(zone.toBoard > zone.fromBoard))
      ctx.addIssue({
        code: 'custom',
        path: ['toBoard'],
        message: `must be greater than fromBoard (${zone.fromBoard})`,
      });
  })
  .meta({ description: 'A rectangle of oil. Where zones overlap the thicker film counts.' });

const friction = (what: string) =>
  quantity(0.005, 0.4, { unit: '(no unit)', what, hint: 'About 0.025 on oil and 0.20 on dry boards.' });

export const laneSchema = z
  .strictObject({
    schema: recordTag('flarewise/lane/1'),
    name: nameField,
    note: noteField,
    patternFt: quantity(20, 55, {
      unit: 'ft',
      what: 'Where the oil ends',
      hint: '32 is short, 40 usual, 47 long.',
    }),
    zones: z
      .array(zoneSchema)
      .min(1, 'must hold at least one zone')
      .max(60, 'must hold at most 60 zones')
      .meta({ hint: 'A bare lane has one zone of 0 units.' }),
    games: quantity(0, 300, {
      unit: 'games',
      what: 'Games bowled on this oil by all bowlers together; 0, fresh oil, when left out',
      hint: 'Five bowlers with three games each make 15.',
    }).optional(),
    wornSide: choice(
      ['right', 'left'],
      'The side of the lane most of those games were played on; right when left out.',
    ).optional(),
    frictionOiled: friction('Kinetic friction on heavy oil').optional(),
    frictionDry: friction('Kinetic friction on dry boards').optional(),
  })
  .superRefine((lane, ctx) => {
    lane.zones.forEach((zone, i) => {
      if (zone.toFt > lane.patternFt)
        ctx.addIssue({
          code: 'custom',
          path: ['zones', i, 'toFt'],
          message: `must not lie beyond patternFt (${lane.patternFt})`,
        });
    });
    const lastFt = Math.max(...lane.zones.map(({ toFt }) => toFt));
    const areSound = lane.zones.length > 0 && lane.zones.every(({ fromFt, toFt }) => toFt > fromFt);
    if (areSound && lastFt < lane.patternFt)
      ctx.addIssue({
        code: 'custom',
        path: ['patternFt'],
        message: `must be where the last zone ends (${lastFt})`,
      });
    const oiled = lane.frictionOiled ?? FRICTION_OILED;
    const dry = lane.frictionDry ?? FRICTION_DRY;
    if (!(dry > oiled))
      ctx.addIssue({
        code: 'custom',
        path: ['frictionDry'],
        message: `must be greater than frictionOiled (${oiled})`,
      });
  })
  .meta({ id: 'lane', title: 'Lane', description: 'Oil by board and distance, and friction.' });

export type Lane = z.infer<typeof laneSchema>;
