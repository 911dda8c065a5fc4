import type { StatementOf } from '../../base/statement.js';
import type { Units } from '../text/display-units.js';
import { sayIn } from './statements/say-in.js';
import { SENTENCES, type Topics } from './statements/sentences.js';

/** Anything that answers say. */
export type Statement = StatementOf<Topics>;

/** A statement as a person reads it: an English sentence, or for a change or an objection a clause. */
export const say = (statement: Statement, units: Units): string => sayIn(SENTENCES, statement, units);

/** Several, one after the other. */
export const sayAll = (statements: readonly Statement[], units: Units): string[] =>
  statements.map((statement) => say(statement, units));
