import { from, INCH, to } from '../../base/units.js';
import type { Hole } from '../../layout/hole.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { LegalityAnswer } from '../../records/answers/answer.js';
import type { RuleSet } from '../../records/shared/rules.js';
import { staticFindings } from '../../search/candidates/constraints.js';
import type { Outcome } from '../../simulate/simulator.js';

/**
 * Checks a drilled ball against a rule set; the local body of the sport decides, not this list.
 *
 * @param remarks  what else a shop should know, which bars nothing
 */
export function legality(
  drilled: Pick<Outcome, 'statics' | 'inertia'>,
  ball: BallProblem,
  rules: RuleSet,
  clearance: { pin: number; marker: number },
  remarks: readonly string[],
): LegalityAnswer {
  const findings = staticFindings(drilled, ball, rules).map(
    (each) => `${each.charAt(0).toUpperCase()}${each.slice(1)}.`,
  );
  const gripping = ball.holes.filter((hole) => hole.name !== 'vent').length;
  if (gripping > rules.mostGrippingHoles)
    findings.push(`${gripping} gripping holes exceed ${rules.mostGrippingHoles}.`);
  findings.push(...ventFindings(ball.holes, rules));
  const legal = findings.length === 0;
  if (clearance.pin < 0) findings.push('A hole cuts the pin: allowed, but many shops avoid it.');
  if (!ball.holes.some((hole) => hole.name === 'thumb'))
    findings.push('No thumb hole: mark the grip centre with "+" and cover it with the palm at delivery.');
  findings.push(...remarks);
  return { ruleSet: rules.title, edition: rules.edition, legal, findings };
}

/** Vents that break the rule set, one sentence each. */
function ventFindings(holes: readonly Hole[], { vents }: RuleSet): string[] {
  const all = holes.filter((hole) => hole.name === 'vent');
  const most = from(vents.mostDiameterIn, INCH);
  const wide = all.filter(({ open }) => 2 * open.radius > most * (1 + ROUNDING));
  const crowded = [...new Set(all.map(({ into }) => into))].filter(
    (name) => all.filter(({ into }) => into === name).length > vents.mostEachHole,
  );
  return [
    ...wide.map(
      ({ open, into }) =>
        `The vent into the ${into} hole is ${to(2 * open.radius, INCH).toFixed(3)} in wide; at most ${vents.mostDiameterIn} in is allowed.`,
    ),
    ...crowded.map((name) => `More than ${vents.mostEachHole} vent leads into the ${name} hole.`),
  ];
}

const ROUNDING = 1e-9;
