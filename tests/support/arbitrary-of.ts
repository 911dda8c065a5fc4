import fc from 'fast-check';
import { z } from 'zod';
import { within } from './arbitraries.js';

/** A name without any unit in it, for params that a person named. */
const NAME = 'Åsa’s {odd} name';

/**
 * Any value that a schema takes, of the few kinds that statements are made of.
 *
 * @throws {Error} for another kind: then it is to be added here
 */
export function arbitraryOf(schema: z.ZodType): fc.Arbitrary<unknown> {
  if (schema instanceof z.ZodNumber)
    return fc.oneof(within(0.01, 80), within(-80, -0.01), fc.integer({ min: 1, max: 60 }));
  if (schema instanceof z.ZodString) return fc.constant(NAME);
  if (schema instanceof z.ZodBoolean) return fc.boolean();
  if (schema instanceof z.ZodLiteral) return fc.constant(schema.value);
  if (schema instanceof z.ZodEnum) return fc.constantFrom(...schema.options);
  if (schema instanceof z.ZodNullable)
    return fc.oneof(fc.constant(null), arbitraryOf(schema.unwrap() as z.ZodType));
  if (schema instanceof z.ZodOptional)
    return fc.oneof(fc.constant(undefined), arbitraryOf(schema.unwrap() as z.ZodType));
  if (schema instanceof z.ZodArray)
    return fc.array(arbitraryOf(schema.element as z.ZodType), { minLength: 1, maxLength: 3 });
  if (schema instanceof z.ZodObject)
    return fc.record(
      Object.fromEntries(Object.entries(schema.shape).map(([key, each]) => [key, arbitraryOf(each)])),
    );
  if (schema instanceof z.ZodUnion)
    return fc.oneof(...(schema.options as readonly z.ZodType[]).map(arbitraryOf));
  throw new Error(`no values for ${schema.def.type}`);
}
