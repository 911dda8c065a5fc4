import { readFileSync } from 'node:fs';
import { z } from 'zod';

/* What lies in `shared/`, checked as it is read; it is ours, so a fault there is a bug, not an input error. */

export const sharedFile = (name: string): URL => new URL(`../../shared/${name}`, import.meta.url);

/** A JSON file of `shared/`, not yet checked. */
export const readShared = (name: string): unknown => JSON.parse(readFileSync(sharedFile(name), 'utf8'));

const span = z.strictObject({ least: z.number(), most: z.number() });

const practiceSchema = z.strictObject({
  about: z.string(),
  drillingAngleDeg: span,
  valAngleDeg: span,
  pinToPapIn: span,
  leastRingToHoleIn: z.number(),
  leastPinToHoleIn: z.number(),
  leastMarkerToHoleIn: z.number(),
  notes: z.record(z.string(), z.string()),
});

/** Trade ranges and shop preferences the search keeps to. */
export type Practice = z.infer<typeof practiceSchema>;

export const loadPractice = (): Practice => practiceSchema.parse(readShared('practice.json'));

const cautionsSchema = z.strictObject({
  cautions: z.array(z.strictObject({ text: z.string(), source: z.string() })),
});

/** The usual cautions, one sentence or two each. */
export const loadCautions = (): string[] =>
  cautionsSchema.parse(readShared('cautions.json')).cautions.map(({ text }) => text);
