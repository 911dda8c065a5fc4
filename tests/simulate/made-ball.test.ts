import { standardDeviation } from 'simple-statistics';
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
import { drawMade, guessedOf } from '../../src/simulate/worlds/draw-made.js';
import { drawsOf } from '../../src/simulate/worlds/draws.js';
import { AS_PUBLISHED, asMade } from '../../src/simulate/worlds/made-ball.js';
import { averageBowler, plainBall } from '../support/problems.js';

const strongBall = demoShelf().balls.find(({ id }) => id === 'asymmetric-strong')!.record;

/** How far a made ball lies off, and how far a guess by the kind of ball may: RG, both differentials, top weight, pin to CG. */
const MADE_OFF = { rgIn: 0.004, differentialIn: 0.0014, intermediateIn: 0.0006, topOz: 0.25, pinIn: 0.25 };
const GUESS_OFF = { rgIn: 0.03, differentialIn: 0.01, intermediateIn: 0.004, topOz: 0.5, pinIn: 0.5 };

// what the making changes, by both roads, mean over cores: of other cores holes take 0.05 oz more or less
const NEAR = { lowRg: 3e-4, differential: 4e-4, side: 0.03, finger: 0.03, top: 0.08 };
// of so large a change holes take other matter, too: a quarter of the change, far less than a guess is off
const NEAR_GUESS = { lowRg: 1e-3, differential: 2.5e-3, side: 0.2, finger: 0.2, top: 0.2 };

test.each([
  { name: 'plain', record: plainBall, off: MADE_OFF, tolerance: NEAR },
  { name: 'asymmetric', record: strongBall, off: MADE_OFF, tolerance: NEAR },
  { name: 'plain, guessed', record: plainBall, off: GUESS_OFF, tolerance: NEAR_GUESS },
  { name: 'asymmetric, guessed', record: strongBall, off: GUESS_OFF, tolerance: NEAR_GUESS },
])(
  '$name: a ball made otherwise is drilled as cores with its own numbers are',
  ({ record, off, tolerance }) => {
    const ball = ballProblem(record, averageBowler, 'moment');
    const { radius } = ball.published;
    const { R_BC } = placeLayout(toLayout(MIDDLE_LAYOUT, radius), ball.pap_B);
    const made = {
      lowRg: from(off.rgIn, INCH),
      differential: from(off.differentialIn, INCH),
      intermediateDifferential: record === strongBall ? from(off.intermediateIn, INCH) : 0,
      topWeight: from(off.topOz, OUNCE),
      pinToCg: from(off.pinIn, INCH) / radius,
    };
    const drill = (body: (typeof ball.bodies)[number]) => driller(body, ball.rankingRays)(R_BC);
    const got = ball.bodies.map((body) => asMade(drill(body), R_BC, ball.published, made));

    // an independent road: cores fitted anew to the numbers of the ball as it was made, and drilled
    const { lowRg, differential, intermediateDifferential, topMoment, pinToCg } = ball.published;
    const anew = fitEnsemble(
      {
        ...ball.published,
        lowRg: lowRg + made.lowRg,
        differential: differential + made.differential,
        intermediateDifferential: intermediateDifferential + made.intermediateDifferential,
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
    for (const name of Object.keys(read) as (keyof typeof read)[]) {
      const byFormula = meanOf(got, read[name]) - meanOf(before, read[name]);
      const byFit = meanOf(anew, read[name]) - meanOf(before, read[name]);
      expect(Math.abs(byFormula - byFit), `${name}: ${byFormula} and ${byFit}`).toBeLessThan(tolerance[name]);
    }
  },
);

test('a ball made as published is the drilled ball itself', () => {
  const ball = ballProblem(plainBall, averageBowler, 'moment');
  const { R_BC } = placeLayout(toLayout(MIDDLE_LAYOUT, ball.published.radius), ball.pap_B);
  const drilled = driller(ball.bodies[0], ball.rankingRays)(R_BC);
  expect(asMade(drilled, R_BC, ball.published, AS_PUBLISHED)).toBe(drilled);
  expect(asMade(drilled, R_BC, ball.published, { ...AS_PUBLISHED })).toEqual(drilled); // in a worker it is a copy
});

const published = ballProblem(strongBall, averageBowler, 'moment').published;

test('made balls lie within what a scale and a tape read, and 3 % of both differentials', () => {
  const never = () => expect.unreachable();
  const ends = [-1, 1].map((end) =>
    drawMade({ within: (_, __, high) => end * high, normal: never }, published),
  );
  expect(ends.map((made) => to(made.lowRg, INCH))).toEqual([-0.004, 0.004]);
  for (const made of ends) {
    expect(Math.abs(made.differential / published.differential)).toBeCloseTo(0.03, 12);
    expect(Math.abs(made.intermediateDifferential / published.intermediateDifferential)).toBeCloseTo(
      0.03,
      12,
    );
    expect(Math.abs(to(made.pinToCg * published.radius, INCH))).toBeCloseTo(0.25, 12);
  }
  expect(ends.map((made) => to(made.topWeight, OUNCE))).toEqual([-0.25, 0.25]);
});

test('a guessed number is as far off as its record says, the making added: normal, with the sum of both variances', () => {
  const uncertainty = { rgIn: 0.03, topWeightOz: 0.5 };
  const drawn = Array.from({ length: 4096 }, (_, n) => drawMade(drawsOf(1, n), published, uncertainty));
  // tails cut at 0.1 % each side lower a deviation by under 2 %; evenly spread points by less than that
  const rg = standardDeviation(drawn.map(({ lowRg }) => to(lowRg, INCH)));
  expect(Math.abs(rg / Math.hypot(0.03, 0.004 / Math.sqrt(3)) - 0.99)).toBeLessThan(0.01);
  const top = standardDeviation(drawn.map(({ topWeight }) => to(topWeight, OUNCE)));
  expect(Math.abs(top / Math.hypot(0.5, 0.25 / Math.sqrt(3)) - 0.99)).toBeLessThan(0.01);
  // what was not guessed is drawn as in a world of a ball whose numbers are published
  const known = Array.from({ length: 4096 }, (_, n) => drawMade(drawsOf(1, n), published));
  expect(drawn.map(({ pinToCg }) => pinToCg)).toEqual(known.map(({ pinToCg }) => pinToCg));
});

test('a wish is moved along with what was guessed of the ball, not with how it was made', () => {
  const made = drawMade(drawsOf(1, 5), published, { rgIn: 0.03 });
  expect(guessedOf(made, { rgIn: 0.03 })).toEqual({ ...AS_PUBLISHED, lowRg: made.lowRg });
  expect(guessedOf(made, {})).toBe(AS_PUBLISHED);
});

test('however far off a guess, no ball has a negative differential or more mass bias than differential', () => {
  const ball = ballProblem(strongBall, averageBowler, 'moment');
  const { R_BC } = placeLayout(toLayout(MIDDLE_LAYOUT, published.radius), ball.pap_B);
  const drilled = driller(ball.bodies[0], ball.rankingRays)(R_BC);
  const far = { ...AS_PUBLISHED, differential: -1, intermediateDifferential: 1 };
  const none = { ...AS_PUBLISHED, differential: -published.differential, intermediateDifferential: -1 };
  expect(asMade(drilled, R_BC, published, far)).toEqual(asMade(drilled, R_BC, published, none));
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
