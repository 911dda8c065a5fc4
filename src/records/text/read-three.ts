import { type Fault, InputError, quotedTyped } from '../../base/errors.js';
import { numberHint } from './number-hint.js';
import { parseFraction } from './parse-fraction.js';
import { splitLayout } from './split-layout.js';

/** How units are written behind a number. */
const UNIT_SIGNS = {
  degrees: / ?(°|deg|degrees?)$/i,
  in: / ?(in|inch|inches|")$/i,
} as const;

/** How a layout is written as three numbers. */
export interface ThreeNumbers<K extends string> {
  /** In the order in which they are written. */
  readonly limits: Readonly<
    Record<K, readonly [low: number, high: number, name: string, unit: keyof typeof UNIT_SIGNS]>
  >;
  /** What to do about a text of another form, and about a number that cannot be read. */
  readonly form: string;
  readonly order: string;
}

/**
 * Reads the three numbers of a layout, fractions allowed, each in the unit of its limits.
 *
 * @param field  what a fault calls the layout
 * @throws {InputError} `layout-text` when it cannot be read or a number is out of range
 */
export function readThree<K extends string>(
  text: string,
  field: string,
  { limits, form, order }: ThreeNumbers<K>,
): Readonly<Record<K, number>> {
  const keys = Object.keys(limits) as K[];
  const written = splitLayout(text);
  if (written.length !== keys.length)
    throw new InputError('layout-text', {
      field,
      rule: `must be ${keys.map((key) => limits[key][2]).join(' x ')}`,
      got: quotedTyped(text),
      hint: form,
    });
  const parts = written.map((part, i) => part.replace(UNIT_SIGNS[limits[keys[i]][3]], ''));
  const values = parts.map(parseFraction);
  const faults = keys.flatMap((key, i): Fault[] => {
    const [low, high, name, unit] = limits[key];
    if (values[i] >= low && values[i] <= high) return [];
    return [
      {
        field: `${field}: ${name}`,
        rule: `must be ${low} to ${high} ${unit}`,
        got: quotedTyped(parts[i]),
        hint: numberHint(parts[i], unit) ?? order,
      },
    ];
  });
  if (faults.length > 0) throw new InputError('layout-text', faults);
  return Object.fromEntries(keys.map((key, i) => [key, values[i]])) as Record<K, number>;
}
