import { UNITS } from '../text/display-units.js';
import { type Statement, say } from './say.js';

/** An answer as JSON prints it: behind the code and the params of each statement its English, in the trade's units. */
export function withSentences(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withSentences);
  if (value === null || typeof value !== 'object') return value;
  const worded = Object.fromEntries(Object.entries(value).map(([key, each]) => [key, withSentences(each)]));
  return isStatement(value) ? { ...worded, text: say(value, UNITS.trade) } : worded;
}

/** No other object of an answer or a record has both a code and params. */
const isStatement = (value: object): value is Statement => 'code' in value && 'params' in value;
