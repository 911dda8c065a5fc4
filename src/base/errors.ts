import { shortened, visible } from './visible.js';

/** One thing a person typed that cannot be used: which field, which rule, what was given, what to do. */
export interface Fault {
  readonly field: string;
  readonly rule: string;
  readonly got: string;
  readonly hint?: string;
}

/** A fault as one sentence: `ball.rgIn must be 2.46 to 2.80 in; got 25.4. Was it typed in …?` */
export const formatFault = (fault: Fault): string =>
  `${fault.field} ${fault.rule}${gotOf(fault)}.${fault.hint ? ` ${fault.hint}` : ''}`;

/** What was given, `; got 25.4`; empty for a value that is missing. */
const gotOf = ({ rule, got }: Fault): string =>
  got === 'nothing' && /^(is|are) missing$/.test(rule) ? '' : `; got ${got}`;

/** Most faults that one error names; the rest are only counted. */
export const MOST_FAULTS = 20;

/** What follows the faults that are named. */
export const formatMore = (more: number): string => `and ${more.toLocaleString('en')} more`;

/** Something the person can correct. Holds all faults that were found together; only `cli` prints it; exit code 2. */
export class InputError extends Error {
  override readonly name = 'InputError';
  /** The first `MOST_FAULTS`, safe to print. */
  readonly faults: readonly Fault[];
  /** How many more there are. */
  readonly more: number;
  readonly source?: string;

  /**
   * @param code    short stable name of the kind of fault, for programs (`layout-impossible`)
   * @param faults  what is wrong, at least one
   * @param source  where the fault is: a file or a flag, when known
   * @param count   number of all faults, when `faults` does not hold them all
   */
  constructor(
    readonly code: string,
    faults: Fault | readonly Fault[],
    source?: string,
    count?: number,
  ) {
    const list: readonly Fault[] = Array.isArray(faults) ? faults : [faults as Fault];
    const named = list.slice(0, MOST_FAULTS).map(printable);
    const more = (count ?? list.length) - named.length;
    super([...named.map(formatFault), ...(more > 0 ? [formatMore(more)] : [])].join('\n'));
    this.faults = named;
    this.more = more;
    if (source !== undefined)
      this.source = short(source, isPath(source) ? MOST_CHARACTERS.field : MOST_TYPED);
  }
}

/** Most characters shown of what a person typed, which may be a whole pasted file. */
const MOST_TYPED = 60;

/** What a person typed, in quotes, as a fault shows it. */
export const quotedTyped = (text: string): string => shortened(JSON.stringify(text), MOST_TYPED);

/** Most characters shown of each part of a fault: what was given may be a whole pasted file. */
const MOST_CHARACTERS = { field: 300, rule: 1000, got: 200, hint: 2000 } as const;

function printable({ field, rule, got, hint }: Fault): Fault {
  return {
    field: short(field, MOST_CHARACTERS.field),
    rule: short(rule, MOST_CHARACTERS.rule),
    got: short(got, MOST_CHARACTERS.got),
    ...(hint === undefined ? {} : { hint: short(hint, MOST_CHARACTERS.hint) }),
  };
}

/** Whether a text can be the path of a file. Anything longer, or on several lines, was pasted. */
const isPath = (text: string): boolean =>
  !text.includes('\n') && text.split(/[/\\]/).every((part) => part.length <= LONGEST_NAME);

/** Longest name of one file on the systems in use, characters. */
const LONGEST_NAME = 255;

const short = (text: string, most: number): string => visible(shortened(text, most));

/** The person left (ctrl-C, closed input): exit code 130, no message. */
export class Cancelled extends Error {
  override readonly name = 'Cancelled';
}
