import { z } from 'zod';

const n = z.number();

/** 5th and 95th percentile. */
export const bandSchema = z.strictObject({ low: n, high: n }).meta({ id: 'band' });

export const layoutAnswerSchema = z
  .strictObject({
    text: z.string(),
    drillingAngleDeg: n.nullable(),
    pinToPapIn: n,
    valAngleDeg: n,
    pinBufferIn: n,
    markerToPapIn: n.nullable(),
  })
  .meta({
    id: 'layout',
    title: 'Layout',
    description:
      'In both notations; text is drilling angle x pin-to-PAP x VAL angle. Null where the CG lies on the pin: there is no mark to aim at.',
  });
