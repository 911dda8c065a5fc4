import type { InputError } from '../../src/base/errors.js';
import { Refusal } from '../../src/records/refusals/refusal.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { formatRefusal } from '../../src/report/wording/refusals/word-refusal.js';

/** A refusal, the codes in it, and what a person reads of it. */
export interface Refused {
  readonly refusal: Refusal;
  readonly codes: readonly string[];
  readonly worded: InputError;
}

/** What the engine refuses; fails loudly when it throws another error, or none. */
export function refusalOf(compute: () => unknown, units = UNITS.trade): Refused {
  try {
    compute();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return {
      refusal: error,
      codes: error.statements.map(({ code }) => code),
      worded: formatRefusal(error, units),
    };
  }
  throw new Error('nothing was refused');
}
