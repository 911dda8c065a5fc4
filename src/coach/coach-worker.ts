import { workerData } from 'piscina';
import type { CoachLine } from '../records/answers/coach-answer.js';
import type { CoachRun } from './coach-pair.js';
import { type CoachUnit, coachUnit } from './coach-unit.js';
import { pairsShare } from './pairs-share.js';

const run = workerData as CoachRun;
const share = pairsShare();

/** A unit as it comes. The worker pool calls a module's default export. */
export default (unit: CoachUnit): Promise<CoachLine[]> => coachUnit(unit, { ...run, ...share });
