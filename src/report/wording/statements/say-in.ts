import type { StatementOf } from '../../../base/statement.js';
import type { Units } from '../../text/display-units.js';
import type { Wording } from './wording.js';

/** A statement of one topic as a sentence. */
export const sayIn = <T>(wording: Wording<T>, { code, params }: StatementOf<T>, units: Units): string =>
  wording[code](params, units);
