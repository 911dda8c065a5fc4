import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { GREATEST_DENSITY, isUnusual, UNUSUAL_BUILDS, USUAL_BUILDS } from '../../../src/ball/core/build.js';
import { SHAPE_DIMENSIONS, startingShape } from '../../../src/ball/core/core-families.js';
import { differ } from '../../../src/ball/core/differ.js';
import { buildDrawer, misfitOfAll } from '../../../src/ball/core/draw-build.js';
import { fitEnsemble } from '../../../src/ball/core/ensemble.js';
import { misfitOfBuild, solveCore } from '../../../src/ball/core/solve-core.js';
import { bodyMoments } from '../../../src/ball/drill/ball-body.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { fromMoments } from '../../../src/ball/mass/mass-properties.js';
import { partReach } from '../../../src/ball/solid/support.js';
import { arcAngle } from '../../../src/math/sphere.js';
import { unit } from '../../../src/math/vec3.js';
import type { CoreFamily } from '../../../src/records/schemas/core-families.js';
import { within } from '../../support/arbitraries.js';
import { publishedBall, USUAL_BALLS } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';

/* What `solve-core.test.ts`, `build.test.ts` and `ensemble.test.ts` ask of thousands of cores, of a few: quick enough for every mutant. */

const LB = 0.45359237;
const share = within(0, 0.999);
const traits = fc.array(share, { minLength: SHAPE_DIMENSIONS, maxLength: SHAPE_DIMENSIONS });
const MIDDLE = { coverThickness: 0.02, coverDensity: 1170, lightestFiller: 600 };

describe('builds', () => {
  const at = (thickness: number, density: number, filler = 0) => ({ thickness, density, filler });

  test('usual: from 19 to 23.5 mm, 1.15 to 1.23 g/cc, most of them thin and light; our own ends', () => {
    expect(USUAL_BUILDS.at(at(0, 0), 7)).toEqual({
      coverThickness: 0.019,
      coverDensity: 1150,
      lightestFiller: 600,
    });
    const most = USUAL_BUILDS.at(at(1, 1), 7);
    expectNear([most.coverThickness, most.coverDensity], [0.0235, 1230], 1e-12);
    const middle = USUAL_BUILDS.at(at(0.5, 0.5), 7);
    expectNear([middle.coverThickness, middle.coverDensity], [0.019 + 0.0045 / 4, 1150 + 20], 1e-12);
    expect(USUAL_BUILDS.share + UNUSUAL_BUILDS.share).toBe(1);
    expectNear(UNUSUAL_BUILDS.share, 0.1, 1e-15);
  });

  test('unusual: from 15.5 to 25 mm, 1.1 to 1.4 g/cc, filler down to three quarters of the usual least', () => {
    expectNear(Object.values(UNUSUAL_BUILDS.at(at(0, 0, 0), 7)), [0.0155, 1100, 450], 1e-12);
    expectNear(Object.values(UNUSUAL_BUILDS.at(at(1, 1, 1), 7)), [0.025, 1400, 600], 1e-12);
    expectNear(UNUSUAL_BUILDS.at(at(0, 0, 0.5), 7).lightestFiller, 600 * (1 - 0.25 / 8), 1e-12);
  });

  test.each([
    [7.2, 600],
    [6.35, 600],
    [5.35, 430],
    [4.9, 353.5],
    [4, 350],
  ])('the lightest usual filler of a ball of %s kg is %s kg/m³', (mass, filler) =>
    expectNear(USUAL_BUILDS.at(at(0, 0), mass).lightestFiller, filler, 1e-9),
  );

  test.each([
    ['the thinnest, lightest', 0.019, 1150, 600, false],
    ['the heaviest', 0.019, 1230, 600, false],
    ['a thinner cover', 0.0189, 1200, 700, true],
    ['a lighter cover', 0.02, 1149, 700, true],
    ['a heavier cover', 0.02, 1231, 700, true],
    ['a lighter filler', 0.02, 1200, 599, true],
    ['a thick cover', 0.025, 1200, 1300, false],
  ])('isUnusual: %s', (_, coverThickness, coverDensity, fillerDensity, is) =>
    expect(isUnusual({ coverThickness, coverDensity, fillerDensity }, 7)).toBe(is),
  );
});

describe('buildDrawer', () => {
  test.each([...USUAL_BALLS, publishedBall('lobed', 14, 2.52, 0.05), publishedBall('plain', 15, 2.47, 0.05)])(
    'draws the usual builds and the unusual ones each as often as they are left, within what may work with a $family ball',
    (wanted) => {
      const draw = buildDrawer(wanted);
      const drawn = Array.from({ length: 1500 }, (_, n) =>
        draw([1, 2, 3, 4].map((i) => (0.5 + n * 1.1673039782614187 ** -i) % 1)),
      );
      const works = drawn.filter((build) => misfitOfBuild(wanted, build) === null).length;
      expect(works / drawn.length).toBeGreaterThan(0.2);
      const plain = Array.from({ length: 1500 }, (_, n) => {
        const [pick, thickness, density, filler] = [1, 2, 3, 4].map(
          (i) => (0.5 + n * 1.1673039782614187 ** -i) % 1,
        );
        const kind = pick! < USUAL_BUILDS.share ? USUAL_BUILDS : UNUSUAL_BUILDS;
        return kind.at({ thickness: thickness!, density: density!, filler: filler! }, wanted.mass);
      }).filter((build) => misfitOfBuild(wanted, build) === null);
      expect(works).toBeGreaterThanOrEqual(plain.length);
      const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b) / values.length;
      const ours = drawn.filter((build) => misfitOfBuild(wanted, build) === null);
      if (plain.length < 100) return;
      for (const trait of ['coverThickness', 'coverDensity', 'lightestFiller'] as const) {
        const [a, b] = [ours, plain].map((builds) => builds.map((build) => build[trait])) as [
          number[],
          number[],
        ];
        const spread = Math.sqrt(mean(b.map((x) => (x - mean(b)) ** 2)) / b.length);
        expect(Math.abs(mean(a) - mean(b))).toBeLessThanOrEqual(4 * spread + 1e-9);
      }
    },
  );
});

describe.each<CoreFamily>(['plain', 'lobed', 'asymmetric'])('solveCore: a few %s cores', (family) => {
  test('have all the published numbers, the top weight, room, densities that are built and a low axis at the pin', () => {
    let fits = 0;
    fc.assert(
      fc.property(
        traits,
        within(0, 1),
        within(0.02, 0.055),
        within(0.1, 0.5),
        (u, fillerShare, differential, part) => {
          const inches = differential;
          const wanted = publishedBall(family, 15, 2.54, inches, family === 'asymmetric' ? part * inches : 0);
          const solved = solveCore(wanted, { ...MIDDLE, core: startingShape(family, u) }, fillerShare);
          if (solved.kind === 'misfit') return;
          fits += 1;
          const { body } = solved;
          const moments = bodyMoments(body);
          const numbers = inertiaNumbers(fromMoments(moments));
          expectNear(numbers.mass, wanted.mass, 1e-12);
          expectNear([numbers.lowRg, numbers.differential], [wanted.lowRg, wanted.differential], 1e-12);
          if (family === 'asymmetric')
            expectNear(numbers.intermediateDifferential, wanted.intermediateDifferential, 1e-12);
          expectNear(Math.hypot(...moments.first), wanted.topMoment, 1e-15);
          expectNear(arcAngle(unit(moments.first), [0, 0, 1]), wanted.pinToCg, 1e-11);
          expect(Math.max(...body.core.map(partReach))).toBeLessThan(body.radius - body.coverThickness);
          expect(body.fillerDensity).toBeGreaterThanOrEqual(MIDDLE.lightestFiller);
          for (const { excess } of body.core)
            expect(body.fillerDensity + excess).toBeLessThanOrEqual(GREATEST_DENSITY * (1 + 1e-9));
          expect(Math.abs(numbers.lowAxis_B[2])).toBeGreaterThan(Math.cos((8 * Math.PI) / 180));
          expect(body).toMatchObject({ coverThickness: 0.02, coverDensity: 1170 });
        },
      ),
      { numRuns: 60 },
    );
    expect(fits).toBeGreaterThan(5);
  });

  test('the filler’s share runs from a core as large as it may be to one as dense', () => {
    const wanted = publishedBall(family, 15, 2.54, 0.045, family === 'asymmetric' ? 0.015 : 0);
    const core = startingShape(family, [0.3, 0.5, 0.4, 0.5, 0.5, 0.5, 0.2]);
    const at = (fillerShare: number) => {
      const solved = solveCore(wanted, { ...MIDDLE, core }, fillerShare);
      if (solved.kind === 'misfit') throw new Error(solved.why);
      const { body } = solved;
      return {
        filler: body.fillerDensity,
        reach: Math.max(...body.core.map(partReach)),
        densest: Math.max(...body.core.map(({ excess }) => body.fillerDensity + excess)),
      };
    };
    const [light, middle, heavy] = [at(0), at(0.5), at(1)];
    expectNear(middle.filler, (light.filler + heavy.filler) / 2, 1e-9);
    expect(light.reach).toBeGreaterThan(heavy.reach);
    expect(light.densest).toBeLessThan(heavy.densest);
    if (heavy.filler < 1399) expectNear(heavy.densest, GREATEST_DENSITY, 0.1);
  });
});

describe('misfits', () => {
  test.each([
    ['plain', 8, 2.7, 0.02, 0, 'filler-too-light'],
    ['plain', 15, 2.44, 0.05, 0, 'core-too-dense'],
    ['plain', 15, 2.54, 0.006, 12, 'low-axis-off-pin'],
  ] as const)(
    '%s, %s lb, RG %s, differential %s, %s oz of top weight: %6$s',
    (family, lb, rg, differential, topOz, why) => {
      const wanted = publishedBall(family, lb, rg, differential);
      const top = topOz === 0 ? {} : { topMoment: wanted.topMoment * (topOz / 3) };
      expect(misfitOfBuild({ ...wanted, ...top }, MIDDLE)).toBe(why);
    },
  );

  test('a core that only just fits the densest filler is too big for a ball without room', () => {
    const wanted = publishedBall('plain', 15, 2.54, 0.045);
    const core = startingShape('plain', [0.3, 0.5, 0.4, 0.5, 0.5, 0.5, 0.2]);
    expect(solveCore(wanted, { ...MIDDLE, coverThickness: 0.05, coverDensity: 800, core }, 0.5).kind).toBe(
      'misfit',
    );
  });
});

describe('fitEnsemble', () => {
  test.each(USUAL_BALLS)(
    'eight $family cores that all differ, the same again, and fewer are the first of more',
    (wanted) => {
      const { bodies, tried, misfits } = fitEnsemble(wanted, 8);
      expect(bodies).toHaveLength(8);
      for (const [i, body] of bodies.entries())
        for (const other of bodies.slice(0, i)) expect(differ(body, other)).toBe(true);
      const failed = Object.values(misfits).reduce((sum, count) => sum + count, 0);
      expect(tried).toBeGreaterThanOrEqual(bodies.length + failed);
      const again = fitEnsemble(wanted, 3);
      expect(again.bodies).toEqual(bodies.slice(0, 3));
      const fillers = bodies.map(({ fillerDensity }) => fillerDensity);
      expect(Math.max(...fillers) - Math.min(...fillers)).toBeGreaterThan(20);
    },
  );

  test('no core gives 14 lb an RG of 2.4: it says why, after one try', () => {
    const wanted = publishedBall('plain', 14, 2.4, 0.03);
    expect(misfitOfAll(wanted)).not.toBeNull();
    const { bodies, tried, misfits } = fitEnsemble(wanted, 4);
    expect([bodies, tried]).toEqual([[], 1]);
    expect(misfits).toEqual({ [misfitOfAll(wanted) as string]: 1 });
    expect(misfitOfAll(publishedBall('plain', 15, 2.54, 0.045))).toBeNull();
  });

  test('it gives up after as many tries as it may take', () => {
    const { tried, bodies } = fitEnsemble(USUAL_BALLS[0]!, 1000, 20);
    expect(tried).toBe(20);
    expect(bodies.length).toBeLessThan(20);
    expect(bodies.length).toBeGreaterThan(0);
  });

  test('a ball of 14 lb with a low RG gets unusual builds', () => {
    const wanted = { ...publishedBall('plain', 14, 2.5, 0.05) };
    expectNear(wanted.mass, 14 * LB, 1e-12);
    const { bodies } = fitEnsemble(wanted, 8);
    expect(bodies.filter((body) => isUnusual(body, wanted.mass)).length).toBeGreaterThan(4);
  });
});
