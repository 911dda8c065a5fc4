import { ADJUST_REMARKS } from './adjust-remarks.js';
import { ADJUSTMENTS } from './adjustments.js';
import { ASSUMPTIONS } from './assumptions.js';
import { BELIEF_FINDINGS } from './beliefs.js';
import { CAUTIONS } from './cautions.js';
import { LEVERS, MARKING_ERRORS, STEPS } from './changes.js';
import { BAG_REMARKS, PAIR_REMARKS } from './coach-remarks.js';
import { COMPARE_REMARKS } from './compare-remarks.js';
import { HEADLINES } from './headlines.js';
import { LANE_REMARKS } from './lane-remarks.js';
import { LEGALITY_FINDINGS } from './legality-findings.js';
import { LIMITS } from './limits.js';
import { LOG_REMARKS } from './log-remarks.js';
import { NO_LINE_REASONS, REMEDIES } from './no-line.js';
import { OBJECTIONS } from './objections.js';
import { REASONS } from './reasons.js';
import { REGRESSION_NOTICES } from './regression-notices.js';
import { UNKNOWNS } from './unknowns.js';

/** A sentence for every code there is. */
export const SENTENCES = {
  ...ADJUSTMENTS,
  ...ADJUST_REMARKS,
  ...ASSUMPTIONS,
  ...CAUTIONS,
  ...LEVERS,
  ...STEPS,
  ...MARKING_ERRORS,
  ...PAIR_REMARKS,
  ...BAG_REMARKS,
  ...COMPARE_REMARKS,
  ...LANE_REMARKS,
  ...LEGALITY_FINDINGS,
  ...LIMITS,
  ...LOG_REMARKS,
  ...NO_LINE_REASONS,
  ...REMEDIES,
  ...OBJECTIONS,
  ...BELIEF_FINDINGS,
  ...HEADLINES,
  ...REASONS,
  ...REGRESSION_NOTICES,
  ...UNKNOWNS,
};

/** All topics in one: what each code is about. */
export type Topics = {
  readonly [C in keyof typeof SENTENCES]: Parameters<(typeof SENTENCES)[C]>[0];
};
