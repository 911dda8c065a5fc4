import { InputError } from '../base/errors.js';
import { shellWord } from '../records/text/shell-word.js';

/** Flags of `shelf log`, as it was, by those that say the same now. */
const NOW: Readonly<Record<string, string>> = {
  '--lane': '--lane',
  '--on': '--night',
  '--flare-in': '--flare',
  '--note': '--note',
};

/**
 * The message for `flarewise shelf log`, which `flarewise log` has replaced: what to type now.
 *
 * @param operands  the words of the command line as commander finds them
 * @param args      all of it
 */
export function shelfLogFault(operands: readonly string[], args: readonly string[]): InputError {
  const after = (flag: string): string | undefined => {
    const i = args.indexOf(flag);
    return i >= 0 ? args[i + 1] : args.find((arg) => arg.startsWith(`${flag}=`))?.slice(flag.length + 1);
  };
  const id = operands[2] && !operands[2].startsWith('-') ? operands[2] : 'ID';
  const flags = Object.entries(NOW).flatMap(([old, now]) => {
    const value = after(old);
    return value === undefined ? [] : [now, shellWord(value)];
  });
  const command = ['flarewise log', shellWord(id), '- -', after('--breakpoint') ?? '-', '-', ...flags];
  return new InputError('moved', {
    field: 'shelf log',
    rule: 'has become flarewise log, which keeps what you saw of a shot: laydown, arrows, breakpoint and pins in boards',
    got: 'shelf log',
    hint: `Such as: ${command.join(' ')}. What was logged before is kept.`,
  });
}
