import { InputError, quotedTyped } from '../../base/errors.js';

/**
 * The date of `--date`, as YYYY-MM-DD; today's local date by default.
 *
 * @throws {InputError} `flag` when it is no day of the calendar
 */
export const dateFlag = (given: string | undefined, now: Date): string =>
  given === undefined ? localDay(now) : dayFlag('--date', given, 'Such as 2026-03-01; left out, today.');

/** How long after midnight shots still count to the evening before. */
const HOURS_AFTER_MIDNIGHT = 5;

/** The day to which shots count that are logged now: an evening lasts past midnight. */
export const eveningOf = (now: Date): string =>
  localDay(new Date(now.getTime() - HOURS_AFTER_MIDNIGHT * 3_600_000));

/**
 * A day given to a flag, as YYYY-MM-DD.
 *
 * @throws {InputError} `flag` when it is no day of the calendar
 */
export function dayFlag(flag: string, given: string, hint = 'Such as 2026-03-01.'): string {
  const day = new Date(`${given}T00:00:00Z`);
  if (/^\d{4}-\d{2}-\d{2}$/.test(given) && !Number.isNaN(day.getTime()) && isoDay(day) === given)
    return given;
  throw new InputError('flag', {
    field: flag,
    rule: 'must be a day as YYYY-MM-DD',
    got: quotedTyped(given),
    hint,
  });
}

/** The day where the program runs. */
export const localDay = (now: Date): string =>
  isoDay(new Date(now.getTime() - now.getTimezoneOffset() * 60_000));

const isoDay = (date: Date): string => date.toISOString().slice(0, 10);
