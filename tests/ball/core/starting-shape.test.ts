import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SHAPE_DIMENSIONS, startingShape } from '../../../src/ball/core/core-families.js';
import { differ } from '../../../src/ball/core/differ.js';
import { type BallBody, coreMoments } from '../../../src/ball/drill/ball-body.js';
import { type Part, partMoments } from '../../../src/ball/solid/part.js';
import { supportPoint } from '../../../src/ball/solid/support.js';
import { determinant } from '../../../src/math/mat3.js';
import { partContains } from '../../oracles/part-contains.js';
import { pointWithin, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';

const R = 0.045; // of the main part
const traits = fc.array(within(0, 0.999), { minLength: SHAPE_DIMENSIONS, maxLength: SHAPE_DIMENSIONS });
const at = (value: number, ...others: readonly (readonly [number, number])[]): number[] => {
  const u = Array.from({ length: SHAPE_DIMENSIONS }, () => value);
  for (const [i, x] of others) u[i] = x;
  return u;
};
/** Lowest and highest point of a part along an axis of C, in radii of the main part. */
const span = (part: Part, axis: 0 | 1 | 2): [number, number] => {
  const u = [0, 0, 0].map((_, i) => (i === axis ? 1 : 0)) as unknown as [number, number, number];
  const down = u.map((x) => -x) as unknown as [number, number, number];
  return [supportPoint(part, down)[axis] / R, supportPoint(part, u)[axis] / R];
};
/** Half axes in radii of the main part: lengths of the columns of its map. */
const half = ({ A }: Part): number[] => [0, 1, 2].map((j) => Math.hypot(A[0][j], A[1][j], A[2][j]) / R);

describe('startingShape', () => {
  test('parts of a core keep clear of one another: no point lies well within two', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('plain' as const, 'lobed' as const, 'asymmetric' as const),
        traits,
        fc.array(pointWithin(0.12), { minLength: 200, maxLength: 200 }),
        (family, u, points) => {
          const core = startingShape(family, u).map((part) => ({
            ...part,
            A: part.A.map((row) => row.map((x) => x * (1 - 1e-9))) as unknown as Part['A'],
          }));
          for (const p of points)
            expect(core.filter((part) => partContains(part, p)).length).toBeLessThanOrEqual(1);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('plain: foot, flange and head stand on one another, with the flange around the middle', () => {
    for (const [u, foot, flange, head] of [
      [at(0), 0.3, 0.02, 0.3],
      [at(1), 0.8, 0.35, 0.8],
      [at(0, [0, 1]), 0.8, 0.02, 0.3],
      [at(0, [1, 1]), 0.3, 0.02, 0.8],
      [at(0, [2, 1]), 0.3, 0.35, 0.3],
    ] as const) {
      const [low, middle, high] = startingShape('plain', u) as [Part, Part, Part];
      expectNear(span(low, 2), [-flange - 2 * foot, -flange], 1e-12);
      expectNear(span(middle, 2), [-flange, flange], 1e-12);
      expectNear(span(high, 2), [flange, flange + 2 * head], 1e-12);
    }
  });

  test('plain: foot and head are widest at the flange; ends of their cones, width and density of the flange', () => {
    for (const [u, lowTop, highTop, width, share] of [
      [at(0), 0.55, 0.45, 1, 0.5],
      [at(1), 0.95, 0.95, 1.3, 1],
      [at(0, [3, 1]), 0.95, 0.45, 1, 0.5],
      [at(0, [4, 1]), 0.55, 0.95, 1, 0.5],
      [at(0, [5, 1]), 0.55, 0.45, 1, 1],
      [at(0, [6, 1]), 0.55, 0.45, 1.3, 0.5],
    ] as const) {
      const [low, middle, high] = startingShape('plain', u) as [Part, Part, Part];
      expect([low, middle, high].map(({ excess }) => excess)).toEqual([1500, 1500 * share, 1500]);
      expectNear(span(middle, 0), [-width, width], 1e-12);
      for (const [part, top] of [
        [low, lowTop],
        [high, highTop],
      ] as const) {
        const heightOf = half(part)[2]! * 2 * R;
        const volume = (Math.PI * heightOf * R * R * (1 + top + top * top)) / 3; // frustum, any handbook
        expectNear(partMoments(part).mass / part.excess / volume, 1, 1e-12);
      }
      const centres = [low, high].map(
        (part) => partMoments(part).first[2] / partMoments(part).mass / part.A[2][2],
      );
      expect(low.A[2][2]).toBeLessThan(0);
      expect(centres.every(Number.isFinite)).toBe(true);
      // wide ends toward the flange: centres of mass lie nearer to it than the middles of their heights
      expect(partMoments(high).first[2] / partMoments(high).mass).toBeLessThan(high.c[2]);
      expect(partMoments(low).first[2] / partMoments(low).mass).toBeGreaterThan(low.c[2]);
      expect(determinant(low.A)).toBeGreaterThan(0); // turned over, not mirrored
    }
  });

  test.each([3, 4, 5])(
    'lobed: %i noses evenly spread make lateral moments equal, about any axis across',
    (count) => {
      fc.assert(
        fc.property(traits, within(-3, 3), (u, fromMarker) => {
          const core = startingShape('lobed', u, { count, fromMarker });
          expect(core).toHaveLength(1 + count);
          const { mass, first, second } = coreMoments(core);
          const size = mass * R * R;
          expectNear([second[0][0] / size, second[0][1] / size], [second[1][1] / size, 0], 1e-12);
          expectNear([first[0], first[1]], [0, 0], 1e-14);
          // the first nose stands that far from the marker, which lies toward x: clockwise from outside, at z > 0
          const [x, y] = core[1]!.c;
          expectNear(
            [x / Math.hypot(x, y), y / Math.hypot(x, y)],
            [Math.cos(fromMarker), -Math.sin(fromMarker)],
            1e-12,
          );
        }),
        { numRuns: 30 },
      );
    },
  );

  test.each([
    ['lobed', at(0), [0.3, 0.27, 0.4], 0.8, 'ball'],
    ['lobed', at(1), [0.55, 0.42, 0.75], 1.1, 'box'],
    ['lobed', at(0, [2, 1]), [0.55, 0.27, 0.4], 0.8, 'ball'],
    ['lobed', at(0, [3, 1]), [0.3, 0.42, 0.4], 0.8, 'ball'],
    ['lobed', at(0, [4, 1]), [0.3, 0.27, 0.75], 0.8, 'ball'],
    ['lobed', at(0, [5, 1]), [0.3, 0.27, 0.4], 1.1, 'ball'],
    ['lobed', at(0, [6, 0.41]), [0.3, 0.27, 0.4], 0.8, 'box'],
    ['asymmetric', at(0), [0.4, 0.2, 0.4], 0.5, 'ball'],
    ['asymmetric', at(1), [0.8, 0.45, 0.9], 1, 'box'],
    ['asymmetric', at(0, [2, 1]), [0.4, 0.45, 0.4], 0.5, 'ball'],
    ['asymmetric', at(0, [3, 1]), [0.8, 0.2, 0.4], 0.5, 'ball'],
    ['asymmetric', at(0, [4, 1]), [0.4, 0.2, 0.9], 0.5, 'ball'],
    ['asymmetric', at(0, [5, 1]), [0.4, 0.2, 0.4], 1, 'ball'],
    ['asymmetric', at(0, [6, 0.41]), [0.4, 0.2, 0.4], 0.5, 'box'],
  ] as const)(
    '%s: what traits %j make of a nose or block, which touches the trunk',
    (family, u, halves, share, kind) => {
      const [trunk, first] = startingShape(family, u) as [Part, Part];
      expect(first.shape.kind).toBe(kind);
      expectNear(half(first), halves, 1e-12);
      expectNear(first.excess / trunk.excess, share, 1e-12);
      const axis = family === 'lobed' ? 0 : 1;
      expectNear(span(first, axis), [1, 1 + 2 * halves[axis]!], 1e-12);
    },
  );

  test('asymmetric: two blocks, one the mirror image of the other, off the marker’s axis', () => {
    const [, one, other] = startingShape('asymmetric', at(0.5)) as [Part, Part, Part];
    expect(one.A).toEqual(other.A);
    expectNear(one.c, [0, -other.c[1], 0], 1e-15);
    expect(one.c[1]).toBeGreaterThan(0);
  });

  test.each([
    [0, 'ball', undefined],
    [0.24, 'ball', undefined],
    [0.26, 'cylinder', undefined],
    [0.49, 'cylinder', undefined],
    [0.5, 'cone', 0.5],
    [1, 'cone', 0.95],
  ] as const)('the trunk of a lobed core at %s is a %s', (kind, shape, top) => {
    const [trunk] = startingShape('lobed', at(0, [0, kind])) as [Part];
    expect(trunk.shape.kind).toBe(shape);
    if (top !== undefined) expectNear((trunk.shape as { top: number }).top, top, 1e-12);
    expectNear(half(trunk), [1, 1, 1.1], 1e-12);
    expect(trunk).toMatchObject({ c: [0, 0, 0], excess: 1500 });
    expectNear(half(startingShape('lobed', at(0, [1, 1]))[0]!), [1, 1, 1.6], 1e-12);
  });

  test('a lobed core has four noses, one toward the marker, where nothing is said of them', () =>
    expect(startingShape('lobed', at(0.5))).toEqual(
      startingShape('lobed', at(0.5), { count: 4, fromMarker: 0 }),
    ));
});

describe('differ', () => {
  const core = startingShape('plain', at(0.5));
  const body: BallBody = {
    radius: 0.108,
    coverThickness: 0.02,
    coverDensity: 1200,
    fillerDensity: 800,
    core,
  };
  const changed = (i: number, change: (part: Part) => Part): BallBody => ({
    ...body,
    core: core.map((part, j) => (i === j ? change(part) : part)),
  });
  const rowMoved =
    (by: number) =>
    (part: Part): Part => ({
      ...part,
      A: [part.A[0], [part.A[1][0], part.A[1][1] + by, part.A[1][2]], part.A[2]],
    });

  test.each<[string, BallBody, boolean]>([
    ['nothing', body, false],
    ['1.1 mm of cover', { ...body, coverThickness: 0.0211 }, true],
    ['0.9 mm of cover', { ...body, coverThickness: 0.0191 }, false],
    ['1.1 % of the cover’s density', { ...body, coverDensity: 1200 * 1.011 }, true],
    ['0.9 % of the cover’s density', { ...body, coverDensity: 1200 * 0.991 }, false],
    ['2 % less of the filler’s density', { ...body, fillerDensity: 784 }, true],
    ['0.5 % of the filler’s density', { ...body, fillerDensity: 804 }, false],
    ['2 % of a part’s density', changed(1, (part) => ({ ...part, excess: part.excess * 1.02 })), true],
    ['0.9 % of a part’s density', changed(1, (part) => ({ ...part, excess: part.excess * 1.009 })), false],
    ['1.1 mm of a part’s place', changed(2, (part) => ({ ...part, c: [0, -0.0011, part.c[2]] })), true],
    ['0.9 mm of a part’s place', changed(2, (part) => ({ ...part, c: [0, -0.0009, part.c[2]] })), false],
    ['1.1 mm of a half axis', changed(0, rowMoved(0.0011)), true],
    ['0.9 mm of a half axis', changed(0, rowMoved(-0.0009)), false],
  ])('%s: %#', (_, other, isOther) => {
    expect(differ(body, other)).toBe(isOther);
    expect(differ(other, body)).toBe(isOther);
  });
});
