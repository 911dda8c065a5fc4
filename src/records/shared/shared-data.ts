import { readFileSync } from 'node:fs';
import { z } from 'zod';

/* What lies in `shared/`, checked as it is read; it is ours, so a fault there is a bug, not an input error. */

export const sharedFile = (name: string): URL => new URL(`../../../shared/${name}`, import.meta.url);

/** A JSON file of `shared/`, not yet checked. */
export const readShared = (name: string): unknown => JSON.parse(readFileSync(sharedFile(name), 'utf8'));

const span = z.strictObject({ least: z.number(), most: z.number() });

const usual = z.strictObject({ least: z.number(), most: z.number(), tolerance: z.number().positive() });
const limited = usual.extend({ farthest: z.number() });

/** Lines that bowlers play, in boards from the own side and degrees; `tolerance` says how far outside still passes. */
const linePracticeSchema = z.strictObject({
  /** Where the path is widest: the pattern's length in feet less this many, but not outside `least`. */
  breakpointBoard: z.strictObject({
    patternFtLess: z.number(),
    least: z.number(),
    tolerance: z.number().positive(),
  }),
  laydownBoard: limited,
  arrowsBeyondBreakpoint: usual,
  launchDeg: limited,
  entryDeg: usual,
});

export type LinePractice = z.infer<typeof linePracticeSchema>;

const practiceSchema = z.strictObject({
  about: z.string(),
  drillingAngleDeg: span,
  valAngleDeg: span,
  pinToPapIn: span,
  line: linePracticeSchema,
  leastRingToHoleIn: z.number(),
  leastPinToHoleIn: z.number(),
  leastMarkerToHoleIn: z.number(),
  leastBoreWallIn: z.number(),
  notes: z.record(z.string(), z.string()),
});

/** Trade ranges and shop preferences the search keeps to. */
export type Practice = z.infer<typeof practiceSchema>;

export const loadPractice = (): Practice => practiceSchema.parse(readShared('practice.json'));

const four = z.tuple([z.number(), z.number(), z.number(), z.number()]);

const frictionPriorSchema = z.strictObject({
  about: z.string(),
  names: z.tuple([z.literal('oiled'), z.literal('dry'), z.literal('filmScale'), z.literal('finishExponent')]),
  median: four,
  logDeviation: four,
  correlation: z.tuple([four, four, four, four]),
});

/** What is known of friction before any shot is logged: normal in the logarithms, in the order of `names`. */
type FrictionPrior = z.infer<typeof frictionPriorSchema>;

export const loadFrictionPrior = (): FrictionPrior => frictionPriorSchema.parse(readShared('friction.json'));

/** What holds for any ball: codes of what answers say. */
const USUAL_CAUTIONS = ['trained-people-only', 'dust-and-resin', 'qualified-fitter', 'local-rules'] as const;

const cautionsSchema = z.strictObject({
  about: z.string(),
  cautions: z.array(z.strictObject({ code: z.enum(USUAL_CAUTIONS), source: z.string() })),
});

/** The cautions that hold for any ball, by their codes. */
export const loadCautions = (): (typeof USUAL_CAUTIONS)[number][] =>
  cautionsSchema.parse(readShared('cautions.json')).cautions.map(({ code }) => code);
