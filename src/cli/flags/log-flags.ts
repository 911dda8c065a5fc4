import type { z } from 'zod';
import { InputError, quotedTyped } from '../../base/errors.js';
import type { NightHead } from '../../records/log/add-shot.js';
import { readReading } from '../../records/log/read-reading.js';
import { readReadingErrors } from '../../records/log/read-reading-errors.js';
import { READINGS, readingSchema } from '../../records/log/readings.js';
import { noteField } from '../../records/schemas/quantity.js';
import { RING_OVER } from '../../records/schemas/ring-over.js';
import { type LoggedShot, nightSchema, type ReadingId } from '../../records/schemas/shot-log.js';
import { UNITS, type Units } from '../../report/text/display-units.js';
import { dayFlag } from './date-flag.js';
import { oneOf } from './flags.js';
import type { LogOptions } from './options.js';
import { unitsOrTrade } from './units-flag.js';

/** The readings that have a flag; the others stand in the line. */
const READING_FLAGS = {
  boardAt50Ft: ['--at-50', 'at50'],
  breakpointFt: ['--breakpoint-ft', 'breakpointFt'],
  displaySpeedMph: ['--display-speed', 'displaySpeed'],
  flareIn: ['--flare', 'flare'],
} as const satisfies { readonly [K in ReadingId]?: readonly [flag: string, option: keyof LogOptions] };

/** Readers of what the flags say of a shot, in units of the record; a number without unit is in those of `--units`. */
export function shotFlags(options: LogOptions): Record<string, () => Partial<LoggedShot>> {
  const units = UNITS[unitsOrTrade(options.units)];
  const readings = Object.entries(READING_FLAGS).map(([name, [flag, option]]) => {
    const id = name as keyof typeof READING_FLAGS;
    const text = options[option];
    const read = (): Partial<LoggedShot> =>
      text === undefined
        ? {}
        : { [id]: readReading(text, flag, readingSchema(id), units[READINGS[id].quantity].name) };
    return [flag, read] as const;
  });
  return {
    ...Object.fromEntries(readings),
    ringOver: () =>
      options.ringOver === undefined
        ? {}
        : {
            ringOverHole: oneOf(
              '--ring-over',
              options.ringOver,
              RING_OVER,
              'The hole that the ring ran over.',
            ),
          },
    others: () => ({
      ...(options.readOff ? { arrowsAgainstTarget: false } : {}),
      ...(options.note === undefined ? {} : { note: textFlag('--note', options.note, noteField) }),
      ...(options.really ? { confirmed: true as const } : {}),
    }),
  };
}

/** Readers of what the flags say of the night. */
export function nightFlags(options: LogOptions): Record<string, () => Partial<NightHead>> {
  const units = UNITS[unitsOrTrade(options.units)];
  const { lane, night, games, target, pattern, error } = options;
  const { shape } = nightSchema;
  return {
    lane: () => (lane === undefined ? {} : { lane: textFlag('--lane', lane, nightSchema.shape.lane) }),
    night: () => (night === undefined ? {} : { on: dayFlag('--night', night, 'Such as 2026-03-31.') }),
    games: () => number('--games', games, 'games', shape.games.unwrap()),
    target: () => number('--target', target, 'targetBoard', shape.targetBoard.unwrap()),
    pattern: () => number('--pattern', pattern, 'patternFt', shape.patternFt.unwrap(), units.lane.name),
    error: () =>
      error === undefined
        ? {}
        : { readingErrors: readReadingErrors(error, '--error', (each) => units[each].name) },
  };
}

const number = (
  flag: string,
  text: string | undefined,
  field: keyof NightHead,
  schema: Parameters<typeof readReading>[2],
  bare?: Units['lane']['name'],
): Partial<NightHead> => (text === undefined ? {} : { [field]: readReading(text, flag, schema, bare) });

/** @throws {InputError} `flag` for a text that a record does not take */
function textFlag(flag: string, text: string, schema: z.ZodType<string | undefined>): string {
  const { error } = schema.safeParse(text.trim());
  if (!error) return text.trim();
  throw new InputError('flag', { field: flag, rule: error.issues[0].message, got: quotedTyped(text) });
}
