import type { Interviewed } from '../../interview/made-records.js';
import type { ProgressLine } from '../print/progress.js';
import type { MadeReady } from './make-ready.js';

/** How a command answers: it finds, which may begin before anyone waits for it, and then shows. */
export interface Answerer<Found> {
  readonly find: (records: Interviewed, how: Finding) => Promise<Found>;
  readonly show: (found: Found) => Promise<Answered>;
}

/** What finding an answer uses. */
export interface Finding {
  /** Where it shows how far it is. One that throws ends it. */
  readonly line: ProgressLine;
  /** What was made ready for it. */
  readonly ready?: MadeReady | undefined;
  /** Whether a person may still press keys, which nothing may then keep waiting for long. */
  readonly isAhead: boolean;
}

/** What comes after an answer for which questions were asked. */
export interface Answered {
  /** Whether to ask what to change. */
  readonly goesOn: boolean;
  /** Fields that would make the answer surer, the most worthwhile first. */
  readonly surer: readonly string[];
  /** Where Escape leads from there: the keys below the answer; whether they ask to change something. Left out where there are none. */
  readonly heedKeys?: () => Promise<boolean>;
}

/** Ask what to change, in the order of the questions. */
export const GOES_ON: Answered = { goesOn: true, surer: [] };
