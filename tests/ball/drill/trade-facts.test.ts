import { describe, expect, test } from 'vitest';
import { fitEnsemble } from '../../../src/ball/core/ensemble.js';
import { type BallBody, bodyMoments } from '../../../src/ball/drill/ball-body.js';
import { driller } from '../../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { excavate } from '../../../src/ball/drill/excavation.js';
import { staticWeights } from '../../../src/ball/drill/static-weights.js';
import { fromMoments } from '../../../src/ball/mass/mass-properties.js';
import { crossShape, type Interval } from '../../../src/ball/solid/ray-interval.js';
import { INCH, OUNCE, to } from '../../../src/base/units.js';
import { placeLayout } from '../../../src/layout/placement.js';
import { inverse, mulMat, mulVec, transpose } from '../../../src/math/mat3.js';
import { scale, sub } from '../../../src/math/vec3.js';
import { layoutOf, PAP_B, publishedBall, RADIUS, usualHoles } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';
import { lobedCore } from '../../support/lobed-ball.js';

/*
 * What shops and makers say holes do to a ball. Common practice, no source: figures to be near, not exact.
 * All on the usual grip, PAP 5 in over and 1/2 in up, 27 in around, 15 lb.
 */
const HOLES = usualHoles();
const RAYS = excavate(HOLES, RADIUS, { radii: 12, angles: 24 });

const inInches = (body: BallBody, layout?: [number, number, number]) => {
  const ball = layout
    ? driller(body, RAYS)(placeLayout(layoutOf(...layout), PAP_B).R_BC)
    : fromMoments(bodyMoments(body));
  const { differential, intermediateDifferential } = inertiaNumbers(ball);
  return { total: to(differential, INCH), intermediate: to(intermediateDifferential, INCH) };
};

describe('a plain symmetric core, RG 2.54, differential 0.045, pin 5 in from the PAP, VAL angle 30°', () => {
  const { bodies } = fitEnsemble(publishedBall('plain', 15, 2.54, 0.045), 48);
  const angles = [10, 20, 30, 40, 50, 60, 70, 80, 90];
  const rows = bodies.map((body) => angles.map((angle) => inInches(body, [angle, 5, 30]).intermediate));
  const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1];

  test('gets about 0.012 in of intermediate differential at any drilling angle (common practice, no source)', () => {
    for (const i of angles.keys()) expectNear(median(rows.map((row) => row[i])), 0.012, 0.0012);
  });

  test('varies with the drilling angle by less than ± 0.001 in, whatever the core (common practice, no source)', () => {
    for (const row of rows) expect(Math.max(...row) - Math.min(...row)).toBeLessThan(0.002);
  });
});

describe('a lobed core, RG 2.52, differential 0.050, pin 4 1/2 in from the PAP, VAL angle 30°', () => {
  if (lobedCore.kind !== 'fits') throw new Error(lobedCore.why);
  const { body } = lobedCore;

  test('is symmetric by its numbers before drilling', () => {
    const { total, intermediate } = inInches(body);
    expectNear(total, 0.05, 1e-9);
    expect(intermediate).toBeLessThan(0.001);
  });

  test('gets 0.018 in of intermediate and 0.056 in of total differential at 70°, 0.008 in at 30° (common practice, no source)', () => {
    const at70 = inInches(body, [70, 4.5, 30]);
    expectNear(at70.intermediate, 0.018, 0.001);
    expectNear(at70.total, 0.056, 0.003);
    expectNear(inInches(body, [30, 4.5, 30]).intermediate, 0.008, 0.001);
  });

  test('for the thumb’s axis goes through a nose at 70° and misses them all at 30°', () => {
    expect(thumbThroughNoses(70)).toBeGreaterThan(to(0.01, INCH));
    expect(thumbThroughNoses(30)).toBe(0);
  });

  /** Length of the thumb hole's axis inside noses, down to the bottom of its bore, in. */
  function thumbThroughNoses(drillingDeg: number): number {
    const { R_BC } = placeLayout(layoutOf(drillingDeg, 4.5, 30), PAP_B);
    const [thumb] = HOLES;
    const depth = thumb.sleeve?.bore.depth ?? thumb.open.depth;
    return body.core.slice(1).reduce((sum, nose) => {
      const map = mulMat(inverse(nose.A), transpose(R_BC));
      const start = sub(mulVec(map, scale(RADIUS, thumb.mouth_B)), mulVec(inverse(nose.A), nose.c));
      const hit: Interval = { enter: 0, leave: 0 };
      crossShape(hit, nose.shape, ...start, ...mulVec(map, thumb.axis_B));
      return sum + Math.max(0, to(Math.min(depth, hit.leave) - Math.max(0, hit.enter), INCH));
    }, 0);
  }
});

test('static weights of ordinary layouts stay under 3 oz in every direction (common practice, no source)', () => {
  for (const family of ['plain', 'asymmetric'] as const) {
    const { bodies } = fitEnsemble(publishedBall(family, 15, 2.54, 0.045, family === 'plain' ? 0 : 0.015), 6);
    for (const body of bodies)
      for (const drilling of [20, 45, 70, 90])
        for (const pinToPap of [2, 3.375, 4.5, 5.5])
          for (const val of [20, 45, 70]) {
            const { R_BC } = placeLayout(layoutOf(drilling, pinToPap, val), PAP_B);
            const { top, side, finger } = staticWeights(driller(body, RAYS)(R_BC), RADIUS, 'moment');
            const worst = Math.max(...[top, side, finger].map(Math.abs));
            expect(to(worst, OUNCE)).toBeLessThan(3);
          }
  }
});
