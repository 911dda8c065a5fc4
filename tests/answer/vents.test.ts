import { describe, expect, test } from 'vitest';
import { drilledFacts } from '../../src/answer/parts/drilled-facts.js';
import { INCH, to } from '../../src/base/units.js';
import { overAndUp } from '../../src/math/ball-point.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { gripHoles } from '../../src/prepare/grip-holes.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import { usualGrip, type VentRecord } from '../../src/records/schemas/grip.js';
import { loadRuleSet } from '../../src/records/shared/rules.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import { simulator } from '../../src/simulate/simulator.js';
import { NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { refusalOf } from '../support/refusal-of.js';
import { said } from '../support/said.js';

const vented = (...vents: VentRecord[]): Bowler => ({
  ...averageBowler,
  grip: { ...usualGrip(true), vents },
});
const THUMB_VENT: VentRecord = { into: 'thumb', diameterIn: 0.25, overIn: 1.1, upIn: -2.7 };
const factsOf = (bowler: Bowler) =>
  drilledFacts(ballProblem(plainBall, bowler, 'moment'), loadRuleSet())(MIDDLE_LAYOUT);

describe('vents and the rules (World Bowling 11.12, 2019 issue: at most 1/4 in; one a hole: from memory)', () => {
  test('a vent of 1/4 in is within them, and no gripping hole', () => {
    const vents: VentRecord[] = [
      THUMB_VENT,
      { into: 'middle', diameterIn: 0.1875, overIn: -1.5, upIn: 2.2 },
      { into: 'ring', diameterIn: 0.1875, overIn: 1.5, upIn: 2.2 },
    ];
    const { legality, marks } = factsOf(vented(...vents));
    expect(legality.legal).toBe(true); // six holes, three of them for gripping; five are allowed
    expect(marks.filter(({ mark }) => mark === 'vent hole')).toHaveLength(3);
  });

  test('a wider one is not, and the finding says how wide', () => {
    const { legal, findings } = factsOf(vented({ ...THUMB_VENT, diameterIn: 0.3125 })).legality;
    expect(legal).toBe(false);
    expect(said(findings)).toContain('5/16 in wide; at most 1/4 in');
  });

  test('two into one hole are not', () => {
    const { legal, findings } = factsOf(vented(THUMB_VENT, { ...THUMB_VENT, overIn: -1.1 })).legality;
    expect(legal).toBe(false);
    expect(said(findings)).toContain('thumb');
  });
});

const STRAIGHT = { x: 0, angle: 0 };

test('an oil ring that runs over a vent’s mouth counts as running over a hole', () => {
  const outcomeOf = (bowler: Bowler) => {
    const ball = ballProblem(plainBall, bowler, 'moment');
    const engine = simulator(unaimedProblem(houseLane, bowler, plainBall, ball));
    const middle = toLayout(MIDDLE_LAYOUT, ball.published.radius);
    const rolled = engine.shot(middle, NO_DEVIATIONS, STRAIGHT);
    return { ...engine.read(rolled), shot: rolled.shot, radius: ball.published.radius };
  };
  const without = outcomeOf(averageBowler);
  expect(without.ringClearance).toBeGreaterThan(0);
  // where the first ring passes below the thumb hole
  const { contact_B } = without.shot;
  let best = { off: Number.POSITIVE_INFINITY, overIn: 0, upIn: 0 };
  for (let i = 0; i < contact_B.length; i += 3) {
    const { over, up } = overAndUp([contact_B[i], contact_B[i + 1], contact_B[i + 2]]);
    const [overIn, upIn] = [over, up].map((x) => to(x * without.radius, INCH));
    const off = Math.hypot(overIn - 0.9, upIn + 3.2);
    if (off < best.off) best = { off, overIn, upIn };
  }
  const onRing: VentRecord = { into: 'thumb', diameterIn: 0.25, overIn: best.overIn, upIn: best.upIn };
  expect(outcomeOf(vented(onRing)).ringClearance).toBeLessThan(0);
});

test('gripHoles: every vent that cannot be drilled is told, each with its place and remedy', () => {
  const { refusal, codes, worded } = refusalOf(() =>
    gripHoles(
      vented(
        { ...THUMB_VENT, overIn: 0.3 },
        THUMB_VENT,
        { ...THUMB_VENT, overIn: 1.8, meetsAtIn: 0.5 },
        { ...THUMB_VENT, meetsAtIn: 3 },
      ),
      0.109,
    ),
  );
  const { faults } = worded;
  expect(codes).toEqual(Array(3).fill('vent-impossible'));
  expect(refusal.statements.map(({ params }) => (params as { why: string }).why)).toEqual([
    'mouth-in-hole',
    'too-slanted',
    'below-the-hole',
  ]);
  expect(faults.map(({ field }) => field)).toEqual([0, 2, 3].map((i) => `bowler.grip.vents[${i}]`));
  for (const { rule, hint } of faults) {
    expect(rule).toMatch(/^must /);
    expect(hint).toBeTruthy();
  }
});

test('gripHoles: a slug or insert without a density gets the usual one (1.18 and 1.15 g/cc: common practice)', () => {
  const grip = usualGrip(true);
  const { thumb, middle } = grip;
  if (!thumb?.sleeve || !middle.sleeve) throw new Error('the usual grip has a slug and inserts');
  const { densityGcc: _, ...slug } = thumb.sleeve;
  const { densityGcc: __, ...insert } = middle.sleeve;
  const holes = gripHoles(
    {
      ...averageBowler,
      grip: { ...grip, thumb: { ...thumb, sleeve: slug }, middle: { ...middle, sleeve: insert } },
    },
    0.109,
  );
  expect(holes.map(({ sleeve }) => sleeve?.density)).toEqual([1180, 1150, 1150]);
});
