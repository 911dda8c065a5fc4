import { InputError, quotedTyped } from '../../base/errors.js';

/**
 * The date of `--date`, as YYYY-MM-DD; today's where the program runs when none is given.
 *
 * @throws {InputError} `flag` when it is no day of the calendar
 */
export function dateFlag(given: string | undefined, now: Date): string {
  if (given === undefined) return isoDay(new Date(now.getTime() - now.getTimezoneOffset() * 60_000));
  const day = new Date(`${given}T00:00:00Z`);
  if (/^\d{4}-\d{2}-\d{2}$/.test(given) && !Number.isNaN(day.getTime()) && isoDay(day) === given)
    return given;
  throw new InputError('flag', {
    field: '--date',
    rule: 'must be a day as YYYY-MM-DD',
    got: quotedTyped(given),
    hint: 'Such as 2026-03-01; left out, today.',
  });
}

const isoDay = (date: Date): string => date.toISOString().slice(0, 10);
