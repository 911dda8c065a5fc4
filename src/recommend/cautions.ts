import { loadCautions } from '../records/shared-data.js';
import type { BallProblem } from './ball-problem.js';

/** What to be careful about: with this ball, then with any. */
export const cautionsFor = ({ warnings }: Pick<BallProblem, 'warnings'>): string[] => [
  ...warnings,
  ...loadCautions(),
];
