import type { z } from 'zod';
import { InputError } from '../../base/errors.js';
import { parseRecord } from '../../records/read/read-record.js';
import {
  type DrilledLayout,
  drilledLayoutSchema,
  resultSchema,
} from '../../records/schemas/drilled-layout.js';
import { layoutFlag, missingFlag } from '../flags/flags.js';
import type { ShelfOptions } from '../flags/options.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';
import { callBall, callBowler } from './load-record.js';

const TYPED = 'command line';

/**
 * A drilled layout from its flags; its bowler and ball must be known.
 *
 * @throws {InputErrors} all faults at once
 */
export function layoutFromFlags(name: string, options: ShelfOptions, terminal: Terminal): DrilledLayout {
  const { layout, drilledOn } = options;
  const { bowler, ball } = collectFaults({
    bowler: () => callBowler(options.bowler, terminal),
    ball: () => callBall(options.ball, terminal),
    layout: () => layoutFlag(layout),
    day: () => byFlag(drilledLayoutSchema.pick({ drilledOn: true }), given({ drilledOn })),
  });
  const record = { schema: 'flarewise/layout/1', name: name || `${ball} ${layout}`, bowler, ball, layout };
  return parseRecord(drilledLayoutSchema, given({ ...record, drilledOn }), TYPED);
}

/**
 * What a drilled ball did, from the flags.
 *
 * @throws {InputErrors} all faults at once
 */
export function resultFromFlags(options: ShelfOptions): DrilledLayout['results'][number] {
  const { lane, rest } = collectFaults({
    lane: () => {
      if (options.lane === undefined)
        throw missingFlag('--lane', 'Such as: flarewise shelf log my-layout --lane house-easy');
      return byFlag(resultSchema.pick({ lane: true }), { lane: options.lane });
    },
    rest: () =>
      byFlag(
        resultSchema.omit({ lane: true }),
        given({
          on: options.on,
          hookStartFt: options.hookStartFt,
          totalHookBoards: options.totalHook,
          breakpointBoard: options.breakpoint,
          entryAngleDeg: options.entryAngle,
          flareIn: options.flareIn,
          note: options.note,
        }),
      ),
  });
  return { ...lane, ...rest };
}

/** A drilled layout with one more result. @throws {InputError} `bad-record` when it holds as many as it may */
export const withResult = (layout: DrilledLayout, result: DrilledLayout['results'][number]): DrilledLayout =>
  parseRecord(drilledLayoutSchema, { ...layout, results: [...layout.results, result] }, TYPED);

/** The flags that fill the fields of a record. */
const FLAG_OF: Readonly<Record<string, string>> = {
  drilledOn: '--drilled-on',
  on: '--on',
  lane: '--lane',
  hookStartFt: '--hook-start-ft',
  totalHookBoards: '--total-hook',
  breakpointBoard: '--breakpoint',
  entryAngleDeg: '--entry-angle',
  flareIn: '--flare-in',
  note: '--note',
};

/** Checks fields that came from flags, their numbers as they were typed; a fault names the flag, which is what was typed. */
function byFlag<T>(schema: z.ZodType<T>, fields: object): T {
  try {
    return parseRecord(schema, fields, TYPED);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const faults = error.faults.map((fault) => ({ ...fault, field: FLAG_OF[fault.field] ?? fault.field }));
    throw new InputError(error.code, faults, error.source, faults.length + error.more);
  }
}

const given = (fields: Readonly<Record<string, unknown>>): object =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
