import type { z } from 'zod';
import { InputError, quotedTyped } from '../../base/errors.js';
import { recordUnit, remedyOf } from '../schemas/quantity.js';
import { isUnread, kindOfUnit, readNumber } from '../text/read-number.js';

/** Two neighbouring boards, or three, are one reading: `17-18`. */
const WIDEST_RANGE = 2;

/**
 * A number of the log as typed, in the unit of its record: `17`, `17½`, `17,5`, `28 km/h`; of a narrow range of boards, `17-18`, the
 * middle.
 *
 * @param field  where a fault says that it stands
 * @param bare   the unit of a number that is typed without one; the record's own when left out
 * @throws {InputError} `reading`
 */
export function readReading(text: string, field: string, schema: z.ZodType<number>, bare?: string): number {
  const kind = kindOfUnit(recordUnit(schema) ?? '');
  const read = readNumber(text, { ...kind, bare: bare ?? kind.bare });
  const isWide =
    !isUnread(read) &&
    read.halfRange !== null &&
    (kind.wanted !== 'boards' || 2 * read.halfRange > WIDEST_RANGE);
  const checked = schema.safeParse(isUnread(read) || isWide ? text : read.value);
  if (checked.success) return checked.data;
  const hint = (isUnread(read) ? read.hint : null) ?? remedyOf(schema);
  throw new InputError('reading', {
    field,
    rule: checked.error.issues[0].message,
    got: quotedTyped(text),
    ...(hint ? { hint } : {}),
  });
}
