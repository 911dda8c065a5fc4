import type { LegalityAnswer } from '../records/answer.js';
import type { RuleSet } from '../records/rules.js';
import type { BallProblem } from './ball-problem.js';
import { staticFindings } from './constraints.js';
import type { Outcome } from './simulator.js';

/** Checks a drilled ball against a rule set; the local body of the sport decides, not this list. */
export function legality(
  drilled: Pick<Outcome, 'statics' | 'inertia'>,
  ball: BallProblem,
  rules: RuleSet,
  clearance: { pin: number; marker: number },
): LegalityAnswer {
  const findings = staticFindings(drilled, ball, rules).map(
    (each) => `${each.charAt(0).toUpperCase()}${each.slice(1)}.`,
  );
  if (ball.holes.length > rules.mostGrippingHoles)
    findings.push(`${ball.holes.length} gripping holes exceed ${rules.mostGrippingHoles}.`);
  const legal = findings.length === 0;
  if (clearance.pin < 0) findings.push('A hole cuts the pin: allowed, but many shops avoid it.');
  if (!ball.holes.some((hole) => hole.name === 'thumb'))
    findings.push('No thumb hole: mark the grip centre with "+" and cover it with the palm at delivery.');
  return { ruleSet: rules.title, edition: rules.edition, legal, findings };
}
