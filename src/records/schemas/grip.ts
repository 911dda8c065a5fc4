import { z } from 'zod';
import { choice, quantity } from './quantity.js';

/** Densities assumed of a slug and of an insert, g/cc (1.1 to 1.25: common practice, no source). */
export const USUAL_SLUG_GCC = 1.18;
export const USUAL_INSERT_GCC = 1.15;

const pitch = (what: string) =>
  quantity(-1, 1, {
    unit: 'in',
    what,
    hint: 'Offset of the hole axis from the ball centre in inches; usually under 3/4.',
  });

const diameter = (what: string) =>
  quantity(0.5, 1.5, { unit: 'in', what, hint: 'Inches, such as 0.969 or "31/32".' });

const depth = (what: string) =>
  quantity(0.5, 4, { unit: 'in', what, hint: 'Depth of the straight wall in inches.' });

const sleeveSchema = z
  .strictObject({
    boreIn: diameter('Diameter drilled for the slug or insert'),
    depthIn: depth('Depth drilled for the slug or insert'),
    heightIn: depth('How far down from the surface the slug or insert fills that bore'),
    densityGcc: quantity(0.9, 1.6, {
      unit: 'g/cc',
      what: `Density of slug or insert; left out, ${USUAL_SLUG_GCC} for a slug and ${USUAL_INSERT_GCC} for an insert is assumed and said`,
      hint: '1.1 to 1.25 is usual.',
    }).optional(),
  })
  .meta({
    id: 'sleeve',
    description: 'Slug or insert put back into a wider bore; null where there is none.',
  });

const holeSchema = z
  .strictObject({
    diameterIn: diameter('Diameter of the open hole'),
    depthIn: depth('Depth of the open hole'),
    forwardPitchIn: pitch('Pitch toward the palm (negative: reverse)'),
    lateralPitchIn: pitch('Pitch toward the PAP side (negative: away from it)'),
    sleeve: sleeveSchema.nullable(),
  })
  .meta({ id: 'hole', description: 'One gripping hole.' });

const surfacePlace = (what: string) =>
  quantity(-7, 7, {
    unit: 'in',
    what,
    hint: 'Arc length on the ball in inches, from the grip centre, as a PAP is measured.',
  });

const ventSchema = z
  .strictObject({
    into: choice(['thumb', 'middle', 'ring'], 'The gripping hole it lets air into.'),
    diameterIn: quantity(0.0625, 0.5, {
      unit: 'in',
      what: 'Diameter of the vent',
      hint: 'The sport allows up to 1/4 in.',
    }),
    overIn: surfacePlace('Its mouth: arc from the grip centre over along the midline, toward the PAP side'),
    upIn: surfacePlace('Its mouth: arc up (negative: down) from the midline'),
    meetsAtIn: quantity(0.5, 4, {
      unit: 'in',
      what: 'How deep it meets the axis of that hole; left out, at the bottom of its straight wall',
    }).optional(),
  })
  .meta({ description: 'A narrow straight hole from the surface into a gripping hole.' });

export const gripSchema = z
  .strictObject({
    spanMiddleIn: quantity(2, 6, {
      unit: 'in',
      what: 'Span, thumb edge to middle finger edge',
      hint: '3 to 5 is usual.',
    }),
    spanRingIn: quantity(2, 6, {
      unit: 'in',
      what: 'Span, thumb edge to ring finger edge',
      hint: '3 to 5 is usual.',
    }),
    bridgeIn: quantity(0.125, 1, {
      unit: 'in',
      what: 'Bridge between the finger holes',
      hint: '1/4 is usual.',
    }),
    thumb: holeSchema.nullable(),
    middle: holeSchema,
    ring: holeSchema,
    tip: z.enum(['flat', 'cone', 'round'], { error: 'must be "flat", "cone" or "round"' }).meta({
      description: 'How a hole ends below its straight wall: flat, 118° drill point, or hemisphere.',
    }),
    vents: z.array(ventSchema).max(5, 'must be at most 5 vents').optional().meta({
      description: 'Vent holes. Their mouths are kept clear of oil rings like those of other holes.',
    }),
  })
  .meta({ id: 'grip', description: 'Grip as drilled. Left out, common sizes are assumed and said.' });

export type GripRecord = z.infer<typeof gripSchema>;
export type HoleRecord = z.infer<typeof holeSchema>;
export type VentRecord = z.infer<typeof ventSchema>;

/**
 * The grip assumed when a bowler gives none: fingertip, inserts in the fingers, a slug in the thumb.
 * Sizes: common practice, no source.
 */
export function usualGrip(thumbHole: boolean): GripRecord {
  const finger = (lateralPitchIn: number): HoleRecord => ({
    diameterIn: 0.75,
    depthIn: 2.25,
    forwardPitchIn: 0,
    lateralPitchIn,
    sleeve: { boreIn: 0.969, depthIn: 2.25, heightIn: 1.5, densityGcc: USUAL_INSERT_GCC },
  });
  return {
    spanMiddleIn: 4.375,
    spanRingIn: 4.5,
    bridgeIn: 0.25,
    thumb: thumbHole
      ? {
          diameterIn: 1,
          depthIn: 2.5,
          forwardPitchIn: -0.125,
          lateralPitchIn: 0,
          sleeve: { boreIn: 1.25, depthIn: 2.75, heightIn: 2.75, densityGcc: USUAL_SLUG_GCC },
        }
      : null,
    middle: finger(0),
    ring: finger(0),
    tip: 'cone',
  };
}
