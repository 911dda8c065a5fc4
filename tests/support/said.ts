import { UNITS } from '../../src/report/text/display-units.js';
import { type Statement, sayAll } from '../../src/report/wording/say.js';

/** Everything that statements say, in the trade's units, one after the other. */
export const said = (statements: readonly Statement[]): string => sayAll(statements, UNITS.trade).join(' ');
