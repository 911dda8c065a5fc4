import { z } from 'zod';
import { readShared } from './shared-data.js';

const deviationsSchema = z.strictObject({
  speedMph: z.number().positive(),
  revRateRpm: z.number().positive(),
  axisTiltDeg: z.number().positive(),
  axisRotationDeg: z.number().positive(),
  papOverIn: z.number().positive(),
  papUpIn: z.number().positive(),
  rgIn: z.number().positive(),
  differentialIn: z.number().positive(),
  intermediateDifferentialIn: z.number().positive(),
  pinToCgIn: z.number().positive(),
  topWeightOz: z.number().positive(),
});

const aboutSchema = z.strictObject({ about: z.string(), deviation: deviationsSchema });

/** The numbers of a bowler or a ball that may be known as a range or as `about` a value. */
export type UncertainKey = keyof z.infer<typeof deviationsSchema>;

/** How far off each may be that was typed with `about` (one standard deviation; assumed, no source), in its own unit. */
export const ABOUT_DEVIATION: Readonly<Record<UncertainKey, number>> = aboutSchema.parse(
  readShared('about.json'),
).deviation;
