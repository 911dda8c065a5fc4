import { InputError } from '../base/errors.js';
import { shortened } from '../base/visible.js';
import { fileReason } from './system-fault.js';

/** A place to write, in words. */
export interface Place {
  readonly path: string;
  /** What named it: a flag, or words. */
  readonly field: string;
  /** What it must be; a file that can be written when left out. */
  readonly rule?: string;
  /** What to do, in place of the usual advice. */
  readonly hint?: string;
}

/**
 * Does something with a file or a folder; where the machine does not let it, says so as something a person can mend.
 *
 * @throws {InputError} `no-access`; any other error as it is
 */
export function orSayWhy<T>(place: Place, act: () => T): T {
  try {
    return act();
  } catch (error) {
    throw machineFault(error, place);
  }
}

/** An error of the system as a fault of a place; any other error as it is. */
export function machineFault(error: unknown, { path, field, rule, hint }: Place): unknown {
  const code = (error as Partial<NodeJS.ErrnoException> | null)?.code;
  if (!(error instanceof Error) || error instanceof InputError || !OF_MACHINE.test(code ?? '')) return error;
  const { got, remedy } = fileReason(code as string, 'write');
  return new InputError('no-access', {
    field,
    rule: rule ?? 'must be a file that can be written',
    got: `${JSON.stringify(shortened(path, SHOWN))}, ${got}`,
    hint: hint ?? remedy,
  });
}

/** Codes of what the system refuses; Node itself refuses a name with a null character. */
const OF_MACHINE = /^(E[A-Z0-9]+|ERR_INVALID_ARG_VALUE)$/;

/** Longest path that is shown whole, so that the reason behind it is not cut off with it. */
const SHOWN = 80;
