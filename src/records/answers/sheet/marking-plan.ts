import { z } from 'zod';

const n = z.number();

const holdSchema = z.strictObject({ away: z.string(), toward: z.string() }).meta({
  description:
    'How the ball is held: the first mark away from you, the second toward you, looking down on it.',
});

const sideSchema = z.enum(['left', 'right']).nullable().meta({
  description: 'As the eye sees it, with the ball held this way; null where the mark lies on that line.',
});

const waySchema = z
  .discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('arcs'),
      arcs: z.array(z.strictObject({ from: z.string(), inches: n })).length(2),
      hold: holdSchema,
      side: sideSchema,
      crossingDeg: n.meta({
        description: 'At which the arcs cross; near 0 a small error moves the mark far.',
      }),
      offIn: n,
    }),
    z.strictObject({
      kind: z.literal('turn'),
      at: z.string().meta({ description: 'Where the protractor lies.' }),
      from: z.string().meta({ description: 'Mark or line that the angle is taken from.' }),
      deg: n.meta({ description: 'To a whole degree.' }),
      inches: n.meta({ description: 'How far to go; 0 where only a line is drawn.' }),
      way: z.enum(['on', 'up', 'down']).meta({
        description:
          'Which way to go: on along the line that was turned to, or up or down the VAL that it is.',
      }),
      hold: holdSchema,
      side: sideSchema,
      offIn: n,
    }),
    z.strictObject({
      kind: z.literal('any-direction'),
      from: z.string(),
      inches: n,
      offIn: n,
    }),
    z.strictObject({ kind: z.literal('same-point'), as: z.string(), offIn: n }),
  ])
  .meta({
    description: 'One way to find a mark; `offIn`: how far from its true place the rounded numbers put it.',
  });

const stepSchema = z.strictObject({
  mark: z.string(),
  ways: z.array(waySchema).min(1).max(2).meta({ description: 'The more exact one first.' }),
  draw: z.array(z.enum(['pin-to-pap', 'val', 'midline', 'centre-line'])),
  fromPinIn: n.meta({ description: 'Arc from the pin to it, to be measured once it is marked.' }),
});

const layoutFoundSchema = z.strictObject({
  drillingAngleDeg: n.nullable(),
  pinToPapIn: n,
  valAngleDeg: n.nullable(),
});

/** How to lay a ball out with tape and protractor, and what rounding makes of the layout. */
export const markingPlanSchema = z.strictObject({
  given: z.array(z.string()).meta({ description: 'Marks an undrilled ball has.' }),
  steps: z.array(stepSchema).meta({
    description:
      'In working order; lengths to a sixteenth of an inch, or with --units metric to a millimetre, though still in inches.',
  }),
  readBack: layoutFoundSchema.meta({
    description: 'The layout of marks placed by the first way of each step; null where none is defined.',
  }),
  error: layoutFoundSchema.meta({ description: 'The same less what was asked for.' }),
});

export type MarkingPlan = z.infer<typeof markingPlanSchema>;
export type MarkingStep = z.infer<typeof stepSchema>;
export type MarkingWay = z.infer<typeof waySchema>;
