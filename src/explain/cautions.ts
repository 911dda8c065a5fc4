import type { BallProblem } from '../prepare/ball-problem.js';
import type { Caution } from '../records/answers/statements/cautions.js';
import { loadCautions } from '../records/shared/shared-data.js';

/** What to be careful about: with this ball, then with any. */
export const cautionsFor = ({ warnings }: Pick<BallProblem, 'warnings'>): Caution[] => [
  ...warnings,
  ...loadCautions().map((code): Caution => ({ code, params: {} })),
];
