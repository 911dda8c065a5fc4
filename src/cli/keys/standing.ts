import type { CoreFitter } from '../../prepare/fit-cores.js';
import type { RankedLayout, RecommendAnswer } from '../../records/answers/answer.js';
import type { NextStep } from '../../report/screens/next-steps.js';
import type { RecommendInputs, SettingOptions } from '../../simulate/setting.js';
import type { GlobalOptions } from '../flags/options.js';
import type { Terminal } from '../terminal/terminal.js';

/** A recommendation on the screen, and all that a key needs to act on it. */
export interface Standing {
  readonly answer: RecommendAnswer;
  readonly inputs: RecommendInputs;
  /** As it was searched for: what is judged or drawn beside it searches alike. */
  readonly search: SettingOptions & { readonly top: number };
  readonly fitter: CoreFitter | undefined;
  /** Commands that may follow. */
  readonly next: readonly NextStep[];
  readonly options: GlobalOptions;
  readonly terminal: Terminal;
}

export const bestOf = ({ answer }: Standing): RankedLayout => answer.layouts[0];
