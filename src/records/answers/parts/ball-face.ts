import { z } from 'zod';

const n = z.number();

/** A point of the ball as a unit vector from its centre, in B; a left-hander's ball is the mirror image in x. */
const pointSchema = z.tuple([n, n, n]).meta({
  id: 'point',
  description:
    'Unit vector from the ball’s centre: x toward the PAP’s side, y toward the fingers, z out through the grip centre. A left-hander’s ball is the mirror image in x.',
});

/** Where everything lies on a drilled ball's surface, as it is drawn. */
export const ballFaceSchema = z
  .strictObject({
    hand: z.enum(['right', 'left']),
    radiusIn: n,
    pap: pointSchema,
    pin: pointSchema,
    marker: pointSchema,
    markerName: z.string(),
    psa: pointSchema.nullable().meta({
      description:
        'End of the high-RG axis on the side of the mass-bias mark, else nearest the thumb; null where it is uncertain.',
    }),
    oldHoles: z
      .array(z.strictObject({ name: z.string(), at: pointSchema, boreIn: n }))
      .meta({ description: 'Holes of earlier drillings, filled.' }),
    holes: z.array(
      z.strictObject({ name: z.string(), at: pointSchema, openIn: n, boreIn: n }).meta({
        description: 'Middle of the mouth; diameters of the open hole and of the widest bore drilled for it.',
      }),
    ),
  })
  .meta({ id: 'ball-face', title: 'Ball face' });

/** One turn's oil ring on the ball. */
export const ringSchema = z
  .strictObject({ turn: n, fromFt: n, points: z.array(z.strictObject({ overIn: n, upIn: n })) })
  .meta({
    id: 'ring',
    description: 'Each turn’s ring on the ball: arcs over and up from the grip centre, like a PAP.',
  });

export type BallFace = z.infer<typeof ballFaceSchema>;
export type RingAnswer = z.infer<typeof ringSchema>;
