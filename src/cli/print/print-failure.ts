import { Cancelled, formatFault, formatMore } from '../../base/errors.js';
import { visibleLines } from '../../base/visible.js';
import { formatSystemFault, isSystemError } from '../../files/system-fault.js';
import { Refusal } from '../../records/refusals/refusal.js';
import { UNITS, type Units } from '../../report/text/display-units.js';
import { wrap } from '../../report/text/wrap.js';
import { formatRefusal } from '../../report/wording/refusals/word-refusal.js';
import { unitsOrTrade } from '../flags/units-flag.js';
import { InputErrors, isMendable, type Mendable } from '../terminal/collect-faults.js';
import { EXIT } from '../terminal/exit-codes.js';
import type { Terminal } from '../terminal/terminal.js';

const WHOLE_COMMAND = 'command line';

/**
 * Says on stderr what went wrong, and returns the exit code. Nothing goes to stdout.
 *
 * @param unitSystem  as given to `--units`, which may itself be at fault
 */
export function printFailure(
  error: unknown,
  { stderr }: Pick<Terminal, 'stderr'>,
  unitSystem?: string,
): number {
  if (error instanceof Cancelled) return EXIT.cancelled;
  if (error instanceof InputErrors || isMendable(error)) {
    const errors = error instanceof InputErrors ? error.errors : [error];
    stderr.write(formatErrors(errors, UNITS[unitsOrTrade(unitSystem)], widthOf(stderr)));
    return EXIT.input;
  }
  if (isSystemError(error)) {
    stderr.write(`${formatSystemFault(error)}\n`);
    return EXIT.system;
  }
  const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
  stderr.write(
    `${visibleLines(stack)}\n\nThis is a bug in flarewise, not a mistake of yours. Please report it with the command you ran,\n` +
      'the records it read, and the lines above.\n',
  );
  return EXIT.bug;
}

/**
 * Each source on a line of its own, and below it one line for each fault.
 *
 * @param width  columns at which a fault's line is broken; a pipe gets it whole
 */
function formatErrors(errors: readonly Mendable[], units: Units, width: number): string {
  const bySource = new Map<string, string[]>();
  for (const each of errors) {
    const error = each instanceof Refusal ? formatRefusal(each, units) : each;
    const source = error.source ?? WHOLE_COMMAND;
    const more = error.more > 0 ? [formatMore(error.more)] : [];
    bySource.set(source, [...(bySource.get(source) ?? []), ...error.faults.map(formatFault), ...more]);
  }
  return [...bySource]
    .map(
      ([source, faults]) =>
        `${source}\n${faults
          .flatMap((fault) => wrap(fault, width, '    ', '  '))
          .map((line) => `${line}\n`)
          .join('')}`,
    )
    .join('');
}

/** Columns of a terminal; a pipe has none. */
const widthOf = ({ isTTY, columns }: Terminal['stderr']): number =>
  isTTY && columns ? columns : Number.POSITIVE_INFINITY;
