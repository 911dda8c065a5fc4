import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Build, type BuildPlaces, UNUSUAL_BUILDS, USUAL_BUILDS } from '../../../src/ball/core/build.js';
import { SHAPE_DIMENSIONS, startingShape } from '../../../src/ball/core/core-families.js';
import { fitEnsemble } from '../../../src/ball/core/ensemble.js';
import type { PublishedNumbers } from '../../../src/ball/core/published.js';
import { misfitOfBuild, type StartingCore, solveCore } from '../../../src/ball/core/solve-core.js';
import { type BallBody, bodyMoments, coreMoments } from '../../../src/ball/drill/ball-body.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { fromMoments } from '../../../src/ball/mass/mass-properties.js';
import { type Part, stretchPart } from '../../../src/ball/solid/part.js';
import { partReach } from '../../../src/ball/solid/support.js';
import { DEGREE, from, INCH, OUNCE, to } from '../../../src/base/units.js';
import { determinant } from '../../../src/math/mat3.js';
import { arcAngle } from '../../../src/math/sphere.js';
import { scale, unit, type Vec3 } from '../../../src/math/vec3.js';
import type { CoreFamily } from '../../../src/records/schemas/core-families.js';
import { newtonCore } from '../../oracles/newton-core.js';
import { partContains } from '../../oracles/part-contains.js';
import { within } from '../../support/arbitraries.js';
import { publishedBall, RADIUS } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';

const published = (family: CoreFamily): fc.Arbitrary<PublishedNumbers> =>
  fc
    .record({
      lb: within(14, 16),
      rg: within(2.5, 2.62),
      differential: within(0.02, 0.055),
      intermediate: family === 'asymmetric' ? within(0.1, 0.5) : fc.constant(0),
      pinToCgIn: within(0, 4),
      topOz: within(0, 4),
    })
    .map(({ lb, rg, differential, intermediate, pinToCgIn, topOz }) => ({
      ...publishedBall(family, lb, rg, differential, intermediate * differential),
      pinToCg: from(pinToCgIn, INCH) / RADIUS,
      topMoment: from(topOz, OUNCE) * RADIUS,
    }));
/** Any ball that a record may describe, most of them such as no core can be. */
const anyBall = (family: CoreFamily, leastDifferential = 0): fc.Arbitrary<PublishedNumbers> =>
  fc
    .tuple(
      within(8, 16),
      within(2.4, 2.8),
      within(leastDifferential, 0.06),
      within(0, 1),
      within(0, 6),
      within(0, 6),
    )
    .map(([lb, rg, differential, share, pinToCgIn, topOz]) => ({
      ...publishedBall(family, lb, rg, differential, family === 'asymmetric' ? share * differential : 0),
      pinToCg: from(pinToCgIn, INCH) / RADIUS,
      topMoment: from(topOz, OUNCE) * RADIUS,
    }));
const shape = fc.array(within(0, 0.999), { minLength: SHAPE_DIMENSIONS, maxLength: SHAPE_DIMENSIONS });

/** A build of either kind, for a ball. */
type AnyBuild = (wanted: PublishedNumbers) => Build;
const share = within(0, 0.999);
const places: fc.Arbitrary<BuildPlaces> = fc.record({ thickness: share, density: share, filler: share });
const build: fc.Arbitrary<AnyBuild> = fc.tuple(fc.constantFrom(USUAL_BUILDS, UNUSUAL_BUILDS), places).map(
  ([kind, at]) =>
    ({ mass }) =>
      kind.at(at, mass),
);
/** A shape of a family in a build, for a ball. */
const start = (family: CoreFamily): fc.Arbitrary<(wanted: PublishedNumbers) => StartingCore> =>
  fc.tuple(build, shape).map(([of, u]) => (wanted) => ({ ...of(wanted), core: startingShape(family, u) }));
/** A usual build. */
const MIDDLE: Build = { coverThickness: 0.02, coverDensity: 1170, lightestFiller: 600 };

describe.each<CoreFamily>(['plain', 'lobed', 'asymmetric'])('solveCore: %s cores that fit', (family) => {
  /** Runs a claim on every fit among random balls and shapes; misfits are left out, and some must fit. */
  function onFits(claim: (body: BallBody, wanted: PublishedNumbers) => void): void {
    let fits = 0;
    fc.assert(
      fc.property(published(family), start(family), within(0, 1), (wanted, at, fillerShare) => {
        const solved = solveCore(wanted, at(wanted), fillerShare);
        if (solved.kind === 'misfit') return;
        fits += 1;
        claim(solved.body, wanted);
      }),
      { numRuns: 2000 },
    );
    expect(fits).toBeGreaterThan(20);
  }

  test('have the published weight, RG and differentials to 1e-12 in', () =>
    onFits((body, wanted) => {
      const { mass, ...numbers } = inertiaNumbers(fromMoments(bodyMoments(body)));
      expectNear(mass, wanted.mass, 1e-12);
      expectNear(to(numbers.lowRg, INCH), to(wanted.lowRg, INCH), 1e-12);
      expectNear(to(numbers.differential, INCH), to(wanted.differential, INCH), 1e-12);
      const left = to(numbers.intermediateDifferential - wanted.intermediateDifferential, INCH);
      if (family === 'asymmetric') expectNear(left, 0, 1e-12);
      else expect(left).toBeLessThan(1.05 * leftByShift(body, wanted) + 1e-9);
    }));

  test('have the published top weight at the published arc from the pin', () =>
    onFits((body, wanted) => {
      const { first } = bodyMoments(body);
      expectNear(Math.hypot(...first), wanted.topMoment, 1e-15);
      if (wanted.topMoment > 1e-3) expectNear(arcAngle(unit(first), [0, 0, 1]), wanted.pinToCg, 1e-11);
    }));

  test('lie inside the cover', () =>
    onFits((body) => {
      const room = body.radius - body.coverThickness;
      expect(Math.max(...body.core.map(partReach))).toBeLessThan(room);
    }));

  test('have densities that are built, at the centre of every part', () =>
    onFits((body) => {
      expect(body.fillerDensity).toBeGreaterThanOrEqual(450);
      expect(body.fillerDensity).toBeLessThanOrEqual(1400);
      for (const { c } of body.core) expect(densityAt(body, c)).toBeLessThanOrEqual(3800);
    }));

  test('keep the low-RG axis within 8° of the pin', () =>
    onFits((body) => {
      const { lowAxis_B } = inertiaNumbers(fromMoments(bodyMoments(body)));
      expect(Math.abs(lowAxis_B[2])).toBeGreaterThan(Math.cos(8 * DEGREE));
    }));
});

/**
 * Intermediate differential (in) of a symmetric core of excess mass c that stands off the pin's axis by x so
 * that c x is the wanted moment: c x² about the centre less m (c x/m)² for the ball's, over 2 m k.
 */
function leftByShift(body: BallBody, { mass, lowRg, topMoment, pinToCg }: PublishedNumbers): number {
  const moment = topMoment * Math.sin(pinToCg);
  return to((moment ** 2 * (1 / coreMoments(body.core).mass - 1 / mass)) / (2 * mass * lowRg), INCH);
}

/** Density (kg/m³) at a point inside the cover. */
const densityAt = (body: BallBody, p: Vec3): number =>
  body.core.reduce((sum, part) => sum + (partContains(part, p) ? part.excess : 0), body.fillerDensity);

test.each<CoreFamily>(['plain', 'lobed', 'asymmetric'])(
  'solveCore: a %s core is nowhere denser than 3.80 g/cc',
  (family) => {
    for (const body of fitEnsemble(publishedBall(family, 15, 2.54, 0.045), 12).bodies)
      for (let i = 0; i < 4000; i++) {
        // a spiral through the ball's inside
        const [r, z, a] = [0.085 * Math.cbrt((i + 0.5) / 4000), Math.cos(i * 1.7), i * 2.4];
        const across = Math.sqrt(1 - z * z);
        const p = scale(r, [across * Math.cos(a), across * Math.sin(a), z]);
        expect(densityAt(body, p)).toBeLessThanOrEqual(3800);
      }
  },
);

test('misfitOfBuild: what speaks against a build speaks against any with a thicker and denser cover and heavier filler', () => {
  let spoken = 0;
  fc.assert(
    fc.property(
      fc.constantFrom<CoreFamily>('plain', 'asymmetric').chain((family) => anyBall(family, 0.01)),
      build,
      within(0, 0.0045),
      within(0, 80),
      within(0, 80),
      (wanted, of, thicker, denser, heavier) => {
        const { coverThickness, coverDensity, lightestFiller } = of(wanted);
        if (misfitOfBuild(wanted, { coverThickness, coverDensity, lightestFiller }) === null) return;
        spoken += 1;
        const worse = {
          coverThickness: coverThickness + thicker,
          coverDensity: coverDensity + denser,
          lightestFiller: lightestFiller + heavier,
        };
        expect(misfitOfBuild(wanted, worse)).not.toBeNull();
      },
    ),
    { numRuns: 20_000 },
  );
  expect(spoken).toBeGreaterThan(2000);
});

test.each<CoreFamily>(['plain', 'lobed', 'asymmetric'])(
  'misfitOfBuild: a build it speaks against gets no %s core from any shape or filler',
  (family) => {
    let spoken = 0;
    fc.assert(
      fc.property(anyBall(family), start(family), within(0, 1), (wanted, at, fillerShare) => {
        if (misfitOfBuild(wanted, at(wanted)) === null) return;
        spoken += 1;
        expect(solveCore(wanted, at(wanted), fillerShare).kind).toBe('misfit');
      }),
      { numRuns: 1000 },
    );
    expect(spoken).toBeGreaterThan(100);
  },
);

test('solveCore: a ball whose differential exceeds what any shape stretches to is a misfit, not a hang', () => {
  const wanted = publishedBall('plain', 15, 2.5, 0.6);
  const core = startingShape('plain', Array(SHAPE_DIMENSIONS).fill(0.5));
  const solved = solveCore(wanted, { ...MIDDLE, core }, 0.5);
  expect(solved.kind).toBe('misfit');
});

test('solveCore: the filler grows with its share, and with it the core gets smaller and denser', () =>
  fc.assert(
    fc.property(published('lobed'), start('lobed'), (wanted, at) => {
      const bodies = [0, 0.5, 1].flatMap((share) => {
        const solved = solveCore(wanted, at(wanted), share);
        return solved.kind === 'fits' ? [solved.body] : [];
      });
      for (let i = 1; i < bodies.length; i++) {
        const [lighter, heavier] = [bodies[i - 1], bodies[i]];
        if (heavier.fillerDensity < lighter.fillerDensity + 1e-3) continue; // the only one that works
        expect(heavier.fillerDensity).toBeGreaterThan(lighter.fillerDensity);
        expect(heavier.fillerDensity + heavier.core[0].excess).toBeGreaterThan(
          lighter.fillerDensity + lighter.core[0].excess,
        );
        expect(heavier.core[0].A[0][0]).toBeLessThan(lighter.core[0].A[0][0]);
      }
    }),
  ));

test.each<CoreFamily>(['plain', 'lobed', 'asymmetric'])(
  'solveCore: a %s core is the one Newton finds on the eigenvalues (another method)',
  (family) => {
    let met = 0;
    fc.assert(
      fc.property(published(family), start(family), within(0, 1), (wanted, at, fillerShare) => {
        const start = at(wanted);
        const solved = solveCore(wanted, start, fillerShare);
        if (solved.kind === 'misfit') return;
        // Newton keeps the volume and finds the filler: give it the volume found here
        const { core } = solved.body;
        const size = Math.cbrt(determinant(core[0].A) / determinant(start.core[0].A));
        const newton = newtonCore(wanted, { ...start, core: start.core.map((part) => enlarged(part, size)) });
        if (newton.kind === 'misfit') return;
        met += 1;
        expectNear(newton.body.fillerDensity, solved.body.fillerDensity, 1e-4);
        newton.body.core.forEach((part, i) => {
          expectNear(part.A, core[i].A, 1e-9);
          expectNear(part.c, core[i].c, 1e-9);
          expectNear(part.excess / core[i].excess, 1, 1e-7);
        });
      }),
      { numRuns: 300 },
    );
    expect(met).toBeGreaterThan(20);
  },
);

const enlarged = (part: Part, size: number): Part => stretchPart(part, [size, size, size], [0, 0, 0]);

test('startingShape: lobed cores have equal lateral moments, asymmetric ones do not', () =>
  fc.assert(
    fc.property(shape, (u) => {
      const spread = (family: CoreFamily): number => {
        const core = startingShape(family, u);
        const { second } = bodyMoments({ ...MIDDLE, radius: RADIUS, fillerDensity: 900, core });
        return Math.abs(second[0][0] - second[1][1]) / second[0][0];
      };
      expect(spread('plain')).toBeLessThan(1e-13);
      expect(spread('lobed')).toBeLessThan(1e-13);
      expect(spread('asymmetric')).toBeGreaterThan(1e-5);
    }),
  ));

describe('solveCore: symmetric balls with hardly any differential', () => {
  const hardly = fc
    .tuple(fc.constantFrom<CoreFamily>('plain', 'lobed'), within(0, 0.005), within(0, 5), within(0, 4))
    .map(
      ([family, differential, pinToCgIn, topOz]): PublishedNumbers => ({
        ...publishedBall(family, 15, 2.62, differential),
        pinToCg: from(pinToCgIn, INCH) / RADIUS,
        topMoment: from(topOz, OUNCE) * RADIUS,
      }),
    );

  test('have their numbers and their CG mark, and no intermediate differential, whatever the top weight', () => {
    let fits = 0;
    fc.assert(
      fc.property(hardly, shape, within(0, 1), (wanted, u, fillerShare) => {
        const core = startingShape(wanted.family, u);
        const solved = solveCore(wanted, { ...MIDDLE, core }, fillerShare);
        if (solved.kind === 'misfit') return;
        fits += 1;
        const whole = bodyMoments(solved.body);
        const { lowRg, differential, intermediateDifferential } = inertiaNumbers(fromMoments(whole));
        expectNear(to(lowRg, INCH), 2.62, 1e-9);
        expectNear(to(differential, INCH), to(wanted.differential, INCH), 1e-9);
        expectNear(to(intermediateDifferential, INCH), 0, 1e-9);
        expectNear(Math.hypot(...whole.first), wanted.topMoment, 1e-15);
        if (wanted.topMoment > 1e-3) expectNear(arcAngle(unit(whole.first), [0, 0, 1]), wanted.pinToCg, 1e-9);
      }),
      { numRuns: 500 },
    );
    expect(fits).toBeGreaterThan(100);
  });
});
