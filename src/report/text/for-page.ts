import type { Units } from './display-units.js';
import type { Page } from './page.js';
import { withPlainText } from './plain-text.js';
import { inUnits } from './units-in-text.js';

/** Where answers hold sentences with quantities; names, notes and layouts stay as they were given. */
const SENTENCES: ReadonlySet<string> = new Set([
  'assumptions',
  'belief',
  'cautions',
  'change',
  'error',
  'fault',
  'findings',
  'limits',
  'notice',
  'objections',
  'reason',
  'reasons',
  'remedies',
  'says',
  'text',
]);

/** An answer as a page may show it: every text safe to print, every sentence in the page's units. */
export const forPage = <T>(answer: T, { ascii, units }: Pick<Page, 'ascii' | 'units'>): T =>
  withUnits(withPlainText(answer, ascii), units, false);

function withUnits<T>(value: T, units: Units, isSentence: boolean): T {
  if (typeof value === 'string') return (isSentence ? inUnits(value, units) : value) as T;
  if (Array.isArray(value)) return value.map((item) => withUnits(item, units, isSentence)) as T;
  if (value !== null && typeof value === 'object')
    return Object.fromEntries(
      Object.entries(value).map(([key, item]) => [key, withUnits(item, units, SENTENCES.has(key))]),
    ) as T;
  return value;
}
