import { workerData } from 'piscina';
import type { Budget } from '../prepare/budget.js';
import type { CoachLine } from '../records/answers/coach-answer.js';
import { type CoachUnit, coachUnit } from './coach-unit.js';
import { pairsShare } from './pairs-share.js';

/** What a worker receives once. */
export interface CoachWorkerData {
  readonly seed: number;
  readonly ruleSet?: string | undefined;
  readonly practiceWeight?: number | undefined;
  readonly budget?: Budget | undefined;
}

const { seed, ruleSet, practiceWeight, budget } = workerData as CoachWorkerData;
const share = pairsShare();

/** Entry of a worker thread: a unit as it comes. */
export const workUnit = (unit: CoachUnit): Promise<CoachLine[]> =>
  coachUnit(unit, { seed, ruleSet, practiceWeight, budget, ...share });

// the worker pool calls a module's default export
export default workUnit;
