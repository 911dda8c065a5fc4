import { z } from 'zod';
import { legalityFindingSchema } from '../statements/legality-findings.js';
import { bandSchema } from './layout-answer.js';

const n = z.number();

export const drilledSchema = z
  .strictObject({
    massLb: n,
    rgIn: n,
    differentialIn: n,
    intermediateDifferentialIn: n,
    staticOz: z.strictObject({ top: n, side: n, finger: n }).meta({
      description: 'Positive: toward the grip (top), the PAP side (side), the fingers (finger).',
    }),
  })
  .meta({ id: 'drilled-numbers' });

/** Where the drilled ball's high-RG axis comes out: on the side of its mass-bias mark, else nearest the thumb. */
export const psaSchema = z
  .strictObject({
    overIn: n,
    upIn: n,
    fromPapIn: n,
    fromPinIn: n,
    fromMarkIn: n.nullable().meta({
      description:
        'From the mass-bias mark: how far drilling moved the axis. Null for a ball without mass bias.',
    }),
    fromGripCentreIn: n,
    certain: z.boolean(),
  })
  .meta({
    id: 'psa',
    description:
      'Where the drilled ball’s high-RG axis comes out: on the side of its mass-bias mark, else nearest the thumb.',
  });

/** How the drilled core starts to move the axis over the ball, before the lane does anything. */
export const flareStartSchema = z
  .strictObject({
    perTurnIn: n.meta({
      description: 'How far the axis, and with it the oil rings, moves in the first turn.',
    }),
    share: n.meta({
      description:
        'Of the most that the drilled total differential can give, halfway between low-RG and high-RG axis.',
    }),
  })
  .meta({ id: 'flare-start' });

export const markSchema = z
  .strictObject({ mark: z.string(), fromGripCentreIn: n, fromPapIn: n, fromPinIn: n.nullable() })
  .meta({
    id: 'mark',
    description: 'Tape arcs that place a mark; any two from marks already on the ball find it.',
  });

export const legalitySchema = z
  .strictObject({
    ruleSet: z.string(),
    edition: z.string(),
    legal: z.boolean(),
    findings: z.array(legalityFindingSchema),
  })
  .meta({ id: 'legality' });

export const drilledBandsSchema = z
  .strictObject({
    rgIn: bandSchema,
    differentialIn: bandSchema,
    intermediateDifferentialIn: bandSchema,
  })
  .meta({ id: 'drilled-bands' });

export const undrilledSchema = z
  .strictObject({
    massLb: n,
    rgIn: n,
    differentialIn: n,
    intermediateDifferentialIn: n,
  })
  .meta({ id: 'undrilled-numbers' });

export const redrilledSchema = z
  .strictObject({
    oldHoles: n,
    plugOz: n.meta({ description: 'What fills the old holes, before the new ones are drilled.' }),
    plugTakenOz: n.meta({ description: 'What the new holes take of it.' }),
    oldMarks: z.array(markSchema).meta({ description: 'Where the old holes come to lie, plugged.' }),
    plugged: undrilledSchema.meta({ description: 'The ball with its old holes filled and no new ones.' }),
  })
  .meta({ description: 'Of a ball that was drilled before; null for a new one.' });
