import { INCH, OUNCE, POUND, to } from '../../base/units.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { LegalityFinding } from '../../records/answers/statements/legality-findings.js';
import type { Objection } from '../../records/answers/statements/objections.js';
import type { RuleSet } from '../../records/shared/rules.js';
import type { Practice } from '../../records/shared/shared-data.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { Line } from '../../simulate/line.js';
import type { Outcome } from '../../simulate/simulator.js';
import { markClearanceIn } from './candidates.js';

/** Reasons known before the ball is drilled: marks too near to holes. */
export function rejectByMarks(
  layout: LayoutNumbers,
  ball: BallProblem,
  practice: Practice,
): Objection | null {
  const { pin, marker } = markClearanceIn(layout, ball);
  if (pin < practice.leastPinToHoleIn) return { code: 'pin-near-hole', params: {} };
  if (marker < practice.leastMarkerToHoleIn) return { code: 'marker-near-hole', params: {} };
  return null;
}

/** Those layouts whose marks keep clear of the holes. */
export const markableOf = (
  layouts: readonly LayoutNumbers[],
  { ball, practice }: Pick<Bounds, 'ball' | 'practice'>,
): LayoutNumbers[] => layouts.filter((layout) => rejectByMarks(layout, ball, practice) === null);

/** What decides whether a layout may be drilled. */
export interface Bounds {
  readonly ball: BallProblem;
  readonly rules: RuleSet;
  readonly practice: Practice;
  /** The line of the usual middle layout: if even that misses the pocket, no layout has to reach it. */
  readonly line: Line;
}

/** Reasons known once the nominal shot is simulated. */
export function rejectByOutcome(outcome: Outcome, { ball, rules, practice, line }: Bounds): Objection | null {
  if (staticFindings(outcome, ball, rules).length > 0)
    return { code: 'static-weight-over-limit', params: { ruleSet: rules.title } };
  if (outcome.shot === 'gutter') return { code: 'ball-goes-into-gutter', params: {} };
  if (outcome.shot !== 'pins') return { code: 'ball-stops-short', params: {} };
  if (line.reachesPocket && !outcome.reachesPocket) return { code: 'no-line-to-pocket', params: {} };
  if (to(outcome.ringClearance, INCH) < practice.leastRingToHoleIn)
    return { code: 'ring-near-hole', params: {} };
  return null;
}

/** Static weights that exceed the rule set's limit. */
export function staticFindings(
  { statics, inertia }: Pick<Outcome, 'statics' | 'inertia'>,
  { published }: BallProblem,
  rules: RuleSet,
): LegalityFinding[] {
  const limit = rules.staticWeight;
  if (to(published.mass, POUND) <= limit.aboveLb || !(inertia.mass > 0)) return [];
  return (['top', 'side', 'finger'] as const)
    .map((weight) => ({ weight, ounces: to(statics[weight], OUNCE), mostOz: limit.mostOz }))
    .filter(({ ounces, mostOz }) => Math.abs(ounces) > mostOz)
    .map((params) => ({ code: 'static-weight-exceeds', params }));
}

/** Everything the search would set a layout aside for. */
export const objections = (layout: LayoutNumbers, outcome: Outcome, bounds: Bounds): Objection[] =>
  [rejectByMarks(layout, bounds.ball, bounds.practice), rejectByOutcome(outcome, bounds)].filter(
    (why) => why !== null,
  );
