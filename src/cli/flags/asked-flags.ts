import type { Needs } from '../../interview/questions/needs.js';
import { WISHES } from '../../records/schemas/reaction-numbers.js';
import { canAsk, type Terminal } from '../terminal/terminal.js';
import type { GlobalOptions, WishOptions } from './options.js';

/** The flags that an interview can ask for. */
type AskableOptions = GlobalOptions &
  WishOptions & {
    readonly layout?: string;
    readonly bowler?: string;
    readonly ball?: string;
    readonly lane?: string;
  };

/** What is asked for where no one can be asked. */
const NOTHING: Needs = { layout: false, bowler: false, ball: false, lane: false, want: false };

/**
 * Which of a command's flags are to be asked for: those of `takes` that were left out, where a person can be asked; else none, and
 * a flag that is missing is refused.
 */
export function askedFlags(
  options: AskableOptions,
  takes: readonly (keyof Needs)[],
  terminal: Terminal,
): Needs {
  if (!options.input || !canAsk(terminal)) return NOTHING;
  const isLeftOut = (flag: keyof Needs): boolean =>
    flag === 'want' ? WISHES.every((wish) => options[wish] === undefined) : options[flag] === undefined;
  return { ...NOTHING, ...Object.fromEntries(takes.map((flag) => [flag, isLeftOut(flag)])) };
}

export const isAnyAsked = (needs: Needs): boolean => Object.values(needs).includes(true);
