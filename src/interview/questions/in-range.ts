import { z } from 'zod';
import type { Quantity, Units } from '../../report/text/display-units.js';
import { withQuantities } from '../../report/text/with-quantities.js';

/** The range of a number's schema, marked with its quantity: `{8 to 26 speed}`. */
export const markedRange = (schema: z.ZodType, quantity: Quantity): string => {
  const { minValue, maxValue } = schema as z.ZodNumber;
  return `{${minValue} to ${maxValue} ${quantity}}`;
};

/** The range of a number's schema, for its help; for a number without a quantity, the unit is in the question. */
export function rangeText(schema: z.ZodType, quantity: Quantity | undefined): string {
  const { minValue, maxValue } = schema as z.ZodNumber;
  return quantity ? markedRange(schema, quantity) : `${minValue} to ${maxValue}`;
}

/** The same schema, with its rule in some units. */
export function inRange(schema: z.ZodType, quantity: Quantity, units: Units): z.ZodType {
  const { minValue, maxValue } = schema as z.ZodNumber;
  const range = withQuantities(markedRange(schema, quantity), units);
  return z
    .number({ error: `must be a number, ${range}` })
    .min(minValue as number, `must be ${range}`)
    .max(maxValue as number, `must be ${range}`)
    .meta({ ...schema.meta() });
}
