import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Build,
  type BuildPlaces,
  isUnusual,
  UNUSUAL_BUILDS,
  USUAL_BUILDS,
} from '../../../src/ball/core/build.js';
import { buildDrawer } from '../../../src/ball/core/draw-build.js';
import { fitEnsemble } from '../../../src/ball/core/ensemble.js';
import { misfitOfBuild } from '../../../src/ball/core/solve-core.js';
import { driller } from '../../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { excavate } from '../../../src/ball/drill/excavation.js';
import { RANKING_RAYS } from '../../../src/ball/drill/ray-rule.js';
import { from, POUND } from '../../../src/base/units.js';
import { placeLayout } from '../../../src/layout/placement.js';
import type { CoreFamily } from '../../../src/records/schemas/core-families.js';
import { within } from '../../support/arbitraries.js';
import { layoutOf, PAP_B, publishedBall, RADIUS, USUAL_BALLS, usualHoles } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';

const share = within(0, 0.999);
const places: fc.Arbitrary<BuildPlaces> = fc.record({ thickness: share, density: share, filler: share });
const mass = within(8, 16).map((lb) => from(lb, POUND));

test('USUAL_BUILDS: covers are 3/4 to 1 in thick and of 1.15 to 1.25 g/cc (common practice, no source)', () =>
  fc.assert(
    fc.property(places, mass, (at, kg) => {
      const build = USUAL_BUILDS.at(at, kg);
      expect(build.coverThickness).toBeGreaterThan(0.748 * 0.0254 - 1e-6);
      expect(build.coverThickness).toBeLessThan(0.0254);
      expect(build.coverDensity).toBeGreaterThanOrEqual(1150);
      expect(build.coverDensity).toBeLessThanOrEqual(1250);
      expect(isUnusual({ ...build, fillerDensity: build.lightestFiller }, kg)).toBe(false);
    }),
  ));

test('UNUSUAL_BUILDS: reach beyond the usual ones at every end but the heaviest filler', () =>
  fc.assert(
    fc.property(places, mass, (at, kg) => {
      const usual = USUAL_BUILDS.at(at, kg);
      const least = UNUSUAL_BUILDS.at({ thickness: 0, density: 0, filler: 0 }, kg);
      const most = UNUSUAL_BUILDS.at({ thickness: 1, density: 1, filler: 1 }, kg);
      expect(least.coverThickness).toBeLessThan(usual.coverThickness);
      expect(least.coverDensity).toBeLessThan(usual.coverDensity);
      expect(least.lightestFiller).toBeLessThan(usual.lightestFiller);
      expect(most.coverThickness).toBeGreaterThan(usual.coverThickness);
      expect(most.coverDensity).toBeGreaterThan(usual.coverDensity);
      expect(most.lightestFiller).toBe(usual.lightestFiller);
    }),
  ));

test.each([...USUAL_BALLS, publishedBall('lobed', 14, 2.52, 0.05), publishedBall('plain', 15, 2.47, 0.05)])(
  'buildDrawer: of builds that may work with a $family ball it draws one as often as another, as plain drawing does',
  (wanted) => {
    const mayWork = (build: Build): boolean => misfitOfBuild(wanted, build) === null;
    const draw = buildDrawer(wanted);
    const drawn = POINTS.map(draw).filter(mayWork);
    const plain = POINTS.map(([pick, thickness, density, filler]) =>
      (pick < USUAL_BUILDS.share ? USUAL_BUILDS : UNUSUAL_BUILDS).at(
        { thickness, density, filler },
        wanted.mass,
      ),
    ).filter(mayWork);
    expect(drawn.length).toBeGreaterThanOrEqual(plain.length); // or nothing was won
    // means of some hundred at least: off by a spread over the root of their number
    const n = plain.length;
    expect(n).toBeGreaterThan(200);
    for (const trait of ['coverThickness', 'coverDensity', 'lightestFiller'] as const) {
      const [ours, theirs] = [drawn, plain].map((builds) => builds.map((build) => build[trait]));
      expect(Math.abs(mean(ours) - mean(theirs))).toBeLessThanOrEqual(
        4 * (deviation(theirs) / Math.sqrt(n)) + 1e-12,
      );
    }
  },
);

/** Evenly spread points of the unit cube in four dimensions (additive recurrence; x⁵ = x + 1 at 1.1673…). */
const POINTS = Array.from({ length: 100_000 }, (_, n) =>
  [1, 2, 3, 4].map((i) => (0.5 + n * 1.1673039782614187 ** -i) % 1),
);

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b) / values.length;

function deviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((x) => (x - middle) ** 2)));
}

describe('light balls with a low RG', () => {
  test('exist: an ellipsoid of 3.2 g/cc under 0.65 in of cover makes 14 lb, RG 2.50, differential 0.050 (closed form)', () => {
    const [M, low, high] = [14 * 0.45359237, 2.5 * 0.0254, 2.55 * 0.0254];
    const inner = RADIUS - 0.65 * 0.0254;
    const sphere = (r: number): number => (4 / 3) * Math.PI * r ** 3;
    const shell = 1150 * (sphere(RADIUS) - sphere(inner));
    /** Moment of inertia about the long axis of the ball with a filler, and the ellipsoid's long half axis. */
    const ballOf = (filler: number): { about: number; long: number } => {
      const mass = M - shell - filler * sphere(inner); // of what the ellipsoid weighs above the filler
      const cubed = mass / ((3200 - filler) * (4 / 3) * Math.PI); // across² · long
      // I about a cross axis less I about the long one is m (long² − across²)/5
      const wanted = (5 * M * (high ** 2 - low ** 2)) / mass;
      const long = halved((c) => c * c - cubed / c - wanted, Math.cbrt(cubed), 0.2);
      const round = (2 / 5) * (1150 * (sphere(RADIUS) * RADIUS ** 2 - sphere(inner) * inner ** 2));
      return { about: round + (2 / 5) * (filler * sphere(inner) * inner ** 2 + (mass * cubed) / long), long };
    };
    const filler = halved((f) => ballOf(f).about - M * low ** 2, 400, 900);
    expectNear(filler, 630, 5);
    expect(ballOf(filler).long).toBeLessThan(inner);
  });

  test.each<{ lb: number; rg: number; family: CoreFamily }>([
    { lb: 15, rg: 2.44, family: 'plain' },
    { lb: 15, rg: 2.44, family: 'lobed' },
    { lb: 14, rg: 2.5, family: 'plain' },
    { lb: 14, rg: 2.5, family: 'lobed' },
    { lb: 13, rg: 2.52, family: 'plain' },
    { lb: 12, rg: 2.57, family: 'plain' },
  ])(
    'fitEnsemble: 64 $family cores of $lb lb with RG $rg and differential 0.050, most of them unusual',
    ({ lb, rg, family }) => {
      const wanted = publishedBall(family, lb, rg, 0.05);
      const { bodies } = fitEnsemble(wanted, 64);
      expect(bodies.length).toBe(64);
      expect(bodies.filter((body) => isUnusual(body, wanted.mass)).length).toBeGreaterThan(32);
    },
  );

  test('fitEnsemble: 15 lb, RG 2.465, differential 0.054, intermediate 0.020', () => {
    expect(fitEnsemble(publishedBall('asymmetric', 15, 2.465, 0.054, 0.02), 64).bodies.length).toBe(64);
  });
});

/** Where a rising function crosses zero. */
function halved(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i++) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

test('fitEnsemble: a heavy cover lets 15 lb have an RG above that of a uniform ball, 2.718 in', () => {
  const { bodies } = fitEnsemble(publishedBall('plain', 15, 2.725, 0.01), 4);
  expect(bodies.length).toBe(4);
  for (const { coverDensity } of bodies) expect(coverDensity).toBeGreaterThan(1230);
});

test.each(USUAL_BALLS)(
  'fitEnsemble: an ordinary $family ball seldom gets an unusual cover or filler',
  (wanted) => {
    const { bodies } = fitEnsemble(wanted, 600);
    const unusual = bodies.filter((body) => isUnusual(body, wanted.mass)).length;
    expect(unusual / bodies.length).toBeLessThan(0.1);
  },
);

describe('fitEnsemble: the spread of drilled intermediate differential changes smoothly over RG', () => {
  const rays = excavate(usualHoles(), RADIUS, RANKING_RAYS);
  const { R_BC } = placeLayout(layoutOf(70, 4.5, 35), PAP_B);
  const spreadAt = (family: CoreFamily, lb: number, rg: number): number =>
    deviation(
      fitEnsemble(publishedBall(family, lb, rg, 0.05), 300).bodies.map(
        (body) => inertiaNumbers(driller(body, rays)(R_BC)).intermediateDifferential,
      ),
    );

  test.each((['plain', 'lobed'] as const).flatMap((family) => [13, 14, 15].map((lb) => ({ family, lb }))))(
    '$family, $lb lb, differential 0.050, RG 2.48 to 2.60',
    ({ family, lb }) => {
      const spreads = Array.from({ length: 13 }, (_, i) => spreadAt(family, lb, 2.48 + i / 100));
      // from unusual builds to usual ones, within 0.02 in of RG, a third may go; luck of 300 cores is 4 % (1/√(2n))
      for (let i = 1; i < spreads.length; i++) {
        expect(spreads[i] / spreads[i - 1]).toBeGreaterThan(0.6);
        expect(spreads[i] / spreads[i - 1]).toBeLessThan(1 / 0.6);
      }
      expect(Math.min(...spreads)).toBeGreaterThan(0.4 * Math.max(...spreads));
    },
  );
});
