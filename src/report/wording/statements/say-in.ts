import type { StatementOf } from '../../../base/statement.js';
import type { Units } from '../../text/display-units.js';
import type { Wording } from './wording.js';

/** A statement in the words that a table has for its code. */
export const sayIn = <T, Said>(
  wording: Wording<T, Said>,
  { code, params }: StatementOf<T>,
  units: Units,
): Said => wording[code](params, units);
