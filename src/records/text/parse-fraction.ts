import { plainSigns } from './plain-signs.js';

/**
 * A number as typed at a counter: `4`, `4.5`, `4,5`, `4 1/2`, `4-1/2`, `4½`, `1/2`; NaN otherwise.
 *
 * A comma is a decimal one. Where it may stand for thousands is for the caller to know (`readNumber`).
 */
export function parseFraction(text: string): number {
  const match = /^(\d+(?:[.,]\d*)?|[.,]\d+)?(?:(?:^|[ -])(\d+)\/(\d+))?$/.exec(plainSigns(text));
  if (!match || (match[1] === undefined && match[2] === undefined)) return Number.NaN;
  const whole = match[1] === undefined ? 0 : Number(match[1].replace(',', '.'));
  const part = match[2] === undefined ? 0 : Number(match[2]) / Number(match[3]);
  return Number.isFinite(part) ? whole + part : Number.NaN;
}
