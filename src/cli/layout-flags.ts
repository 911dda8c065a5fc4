import { type DrilledLayout, drilledLayoutSchema } from '../records/drilled-layout.js';
import { parseQuantity } from '../records/parse-quantity.js';
import { parseRecord } from '../records/read-record.js';
import type { ShelfOptions } from './options.js';

/**
 * A drilled layout from its flags.
 *
 * @throws {InputError} `bad-record` with all faults at once
 */
export const layoutFromFlags = (
  name: string,
  { layout, bowler, ball, drilledOn }: ShelfOptions,
): DrilledLayout =>
  parseRecord(
    drilledLayoutSchema,
    given({
      schema: 'flarewise/layout/1',
      name: name || `${ball ?? ''} ${layout ?? ''}`.trim(),
      bowler,
      ball,
      layout,
      drilledOn,
    }),
    'command line',
  );

/**
 * A drilled layout with one more result, from the flags.
 *
 * @throws {InputError} `bad-record` with all faults at once
 */
export function withResult(layout: DrilledLayout, options: ShelfOptions): DrilledLayout {
  const result = given({
    on: options.on,
    lane: options.lane,
    hookStartFt: length(options.hookStartFt, 'ft'),
    totalHookBoards: number(options.totalHook),
    breakpointBoard: number(options.breakpoint),
    entryAngleDeg: number(options.entryAngle),
    flareIn: length(options.flareIn, 'in'),
    note: options.note,
  });
  return parseRecord(
    drilledLayoutSchema,
    { ...layout, results: [...layout.results, result] },
    'command line',
  );
}

const given = (fields: Readonly<Record<string, unknown>>): object =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

/** A length in the unit its flag names, or with one behind it; what is none stays text, for the schema to refuse it by name. */
function length(text: string | undefined, unit: string): unknown {
  const value = parseQuantity(text ?? '', unit, unit);
  return Number.isNaN(value) ? text : value;
}

/** What is not a decimal number stays text, for the schema to refuse it by name. */
const number = (text: string | undefined): unknown =>
  /^\s*[+-]?(\d+\.?\d*|\.\d+)\s*$/.test(text ?? '') ? Number(text) : text;
