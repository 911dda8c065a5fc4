import { from, INCH, to } from '../../base/units.js';
import type { Hole } from '../../layout/hole.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { LegalityAnswer } from '../../records/answers/answer.js';
import type { LegalityFinding } from '../../records/answers/statements/legality-findings.js';
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
  clearance: { readonly pin: number },
  remarks: readonly LegalityFinding[],
): LegalityAnswer {
  const findings: LegalityFinding[] = staticFindings(drilled, ball, rules);
  const holes = ball.holes.filter((hole) => hole.name !== 'vent').length;
  if (holes > rules.mostGrippingHoles)
    findings.push({ code: 'too-many-gripping-holes', params: { holes, most: rules.mostGrippingHoles } });
  findings.push(...ventFindings(ball.holes, rules));
  const legal = !findings.some(barring);
  // from here on what bars nothing
  if (clearance.pin < 0) findings.push({ code: 'hole-cuts-pin', params: {} });
  if (!ball.holes.some((hole) => hole.name === 'thumb')) findings.push({ code: 'no-thumb-hole', params: {} });
  findings.push(...remarks);
  return { ruleSet: rules.title, edition: rules.edition, legal, findings };
}

/** Vents that break the rule set. */
function ventFindings(holes: readonly Hole[], { vents }: RuleSet): LegalityFinding[] {
  const all = holes.flatMap(({ into, open }) => (into ? [{ into, diameter: 2 * open.radius }] : []));
  const most = from(vents.mostDiameterIn, INCH);
  const wide = all.filter(({ diameter }) => diameter > most * (1 + ROUNDING));
  const crowded = [...new Set(all.map(({ into }) => into))].filter(
    (name) => all.filter(({ into }) => into === name).length > vents.mostEachHole,
  );
  return [
    ...wide.map(
      ({ into, diameter }): LegalityFinding => ({
        code: 'vent-too-wide',
        params: { into, diameterIn: to(diameter, INCH), mostIn: vents.mostDiameterIn },
      }),
    ),
    ...crowded.map(
      (into): LegalityFinding => ({ code: 'too-many-vents', params: { into, most: vents.mostEachHole } }),
    ),
  ];
}

const ROUNDING = 1e-9;

const BARRING: ReadonlySet<LegalityFinding['code']> = new Set([
  'static-weight-exceeds',
  'too-many-gripping-holes',
  'vent-too-wide',
  'too-many-vents',
]);

/** Whether a finding makes a ball not legal; others are what a shop should know. */
export const barring = ({ code }: LegalityFinding): boolean => BARRING.has(code);
