import type { Bowler } from '../records/schemas/bowler.js';
import type { Learned } from '../simulate/worlds/learned.js';
import { type BeliefEvidence, beliefEvidence } from './belief-evidence.js';
import { type FittedLog, fitLog, type LearnOptions } from './fit-log.js';
import type { LoggedBall } from './logged.js';
import { type LogMisfit, misfitOf } from './misfit.js';
import { whatIsKnown } from './what-is-known.js';

/** What a log teaches, and whether it fits the model. */
export interface Lesson {
  readonly log: FittedLog;
  readonly misfit: LogMisfit;
  readonly evidence: readonly BeliefEvidence[];
  /** For predictions and searches. */
  readonly learned: Learned;
}

/**
 * Learns from a bowler's logged nights; null where there is no night to learn from. A pure function of the log, which takes some
 * half a second a night.
 *
 * @throws {Refusal} when a ball's numbers fit no core or the grip cannot be placed
 */
export function learn(
  bowler: Bowler,
  balls: readonly LoggedBall[],
  options: LearnOptions = {},
): Lesson | null {
  const log = fitLog(bowler, balls, options);
  if (!log) return null;
  const evidence = beliefEvidence(log, balls);
  const beliefFactors = Object.fromEntries(evidence.map(({ id, factor }) => [id, factor]));
  return {
    log,
    misfit: misfitOf(log),
    evidence,
    learned: { ...whatIsKnown(log), uncertainty: log.uncertainty, beliefFactors },
  };
}
