import { describe, expect, test } from 'vitest';
import { drilledAnswer } from '../../../src/answer/drilled-answer.js';
import { drilledFacts } from '../../../src/answer/parts/drilled-facts.js';
import { coreMoments } from '../../../src/ball/drill/ball-body.js';
import { driller } from '../../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { INCH, to } from '../../../src/base/units.js';
import { placeLayout } from '../../../src/layout/placement.js';
import { ballProblem } from '../../../src/prepare/ball-problem.js';
import { toLayout } from '../../../src/prepare/to-layout.js';
import { readBall } from '../../../src/records/read/read-ball.js';
import type { Ball, PublishedBall } from '../../../src/records/schemas/ball.js';
import { loadRuleSet } from '../../../src/records/shared/rules.js';
import { parseLayout } from '../../../src/records/text/layout-text.js';
import { steps } from '../../../src/search/candidates/candidates.js';
import { expectWithin } from '../../support/bodies.js';
import { BODY, ballAround, core } from '../../support/core-files.js';
import { averageBowler, plainBall } from '../../support/problems.js';
import { said } from '../../support/said.js';

const LAYOUTS = ['70 x 4 1/2 x 35', '30 x 4 x 30', '50 x 4 1/2 x 35', '10 x 5 1/2 x 60', '90 x 2 x 20'];

const shelf = (name: string): PublishedBall => readBall(`data/balls/${name}.json`) as PublishedBall;
const unshaped = (ball: PublishedBall): Ball => {
  const { coreShape: _, ...rest } = ball;
  return rest;
};

describe.each([
  { name: 'lobed-strong', ball: shelf('lobed-strong') },
  { name: 'lobed-strong, its shape not known', ball: unshaped(shelf('lobed-strong')) },
  { name: 'lobed-medium', ball: shelf('lobed-medium') },
  { name: 'lobed-medium, its shape not known', ball: unshaped(shelf('lobed-medium')) },
  { name: 'asymmetric-strong', ball: shelf('asymmetric-strong') },
  { name: 'plain', ball: plainBall },
])('drilledFacts: $name', ({ ball }) => {
  const problem = ballProblem(ball, averageBowler, 'moment');
  const factsOf = drilledFacts(problem, loadRuleSet());

  test.each(LAYOUTS)('%s: half of the cores have less than each number shown, half have more', (text) => {
    const layout = parseLayout(text);
    const { drilled } = factsOf(layout);
    const { R_BC } = placeLayout(toLayout(layout, problem.published.radius), problem.pap_B);
    const cores = problem.bodies.map((body) => inertiaNumbers(driller(body, problem.rankingRays)(R_BC)));
    for (const [key, pick] of [
      ['rgIn', 'lowRg'],
      ['differentialIn', 'differential'],
      ['intermediateDifferentialIn', 'intermediateDifferential'],
    ] as const) {
      const below = cores.filter((core) => to(core[pick], INCH) < drilled[key]).length;
      expect(below).toBe(cores.length / 2);
    }
  });

  test('turned by a quarter degree: no weight moves by more than a fiftieth of an ounce, the axis by no more than an eighth of an inch', () => {
    const facts = Array.from({ length: 81 }, (_, i) =>
      factsOf({ drillingAngleDeg: 50, pinToPapIn: 4.5, valAngleDeg: 10 + 0.25 * i }),
    );
    for (const [i, { drilled, psa }] of facts.entries()) {
      const before = facts[i - 1];
      if (!before) continue;
      for (const weight of ['top', 'side', 'finger'] as const)
        expectWithin(drilled.staticOz[weight], before.drilled.staticOz[weight], 0.02);
      expectWithin(drilled.massLb, before.drilled.massLb, 0.02 / 16);
      expectWithin(psa.fromPinIn, before.psa.fromPinIn, 0.125);
      expectWithin(psa.fromPapIn, before.psa.fromPapIn, 0.125);
    }
  });

  test.each(LAYOUTS)('%s: no number lies outside its band as both are printed', (text) => {
    const { drilled, bands } = factsOf(parseLayout(text));
    for (const key of ['rgIn', 'differentialIn', 'intermediateDifferentialIn'] as const)
      for (const digits of [2, 3, 4]) {
        const [low, value, high] = [bands[key].low, drilled[key], bands[key].high].map((x) =>
          Number(x.toFixed(digits)),
        );
        expect(value).toBeGreaterThanOrEqual(low);
        expect(value).toBeLessThanOrEqual(high);
      }
  });
});

describe('the end of the high-RG axis that is named', () => {
  const factsOf = (ball: Ball) => drilledFacts(ballProblem(ball, averageBowler, 'moment'), loadRuleSet());

  test('is the mass-bias mark’s own, and does not jump from one drilling angle to the next', () => {
    const numbersOf = factsOf(shelf('asymmetric-strong'));
    const axes = steps({ least: 0, most: 180 }, 2.5).map(
      (drillingAngleDeg) => numbersOf({ drillingAngleDeg, pinToPapIn: 4.5, valAngleDeg: 35 }).psa,
    );
    for (const [i, { fromPapIn, fromMarkIn }] of axes.entries()) {
      expect(fromMarkIn).toBeLessThan(3.5); // the axis of this strong core stays near its mark
      if (i > 0) expectWithin(fromPapIn, axes[i - 1].fromPapIn, 0.6);
    }
  });

  test('lies from its mark as far as the spherical law of cosines says', () => {
    const { psa, marks } = factsOf(shelf('asymmetric-strong'))(parseLayout('10 x 4 1/2 x 35'));
    const mark = marks.find((each) => each.mark === 'mass-bias mark')!;
    const arc = (inches: number): number => (2 * Math.PI * inches) / 27;
    // of the triangles pin, mark, PAP and pin, axis, PAP the angles at the pin differ by that of mark and axis
    const angleAtPin = (fromPin: number, fromPap: number): number =>
      Math.acos(
        (Math.cos(arc(fromPap)) - Math.cos(arc(4.5)) * Math.cos(arc(fromPin))) /
          (Math.sin(arc(4.5)) * Math.sin(arc(fromPin))),
      );
    const turned = angleAtPin(mark.fromPinIn!, mark.fromPapIn) + angleAtPin(psa.fromPinIn, psa.fromPapIn);
    const byCosines = [turned, turned - 2 * angleAtPin(mark.fromPinIn!, mark.fromPapIn)].map(
      (angle) =>
        (Math.acos(
          Math.cos(arc(mark.fromPinIn!)) * Math.cos(arc(psa.fromPinIn)) +
            Math.sin(arc(mark.fromPinIn!)) * Math.sin(arc(psa.fromPinIn)) * Math.cos(angle),
        ) *
          27) /
        (2 * Math.PI),
    );
    expect(Math.min(...byCosines.map((each) => Math.abs(each - psa.fromMarkIn!)))).toBeLessThan(1e-9);
  });

  test('is the one nearest the thumb on a ball without mass bias, which has no such mark (a round core: by the holes alone)', () => {
    const ball = ballAround(core({ parts: [{ ...BODY, radii: [2, 2, 2], centre: [0, 0, 0] }] }));
    const { psa, marks } = factsOf(ball)(parseLayout('50 x 4 1/2 x 35'));
    expect(psa).toMatchObject({ certain: true, fromMarkIn: null });
    expect(psa.fromGripCentreIn).toBeLessThan(6.75);
    expect(marks.map(({ mark }) => mark)).toContain('marker');
  });
});

describe('the intermediate differential of a symmetric ball before drilling', () => {
  const undrilled = (given: Partial<PublishedBall>) =>
    drilledAnswer(
      { bowler: averageBowler, ball: { ...plainBall, ...given } as Ball, layout: parseLayout(LAYOUTS[0]) },
      { ounce: 'moment' },
    );

  test('is what its cores have, and said where it shows', () => {
    const much = undrilled({ topWeightOz: 4.5, pinToCgIn: 4 });
    const { bodies } = ballProblem(
      { ...plainBall, topWeightOz: 4.5, pinToCgIn: 4 } as Ball,
      averageBowler,
      'moment',
    );
    const cores = bodies.map((body) => {
      // moment w beside the axis: the core's excess mass c stands off by w/c, so that c (w/c)² − M (w/M)² is added to one
      // of two equal moments; over 2 M RG it is an intermediate differential
      const mass = coreMoments(body.core).mass;
      const ball = 15 * 0.45359237;
      const w = (4.5 / 16) * 0.45359237 * body.radius * Math.sin((4 * 0.0254) / body.radius);
      return (w * w * (1 / mass - 1 / ball)) / (2 * ball * 2.57 * 0.0254) / 0.0254;
    });
    const [low, high] = [Math.min(...cores), Math.max(...cores)];
    expect(much.undrilled.intermediateDifferentialIn).toBeGreaterThan(0.95 * low);
    expect(much.undrilled.intermediateDifferentialIn).toBeLessThan(1.05 * high);
    expect(much.undrilled.intermediateDifferentialIn).toBeGreaterThan(0.0005);
    expect(said(much.assumptions)).toMatch(
      /The top weight gives these cores 0\.00[12] in of intermediate differential/,
    );
  });

  test('is none without top weight, and nothing is said', () => {
    const none = undrilled({ topWeightOz: 0 });
    expect(none.undrilled.intermediateDifferentialIn).toBeCloseTo(0, 9);
    expect(said(none.assumptions)).not.toMatch(/Top weight gives/);
  });

  test('RG, differential, and the mass bias of an asymmetric ball stay as published', () => {
    const { undrilled: numbers } = drilledAnswer(
      { bowler: averageBowler, ball: shelf('asymmetric-strong'), layout: parseLayout(LAYOUTS[0]) },
      { ounce: 'moment' },
    );
    expect(numbers).toMatchObject({ rgIn: 2.507, differentialIn: 0.0505 });
    expect(numbers.intermediateDifferentialIn).toBeCloseTo(0.0165, 9);
  });
});
