import { INCH, OUNCE, POUND, to } from '../../base/units.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { RuleSet } from '../../records/shared/rules.js';
import type { Practice } from '../../records/shared/shared-data.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { Line } from '../../simulate/line.js';
import { isAtPocket } from '../../simulate/pocket.js';
import type { Outcome } from '../../simulate/simulator.js';
import { markClearanceIn } from './candidates.js';

/** Why a candidate was set aside, in the words a person reads. */
export type Rejection = string;

/** Reasons known before the ball is drilled: marks too near to holes. */
export function rejectByMarks(
  layout: LayoutNumbers,
  ball: BallProblem,
  practice: Practice,
): Rejection | null {
  const { pin, marker } = markClearanceIn(layout, ball);
  if (pin < practice.leastPinToHoleIn) return 'the pin would lie in or too near to a hole';
  if (marker < practice.leastMarkerToHoleIn) return 'the marker would lie in or too near to a hole';
  return null;
}

/** What a layout is held against. */
export interface Bounds {
  readonly ball: BallProblem;
  readonly rules: RuleSet;
  readonly practice: Practice;
  /** Of the usual middle layout: where even that reaches no pocket, nobody is asked to. */
  readonly line: Line;
}

/** Reasons known once the nominal shot is simulated. */
export function rejectByOutcome(outcome: Outcome, { ball, rules, practice, line }: Bounds): Rejection | null {
  if (staticFindings(outcome, ball, rules).length > 0)
    return `a static weight exceeds the limit of the ${rules.title}`;
  if (outcome.shot === 'gutter') return 'the ball would go into the gutter on this line';
  if (outcome.shot !== 'pins') return 'the ball would not reach the pins';
  if (line.reachesPocket && !isAtPocket(outcome.shot, outcome.reaction.pinsX))
    return 'no line brings the ball to the pocket';
  if (to(outcome.ringClearance, INCH) < practice.leastRingToHoleIn)
    return 'an oil ring would run over or too near to a hole';
  return null;
}

/** Static weights that exceed the rule set's limit, one sentence each. */
export function staticFindings(
  { statics, inertia }: Pick<Outcome, 'statics' | 'inertia'>,
  { published }: BallProblem,
  rules: RuleSet,
): readonly string[] {
  const limit = rules.staticWeight;
  if (to(published.mass, POUND) <= limit.aboveLb || !(inertia.mass > 0)) return [];
  return (['top', 'side', 'finger'] as const).flatMap((name) => {
    const ounces = to(statics[name], OUNCE);
    return Math.abs(ounces) > limit.mostOz
      ? [`${name} weight ${ounces.toFixed(1)} oz exceeds ${limit.mostOz} oz`]
      : [];
  });
}

/** Everything the search would set a layout aside for, one sentence each. */
export const objections = (layout: LayoutNumbers, outcome: Outcome, bounds: Bounds): string[] =>
  [rejectByMarks(layout, bounds.ball, bounds.practice), rejectByOutcome(outcome, bounds)].filter(
    (why) => why !== null,
  );
