import { z } from 'zod';
import { deviationField } from './quantity.js';

/** Numbers of a ball that may be guessed or roughly known. The weight is not among them: a pound moves the hook by some 0.3 ft and 0.2 boards. */
export const UNCERTAIN_BALL_KEYS = [
  'rgIn',
  'differentialIn',
  'intermediateDifferentialIn',
  'pinToCgIn',
  'topWeightOz',
] as const;

export type UncertainBallKey = (typeof UNCERTAIN_BALL_KEYS)[number];

/** How far off the published numbers of a ball may be, where they were guessed. */
export const ballUncertaintySchema = z
  .strictObject({
    rgIn: deviationField(0.1, 'in', 'the RG'),
    differentialIn: deviationField(0.03, 'in', 'the total differential'),
    intermediateDifferentialIn: deviationField(0.02, 'in', 'the intermediate differential'),
    pinToCgIn: deviationField(2, 'in', 'the pin to the CG mark'),
    topWeightOz: deviationField(2, 'oz', 'the top weight'),
  } satisfies Readonly<Record<UncertainBallKey, z.ZodType>>)
  .meta({ description: 'How far off the numbers above may be; left out, they count as published.' });

export type BallUncertainty = z.infer<typeof ballUncertaintySchema>;

/** The numbers of a ball that are not known exactly. */
export const unsureNumbers = (uncertainty: BallUncertainty): readonly UncertainBallKey[] =>
  UNCERTAIN_BALL_KEYS.filter((key) => (uncertainty[key] ?? 0) > 0);
