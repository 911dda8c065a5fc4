/** What comes after an answer for which questions were asked. */
export interface Answered {
  /** Whether to ask what to change. */
  readonly goesOn: boolean;
  /** Fields that would make the answer surer, the most worthwhile first. */
  readonly surer: readonly string[];
}

/** Ask what to change, in the order of the questions. */
export const GOES_ON: Answered = { goesOn: true, surer: [] };
