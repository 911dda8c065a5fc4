import { isUnread, kindOfUnit, readNumber } from './read-number.js';

/** What to do about a text that is nearly a number in some unit; null where it is not clear what was meant. */
export function numberHint(text: string, unit = ''): string | null {
  const read = readNumber(text, kindOfUnit(unit));
  if (isUnread(read)) return read.hint;
  return read.halfRange === null ? null : 'Only one number can stand here, no range: give the middle of it.';
}
