import { mean } from 'simple-statistics';
import { beforeAll, describe, expect, test } from 'vitest';
import { DEGREE, FOOT } from '../../src/base/units.js';
import { beliefFindings } from '../../src/explain/belief-findings.js';
import { beliefVerdict } from '../../src/explain/belief-verdict.js';
import type { Launch } from '../../src/motion/shot/release.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { BeliefFinding } from '../../src/records/answers/statements/beliefs.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { BELIEFS } from '../../src/records/shared/beliefs.js';
import { localEvaluator } from '../../src/simulate/evaluator.js';
import { withSetting } from '../../src/simulate/setting.js';
import type { ShotProblem } from '../../src/simulate/shot-problem.js';
import { simulator } from '../../src/simulate/simulator.js';
import { said } from '../support/said.js';
import { TINY_BUDGET } from '../support/small-budget.js';

const { bowlers, balls, lanes } = demoShelf();
const byId = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;

const WORLDS = 6;
const budget = { ...TINY_BUDGET, practiceWorlds: WORLDS };

/** A world in which the ball goes into the gutter, whatever it is. */
const wide = (problem: ShotProblem): ShotProblem['worlds'][number] => ({
  ...problem.worlds[1],
  launchAngle: 10 * DEGREE,
});

describe('what practice believes beside what physics finds, average bowler on an easy lane', () => {
  const inputsWith = (ball: string) => ({
    bowler: byId(bowlers, 'average-right'),
    ball: byId(balls, ball),
    lane: byId(lanes, 'house-easy'),
    want: {},
  });
  const options = { seed: 1, workers: 1, pinSide: 'above', budget } as const;
  let problem: ShotProblem;
  let findings: readonly BeliefFinding['params'][] = [];
  const byBelief = (id: string): BeliefFinding['params'] => findings.find((each) => each.id === id)!;
  const ownLine = (): Launch => {
    const { radius } = problem.ball.published;
    return simulator(problem).ownShot(toLayout(MIDDLE_LAYOUT, radius)).launch;
  };
  const of = async (
    worlds: ShotProblem['worlds'],
    count: number,
  ): Promise<readonly BeliefFinding['params'][]> => {
    const here = { ...problem, worlds };
    const found = await beliefFindings(MIDDLE_LAYOUT, ownLine(), {
      problem: here,
      budget: { ...budget, practiceWorlds: count },
      evaluator: localEvaluator(here),
    });
    return found.map(({ params }) => params);
  };
  beforeAll(async () => {
    await withSetting(inputsWith('asymmetric-mild'), options, async (setting) => {
      problem = setting.problem;
    });
    findings = await of(problem.worlds, WORLDS);
  });

  test('every belief is there in its order, with its own sizes, and says in how many worlds it was tried', () => {
    expect(findings.map(({ id }) => id)).toEqual(BELIEFS.map(({ id }) => id));
    for (const [b, { least, most, says, worlds }] of findings.entries()) {
      expect({ least, most, says }).toEqual({
        least: BELIEFS[b].least,
        most: BELIEFS[b].most,
        says: BELIEFS[b].says,
      });
      expect(worlds).toBe(WORLDS);
    }
  });

  test('on a ball without a mass bias practice goes by no mark: nothing is said of one', async () => {
    const plain = await withSetting(inputsWith('plain-medium'), options, async (setting) =>
      beliefFindings(MIDDLE_LAYOUT, setting.line.launch, {
        ...setting,
        budget: { ...budget, practiceWorlds: 1 },
      }),
    );
    const left = BELIEFS.filter(({ quantity }) => quantity !== 'markToPapIn').map(({ id }) => id);
    expect(plain.map(({ params }) => params.id)).toEqual(left);
  });

  test('a drilling angle is tried on the line of the layout itself, and the change is the mean over worlds', () => {
    const engine = simulator(problem);
    const { radius } = problem.ball.published;
    const launch = ownLine();
    const hookStart = (drillingAngleDeg: number, world: ShotProblem['worlds'][number]): number =>
      engine.outcome(toLayout({ ...MIDDLE_LAYOUT, drillingAngleDeg }, radius), world, launch).reaction
        .hookStart;
    const changes = problem.worlds
      .slice(1, 1 + WORLDS)
      .map((world) => (hookStart(80, world) - hookStart(20, world)) / FOOT);
    expect(byBelief('drilling-angle-later').byPhysics).toBeCloseTo(mean(changes), 9);
  });

  test('worlds in which the ball does not reach the pins do not count, and where it never does nothing is found', async () => {
    const [nominal, ...worlds] = problem.worlds;
    const mixed = await of([nominal, wide(problem), worlds[0], wide(problem), worlds[1]], 4);
    const plain = await of([nominal, worlds[0], worlds[1]], 2);
    expect(mixed.map(({ byPhysics }) => byPhysics)).toEqual(plain.map(({ byPhysics }) => byPhysics));
    for (const { byPhysics, verdict } of await of([nominal, wide(problem)], 1)) {
      expect(byPhysics).toBeNull();
      expect(verdict).toBe('not-tried');
    }
  });

  test('physics bears out what the equations of motion say: more differential flares more, a higher RG hooks later, a smoother cover hooks less', () => {
    // flare migrates faster with more differential; spin axis and slip change more slowly with more inertia; less friction
    expect(byBelief('differential-flares-more')).toMatchObject({ verdict: 'agrees' });
    expect(byBelief('rg-later').byPhysics).toBeGreaterThan(0);
    expect(byBelief('finish-hooks-less')).toMatchObject({ verdict: 'agrees' });
    expect(byBelief('finish-later')).toMatchObject({ verdict: 'agrees' });
  });

  test('where a mark lies cannot be moved alone, and the sentence says so; each other one says what physics finds', () => {
    for (const params of findings) {
      const text = said([{ code: 'belief-beside-physics', params }]);
      expect(text).toContain(params.says);
      if (params.quantity === 'markToPapIn') {
        expect(params).toMatchObject({ byPhysics: null, verdict: 'not-tried' });
        expect(text).toContain('physics cannot test it separately');
      } else {
        expect(params.verdict).toBe(beliefVerdict(params.byPhysics, params.most));
        expect(text).toMatch(/physics finds .*(agrees|the opposite|hardly visible)/);
      }
    }
  });
});

describe('beliefVerdict, a belief that adds 1.15 ft at most: a fifth of it shows', () => {
  test.each([
    { change: 0.24, most: 1.15, verdict: 'agrees' },
    { change: 0.22, most: 1.15, verdict: 'hardly-shows' },
    { change: -0.22, most: 1.15, verdict: 'hardly-shows' },
    { change: -0.24, most: 1.15, verdict: 'disagrees' },
    { change: -0.24, most: -1.15, verdict: 'agrees' },
    { change: 0.24, most: -1.15, verdict: 'disagrees' },
    { change: 0, most: 1.15, verdict: 'hardly-shows' },
    { change: null, most: 1.15, verdict: 'not-tried' },
  ])('$change of $most: $verdict', ({ change, most, verdict }) => {
    expect(beliefVerdict(change, most)).toBe(verdict);
  });
});
