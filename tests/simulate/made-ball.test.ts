import { expect, test } from 'vitest';
import { fitEnsemble } from '../../src/ball/core/ensemble.js';
import { driller } from '../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../src/ball/drill/drilled-numbers.js';
import { staticWeights } from '../../src/ball/drill/static-weights.js';
import { from, INCH, OUNCE, to } from '../../src/base/units.js';
import { placeLayout } from '../../src/layout/placement.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { AS_PUBLISHED, asMade, drawMade } from '../../src/simulate/made-ball.js';
import { averageBowler, plainBall } from '../support/problems.js';

const strongBall = demoShelf().balls.find(({ id }) => id === 'asymmetric-strong')!.record;

test.each([
  { name: 'plain', record: plainBall },
  { name: 'asymmetric', record: strongBall },
])('$name: a ball made otherwise is drilled as cores with its own numbers are', ({ record }) => {
  const ball = ballProblem(record, averageBowler, 'moment');
  const { radius } = ball.published;
  const { R_BC } = placeLayout(toLayout(MIDDLE_LAYOUT, radius), ball.pap_B);
  const made = {
    lowRg: from(0.004, INCH),
    differential: 0.03,
    topWeight: from(0.25, OUNCE),
    pinToCg: from(0.25, INCH) / radius,
  };
  const drill = (body: (typeof ball.bodies)[number]) => driller(body, ball.rankingRays)(R_BC);
  const got = asMade(drill(ball.bodies[0]), R_BC, ball.published, made);

  // an independent road: cores fitted anew to the numbers of the ball as it was made, and drilled
  const { lowRg, differential, intermediateDifferential, topMoment, pinToCg } = ball.published;
  const anew = fitEnsemble(
    {
      ...ball.published,
      lowRg: lowRg + made.lowRg,
      differential: 1.03 * differential,
      intermediateDifferential: 1.03 * intermediateDifferential,
      topMoment: topMoment + made.topWeight * radius,
      pinToCg: pinToCg + made.pinToCg,
    },
    64,
  ).bodies.map(drill);
  const before = ball.bodies.map(drill);
  const meanOf = (bodies: typeof anew, read: (body: (typeof anew)[number]) => number): number =>
    bodies.reduce((sum, body) => sum + read(body), 0) / bodies.length;
  const read = {
    lowRg: (body: (typeof anew)[number]) => to(inertiaNumbers(body).lowRg, INCH),
    differential: (body: (typeof anew)[number]) => to(inertiaNumbers(body).differential, INCH),
    side: (body: (typeof anew)[number]) => to(staticWeights(body, radius, 'moment').side, OUNCE),
    finger: (body: (typeof anew)[number]) => to(staticWeights(body, radius, 'moment').finger, OUNCE),
    top: (body: (typeof anew)[number]) => to(staticWeights(body, radius, 'moment').top, OUNCE),
  };
  const first = drill(ball.bodies[0]);
  // what the making changes, by both roads; the means are over other cores, from which holes take 0.05 oz more or less
  const tolerance = { lowRg: 3e-4, differential: 4e-4, side: 0.03, finger: 0.03, top: 0.08 };
  for (const name of Object.keys(read) as (keyof typeof read)[]) {
    const byFormula = read[name](got) - read[name](first);
    const byFit = meanOf(anew, read[name]) - meanOf(before, read[name]);
    expect(Math.abs(byFormula - byFit), `${name}: ${byFormula} and ${byFit}`).toBeLessThan(tolerance[name]);
  }
});

test('a ball made as published is the drilled ball itself', () => {
  const ball = ballProblem(plainBall, averageBowler, 'moment');
  const { R_BC } = placeLayout(toLayout(MIDDLE_LAYOUT, ball.published.radius), ball.pap_B);
  const drilled = driller(ball.bodies[0], ball.rankingRays)(R_BC);
  expect(asMade(drilled, R_BC, ball.published, AS_PUBLISHED)).toBe(drilled);
  expect(asMade(drilled, R_BC, ball.published, { ...AS_PUBLISHED })).toEqual(drilled); // in a worker it is a copy
});

test('made balls lie within what a scale and a tape read, and 3 % of the differential', () => {
  const ends = [0, 1].map((end) => drawMade({ within: (_, low, high) => low + end * (high - low) }, 0.109));
  expect(ends.map((made) => to(made.lowRg, INCH))).toEqual([-0.004, 0.004]);
  expect(ends.map((made) => made.differential)).toEqual([-0.03, 0.03]);
  expect(ends.map((made) => to(made.topWeight, OUNCE))).toEqual([-0.25, 0.25]);
  for (const made of ends) expect(Math.abs(to(made.pinToCg * 0.109, INCH))).toBeCloseTo(0.25, 12);
});

test('a fingertip drilling takes 2.5 to 3 oz of top weight off (common practice, no source), which moment over radius reads', () => {
  for (const record of [plainBall, strongBall]) {
    const ball = ballProblem(record, averageBowler, 'moment');
    const { radius, topMoment, pinToCg } = ball.published;
    // pin and CG in line with the grip's centre: all of the top weight lies over it before drilling
    const { R_BC } = placeLayout({ drillingAngle: 0, pinToPap: 0, valAngle: 0 }, [0, 0, 1]);
    const { top } = staticWeights(driller(ball.bodies[0], ball.rankingRays)(R_BC), radius, 'moment');
    const before = (topMoment * Math.cos(pinToCg)) / radius;
    const taken = to(before - top, OUNCE);
    expect(taken).toBeGreaterThan(2.2);
    expect(taken).toBeLessThan(3.3);
  }
});
