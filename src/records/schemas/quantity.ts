import { z } from 'zod';

/** What a number in a record means to the person who types it. */
interface QuantityText {
  readonly unit: string;
  readonly what: string;
  /** What to check when the number is out of range, usually the unit slip people make. */
  readonly hint?: string;
}

/**
 * A number within a stated range, in a stated unit, with the remedy when it is not.
 *
 * The range is what the sport and the human body allow, wide enough for every real bowler and ball; it
 * catches unit slips (45 for 4 1/2 in), it does not judge.
 */
export function quantity(min: number, max: number, { unit, what, hint }: QuantityText) {
  const rule = `must be ${min} to ${max} ${unit}`;
  return z
    .number({ error: `must be a number, ${min} to ${max} ${unit}` })
    .min(min, rule)
    .max(max, rule)
    .meta({ description: `${what}, ${unit}`, unit, ...(hint ? { hint } : {}) });
}

/** How far off a number may be, one standard deviation; left out, the number counts as known. */
export const deviationField = (most: number, unit: string, of: string) =>
  quantity(0, most, { unit, what: `Of ${of} (one standard deviation)` }).optional();

/** A schema without its `optional`, `nullable` and `default` wrappers. */
export function unwrapped(schema: z.ZodType): z.ZodType {
  return schema instanceof z.ZodOptional || schema instanceof z.ZodNullable || schema instanceof z.ZodDefault
    ? unwrapped(schema.unwrap() as z.ZodType)
    : schema;
}

/** A schema without its wrappers; of a choice of several schemas, the one that a value says it is, if any. */
export function meantBy(schema: z.ZodType, value: unknown): z.ZodType | undefined {
  const inner = unwrapped(schema);
  if (!(inner instanceof z.ZodDiscriminatedUnion)) return inner;
  const { discriminator } = inner.def;
  const tag = (value as Record<string, unknown> | null | undefined)?.[discriminator];
  const options = inner.options as readonly z.ZodObject[];
  return options.find(({ shape }) => {
    const named = shape[discriminator];
    return named instanceof z.ZodLiteral && named.value === tag;
  });
}

/** The unit of a number's schema; undefined for one that is no quantity. */
export const recordUnit = (schema: z.ZodType): string | undefined =>
  (schema.meta() as { unit?: string } | undefined)?.unit;

/** What to do about a field that breaks its rule: the hint that its schema carries, else what belongs there. */
export function remedyOf(schema: z.ZodType): string | undefined {
  const { hint, description } = (schema.meta() ?? {}) as { hint?: string; description?: string };
  return hint ?? (description && `What belongs there: ${description.replace(/\.$/, '')}.`);
}

/** One of a few words; the message lists them. */
export function choice<const T extends readonly [string, ...string[]]>(options: T, what: string) {
  return z
    .enum(options, { error: `must be ${options.map((o) => `"${o}"`).join(' or ')}` })
    .meta({ description: what });
}

/** The `schema` line every record starts with: its kind and version. */
export const recordTag = <const T extends string>(tag: T) =>
  z.literal(tag, { error: `must be "${tag}"` }).meta({ description: 'Kind and version of this record.' });

export const nameField = z
  .string({ error: 'must be a text' })
  .min(1, 'must not be empty')
  .max(80, 'must be at most 80 characters')
  .meta({ description: 'What to call it on screen.' });

export const noteField = z
  .string({ error: 'must be a text' })
  .max(600, 'must be at most 600 characters')
  .optional()
  .meta({ description: 'Anything a person should know; not used in the computation.' });

/** Name of another file, beside the record or in a folder seen from there. */
export const fileField = (what: string) =>
  z
    .string({ error: 'must be a text: the name of a file' })
    .min(1, 'must not be empty')
    .max(400, 'must be at most 400 characters')
    .meta({ description: what });
