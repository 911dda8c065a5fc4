import { Refusal } from '../records/refusals/refusal.js';
import { type LearnedInputs, type LearnedOptions, type Taught, teach } from './learned-answer.js';

/** A log to learn from in a thread. */
export interface TeachTask {
  readonly inputs: LearnedInputs;
  readonly options: Omit<LearnedOptions, 'fitter'>;
}

/** What came of it; a refusal, whose codes do not pass between threads, is only mentioned. */
export type TeachResult = { readonly taught: Taught | null } | 'refused';

/** Learns from a log as it comes. The worker pool calls a module's default export. */
export default ({ inputs, options }: TeachTask): TeachResult => {
  try {
    return { taught: teach(inputs, options) };
  } catch (error) {
    if (error instanceof Refusal) return 'refused';
    throw error;
  }
};
