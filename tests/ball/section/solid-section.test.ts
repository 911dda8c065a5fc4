import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalOf, seenOn } from '../../../src/ball/section/section-plane.js';
import { solidSection } from '../../../src/ball/section/solid-section.js';
import { type Solid, solidMoments } from '../../../src/ball/solid/layered-core.js';
import type { UnitShape } from '../../../src/ball/solid/part.js';
import { diagonal, type Mat3, mulMat } from '../../../src/math/mat3.js';
import { isInside } from '../../../src/math/polygon.js';
import { addScaled, dot, rotateAbout, unit, type Vec3, ZERO } from '../../../src/math/vec3.js';
import { areaOf, firstMomentsOf } from '../../oracles/loop-moments.js';
import { planeAcross } from '../../support/plane-across.js';

const solid = (shape: UnitShape, half: Vec3 = [1, 1, 1], c: Vec3 = ZERO): Solid => ({
  shape,
  A: diagonal(half),
  c,
});

/** What rounding leaves of an outline of straight pieces, as a share. */
const STRAIGHT = 1e-12;

/** What straight pieces between 240 directions leave out of an outline at most, as a share: a circle loses 1.2e-4, round ends far off more. */
const ROUND = 5e-4;

describe('solidSection: areas', () => {
  const lean = 0.4; // of the plane's normal from the solid's axis, rad
  const leaning: Vec3 = [Math.sin(lean), 0, Math.cos(lean)];
  test.each([
    {
      name: 'ball off its middle',
      of: solid({ kind: 'ball' }),
      across: [1, 2, 3],
      at: 0.6,
      area: Math.PI * (1 - 0.36),
      source: 'π(R² − d²)',
    },
    {
      name: 'ellipsoid through its centre, by its axes',
      of: solid({ kind: 'ball' }, [2, 3, 5]),
      across: [0, 1, 0],
      at: 0,
      area: Math.PI * 2 * 5,
      source: 'π a c',
    },
    {
      name: 'ellipsoid, askew',
      of: solid({ kind: 'ball' }, [2, 3, 5]),
      across: [1, 1, 1],
      at: 1,
      // section of an ellipsoid by n·p = d: π abc (1 − d²/h²)/h with h² = Σ (n_i a_i)²
      area: (Math.PI * 30 * (1 - 1 / ((4 + 9 + 25) / 3))) / Math.sqrt((4 + 9 + 25) / 3),
      source: 'π abc (1 − d²/h²)/h',
    },
    {
      name: 'cylinder along its axis',
      of: solid({ kind: 'cylinder' }, [1, 1, 3]),
      across: [1, 0, 0],
      at: 0.5,
      area: 6 * 2 * Math.sqrt(0.75),
      source: 'height × chord',
      isStraight: true,
    },
    {
      name: 'cylinder, leaning, clear of its ends',
      of: solid({ kind: 'cylinder' }, [1, 1, 3]),
      across: leaning,
      at: 0,
      area: Math.PI / Math.cos(lean),
      source: 'π r²/cos',
    },
    {
      name: 'cone through its axis',
      of: solid({ kind: 'cone', top: 0.25 }, [2, 2, 3]),
      across: [0, 1, 0],
      at: 0,
      area: 6 * (2 + 0.5),
      source: 'trapezium',
      isStraight: true,
    },
    {
      name: 'cone across',
      of: solid({ kind: 'cone', top: 0 }, [2, 2, 3]),
      across: [0, 0, 1],
      at: 0,
      area: Math.PI,
      source: 'π (r/2)² halfway up',
    },
    {
      name: 'capsule along its axis',
      of: solid({ kind: 'capsule', half: 2 }),
      across: [0, 1, 0],
      at: 0,
      area: 8 + Math.PI,
      source: 'rectangle and two half circles',
    },
    {
      name: 'capsule through a round end',
      of: solid({ kind: 'capsule', half: 2 }),
      across: [0, 0, 1],
      at: 2.6,
      area: Math.PI * 0.64,
      source: 'π(r² − d²)',
    },
    {
      name: 'box across a corner',
      of: solid({ kind: 'box' }),
      across: [1, 1, 1],
      at: 0,
      area: 3 * Math.sqrt(3),
      source: 'hexagon of side √2',
      isStraight: true,
    },
    {
      name: 'box along its sides',
      of: solid({ kind: 'box' }, [1, 2, 3], [5, 0, 0]),
      across: [1, 0, 0],
      at: 5.5,
      area: 24,
      source: '4 × 6',
      isStraight: true,
    },
    {
      name: 'box across a corner, far aside of the plane’s middle',
      of: solid({ kind: 'box' }, [1, 1, 1], [9, -4, -5]),
      across: [1, 1, 1],
      at: 0,
      area: 3 * Math.sqrt(3),
      source: 'hexagon of side √2',
      isStraight: true,
    },
  ] as const)('$name ($source)', (row) => {
    const { of, across, at, area } = row;
    const got = areaOf(solidSection(of, planeAcross(across as unknown as Vec3, at)));
    expect(got).toBeLessThanOrEqual(area * (1 + 1e-12));
    expect(got).toBeGreaterThanOrEqual(area * (1 - ('isStraight' in row ? STRAIGHT : ROUND)));
  });

  test('the corners where a plane meets the rims of a cone are of its outline: half chords √(r² − d²) at either end', () => {
    const cone = solid({ kind: 'cone', top: 0.25 }, [2, 2, 3], [0, 0, 1]);
    const plane = planeAcross([0.6, 0.8, 0], 0.3);
    const [loop] = solidSection(cone, plane);
    for (const [radius, z] of [
      [2, -2],
      [0.5, 4],
    ] as const)
      for (const side of [1, -1]) {
        const aside = side * Math.sqrt(radius ** 2 - 0.3 ** 2);
        const corner: Vec3 = [0.6 * 0.3 - 0.8 * aside, 0.8 * 0.3 + 0.6 * aside, z];
        const [u, v] = seenOn(plane, corner);
        const off = Math.min(...loop!.map((place) => Math.hypot(place[0] - u, place[1] - v)));
        expect(off).toBeLessThan(1e-12);
      }
  });

  test('a plane that meets one end of a leaning cylinder: the two corners there, and no more corners than directions', () => {
    const cylinder = solid({ kind: 'cylinder' });
    const plane = planeAcross([1, 0, 1], 1 / Math.SQRT2); // x + z = 1 meets the upper rim at x = 0, y = ±1
    const [loop] = solidSection(cylinder, plane);
    expect(loop!.length).toBe(240 + 2);
    for (const y of [1, -1]) {
      const [u, v] = seenOn(plane, [0, y, 1]);
      expect(Math.min(...loop!.map((place) => Math.hypot(place[0] - u, place[1] - v)))).toBeLessThan(1e-12);
    }
  });

  test('a plane that passes by cuts nothing', () => {
    for (const kind of ['ball', 'cylinder', 'box'] as const)
      expect(solidSection(solid({ kind }), planeAcross([1, 2, 3], 1.8))).toEqual([]);
  });
});

const shapes = fc.oneof(
  fc.constantFrom<UnitShape>({ kind: 'ball' }, { kind: 'cylinder' }, { kind: 'box' }),
  fc.double({ min: 0, max: 1.5, noNaN: true }).map((top): UnitShape => ({ kind: 'cone', top })),
  fc.double({ min: 0, max: 2, noNaN: true }).map((half): UnitShape => ({ kind: 'capsule', half })),
);
const coordinate = fc.double({ min: -1, max: 1, noNaN: true });
const direction = fc
  .tuple(coordinate, coordinate, coordinate)
  .filter((v) => Math.hypot(...v) > 0.2)
  .map((v) => unit(v));
const half = fc.double({ min: 0.3, max: 2, noNaN: true });
const solids = fc
  .record({
    shape: shapes,
    half: fc.tuple(half, half, half),
    axis: direction,
    angle: coordinate,
    c: fc.tuple(coordinate, coordinate, coordinate),
  })
  .map(({ shape, half: h, axis, angle, c }): Solid => {
    const turned = (v: Vec3): Vec3 => rotateAbout(v, axis, 3 * angle);
    const [x, y, z] = [turned([1, 0, 0]), turned([0, 1, 0]), turned([0, 0, 1])];
    const R: Mat3 = [
      [x[0], y[0], z[0]],
      [x[1], y[1], z[1]],
      [x[2], y[2], z[2]],
    ];
    return { shape, A: mulMat(R, diagonal(h)), c };
  });

describe('solidSection: any solid, any plane', () => {
  test('areas add up to the volume, and their first moments to its own (Cavalieri)', () => {
    fc.assert(
      fc.property(solids, direction, (of, across) => {
        const { mass: volume, first } = solidMoments(of);
        const steps = 400;
        const reach = 8;
        const step = (2 * reach) / steps;
        let [v, fu, fv, fn, most] = [0, 0, 0, 0, 0];
        for (let i = 0; i < steps; i += 1) {
          const at = -reach + (i + 0.5) * step;
          const loops = solidSection(of, planeAcross(across, at));
          const area = areaOf(loops);
          const [u, w] = firstMomentsOf(loops);
          most = Math.max(most, area);
          v += step * area;
          fu += step * u;
          fv += step * w;
          fn += step * area * at;
        }
        const plane = planeAcross(across, 0);
        // a face along the planes may begin anywhere in a step, and outlines leave out a little
        const slack = step * most + 1e-3 * volume;
        expect(Math.abs(v - volume)).toBeLessThan(slack);
        const wanted = [dot(first, plane.u_C), dot(first, plane.v_C), dot(first, normalOf(plane))];
        for (const [i, f] of [fu, fv, fn].entries())
          expect(Math.abs(f - wanted[i])).toBeLessThan(reach * slack);
      }),
      { numRuns: 40, seed: 1 },
    );
  });

  test('an outline runs counterclockwise, and a point halfway between two of its corners and its middle lies inside', () => {
    fc.assert(
      fc.property(solids, direction, (of, across) => {
        const plane = planeAcross(across, 0.1);
        for (const loop of solidSection(of, plane)) {
          expect(areaOf([loop])).toBeGreaterThanOrEqual(0);
          if (areaOf([loop]) < 0.01) continue;
          const [u, v] = firstMomentsOf([loop]).map((f) => f / areaOf([loop]));
          expect(isInside([loop], [u, v])).toBe(true);
          const centroid = addScaled(addScaled(plane.origin_C, u, plane.u_C), v, plane.v_C);
          expect(seenOn(plane, centroid)).toEqual([expect.closeTo(u, 9), expect.closeTo(v, 9)]);
        }
      }),
      { numRuns: 200, seed: 1 },
    );
  });
});
