/** One thing a person typed that cannot be used: which field, which rule, what was given, what to do. */
export interface Fault {
  readonly field: string;
  readonly rule: string;
  readonly got: string;
  readonly hint?: string;
}

/** A fault as one sentence: `ball.rgIn must be 2.46 to 2.80 in; got 25.4. Was it typed in …?` */
export const wordFault = (fault: Fault): string =>
  `${fault.field} ${fault.rule}; got ${fault.got}.${fault.hint ? ` ${fault.hint}` : ''}`;

/** Something the person can mend. Holds every fault found at once; only `cli` prints it; exit code 2. */
export class InputError extends Error {
  override readonly name = 'InputError';
  readonly faults: readonly Fault[];

  /**
   * @param code    short stable name of the kind of fault, for programs (`layout-impossible`)
   * @param faults  what is wrong, at least one
   * @param source  where it stood: a file or a flag, when known
   */
  constructor(
    readonly code: string,
    faults: Fault | readonly Fault[],
    readonly source?: string,
  ) {
    const list: readonly Fault[] = Array.isArray(faults) ? faults : [faults as Fault];
    super(list.map(wordFault).join('\n'));
    this.faults = list;
  }
}

/** The person left (ctrl-C, closed input): exit code 130, no message. */
export class Cancelled extends Error {
  override readonly name = 'Cancelled';
}
