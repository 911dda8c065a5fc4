import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossMesh } from '../../../src/ball/mesh/cross-mesh.js';
import { vertexAt } from '../../../src/ball/mesh/mesh.js';
import { meshMoments } from '../../../src/ball/mesh/mesh-moments.js';
import { type MeshTree, meshTree } from '../../../src/ball/mesh/mesh-tree.js';
import type { UnitShape } from '../../../src/ball/solid/part.js';
import { crossShape, type Interval } from '../../../src/ball/solid/ray-interval.js';
import { mulVec, transpose } from '../../../src/math/mat3.js';
import { add, addScaled, cross, norm, scale, sub, unit, type Vec3 } from '../../../src/math/vec3.js';
import { windingNumber } from '../../oracles/winding-number.js';
import { direction, pointWithin, rotation, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';
import { box, type Facet, insideOut, lathe, mapped, moved, sphere } from '../../support/meshes/make-stl.js';
import { treeOf } from '../../support/meshes/meshes.js';

/** A knobby, not convex one: radius waves with the direction. */
const lumpy = mapped(sphere(1, 16), (p) => {
  const [x, y, z] = p;
  return scale(1 + 0.3 * Math.sin(5 * x) * Math.cos(4 * y) + 0.2 * Math.sin(6 * z), p);
});
/** Radius 1 at z = −1, `top` at z = 1. */
function frustum(top: number, sides: number): Facet[] {
  const profile = [
    [0, -1],
    [1, -1],
    [top, 1],
    [0, 1],
  ] as const;
  return lathe(profile, sides);
}

const solids: Record<string, readonly Facet[]> = {
  box: box([1, 1, 1]),
  'ball of 8 rings': sphere(1, 8),
  cylinder: frustum(1, 12),
  'lumpy ball': lumpy,
  'hollow ball': [...sphere(1.5, 10), ...insideOut(sphere(1, 6))],
  'two boxes': [...moved(box([0.5, 0.5, 0.5]), [-1, 0, 0]), ...moved(box([0.5, 1, 0.5]), [1, 0, 0])],
};
const trees = Object.entries(solids).map(([name, facets]) => ({ name, tree: treeOf(facets) }));
const anyTree = fc.constantFrom(...trees.map(({ tree }) => tree));
const anyPoint = pointWithin(2);

interface Crossings {
  readonly t: readonly number[];
  readonly turns: readonly number[];
}
function crossings(tree: MeshTree, a: Vec3, d: Vec3): Crossings {
  const out: number[] = [];
  const turns: number[] = [];
  const count = crossMesh(out, tree, a, d, turns);
  return { t: out.slice(0, count), turns: turns.slice(0, count) };
}

/** Lines that only chance would give: through vertices, along edges, along faces and axes. */
const awkwardLine = anyTree.chain((tree) => {
  const vertices = tree.positions.length / 3;
  const onMesh = fc.oneof(
    fc.nat(vertices - 1).map((i) => vertexAt(tree, i)),
    fc.tuple(fc.nat(tree.triangles.length - 1), fc.constantFrom(0.5, 0.25, 1 / 3)).map(([i, s]): Vec3 => {
      const p = vertexAt(tree, tree.triangles[i]);
      const q = vertexAt(tree, tree.triangles[i % 3 === 2 ? i - 2 : i + 1]);
      return addScaled(scale(1 - s, p), s, q);
    }),
  );
  const axis = fc.constantFrom<Vec3>(
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
    [0, 0, -1],
    [1, 1, 0],
    [-1, 1, 1],
    [1, -5e-324, 0], // as small as a number gets
    [1e-200, 1, -1e-170],
    [1e-9, 1e-16, -1],
  );
  return fc.oneof(
    fc.tuple(onMesh, onMesh).map(([p, q]) => ({ tree, a: p, d: sub(q, p) })),
    fc.tuple(onMesh, axis).map(([p, d]) => ({ tree, a: add(p, scale(-3, d)), d })),
    fc.tuple(onMesh, direction).map(([p, d]) => ({ tree, a: p, d })),
  );
});

describe('crossMesh: any line goes in as often as it comes out, in order', () => {
  const holds = (tree: MeshTree, a: Vec3, d: Vec3): void => {
    const { t, turns } = crossings(tree, a, d);
    expect(t.length % 2).toBe(0);
    expect(turns.reduce((sum, turn) => sum + turn, 0)).toBe(0);
    expect(t.every(Number.isFinite)).toBe(true);
    expect(t).toEqual([...t].sort((x, y) => x - y));
  };

  test('at random', () =>
    fc.assert(
      fc.property(anyTree, anyPoint, direction, (tree, a, d) => holds(tree, a, d)),
      { numRuns: 3000 },
    ));

  test('through vertices, along edges and faces', () =>
    fc.assert(
      fc.property(
        awkwardLine.filter(({ d }) => norm(d) > 0),
        ({ tree, a, d }) => holds(tree, a, d),
      ),
      { numRuns: 10_000 },
    ));

  test('within the plane of a face that leans, whose triangles so shrink to slivers of rounding', () =>
    fc.assert(
      fc.property(
        rotation,
        fc.array(fc.tuple(fc.nat(), fc.nat(), fc.nat()), { minLength: 50, maxLength: 50 }),
        (R, picks) => {
          const leaning = mapped(box([1, 0.7, 0.4]).flatMap(quartered).flatMap(quartered), (p) =>
            mulVec(R, p),
          );
          const tree = treeOf(leaning);
          const corner = (i: number): Vec3 => vertexAt(tree, tree.triangles[i % tree.triangles.length]);
          for (const [i, j, k] of picks) {
            const [p, q] = [corner(i), corner(j)];
            if (norm(sub(p, q)) > 0) holds(tree, addScaled(p, (k % 7) / 7, sub(q, p)), sub(q, p));
          }
        },
      ),
      { numRuns: 100 },
    ));

  test('by four points that lie in one plane with the line but for the last digit', () => {
    const pointNearby = fc.tuple(within(-1, 1), fc.integer({ min: -2, max: 2 }), within(-1, 1));
    const points = fc.tuple(pointNearby, pointNearby, pointNearby, pointNearby);
    fc.assert(
      fc.property(within(0.3, 1), within(0.3, 1), points, (x, y, four) => {
        const positions = Float64Array.from(
          four.flatMap(([k, digits, z]) => [k * x, k * y + digits * 2 ** -54, z]),
        );
        const triangles = Uint32Array.of(0, 1, 2, 0, 2, 3, 0, 3, 1, 1, 3, 2);
        holds(meshTree({ positions, triangles, grain: 0 }), [0, 0, 0], [0, 0, 1]);
      }),
      { numRuns: 5000 },
    );
  });

  test('on a lattice, where every other edge is met exactly', () => {
    const tree = treeOf(box([2, 2, 2]).flatMap(quartered).flatMap(quartered));
    for (let x = -5; x <= 5; x++)
      for (let y = -5; y <= 5; y++)
        for (const d of [
          [0, 0, 1],
          [0.5, 0, 1],
          [0.5, 0.5, -1],
          [1, 1, 1],
        ] as const)
          holds(tree, [x / 2, y / 2, 0], d);
  });
});

/** Each triangle cut in four at the middles of its sides. */
function quartered([a, b, c]: Facet): Facet[] {
  const [ab, bc, ca] = [scale(0.5, add(a, b)), scale(0.5, add(b, c)), scale(0.5, add(c, a))];
  return [
    [a, ab, ca],
    [ab, b, bc],
    [ca, bc, c],
    [ab, bc, ca],
  ];
}

test('crossMesh: a point is inside when the line through it has crossed an odd number of times, as its winding number says', () =>
  fc.assert(
    fc.property(anyTree, anyPoint, direction, (tree, a, d) => {
      const winding = windingNumber(tree, a);
      fc.pre(Math.abs(winding - Math.round(winding)) < 1e-6); // not on the surface
      const { t } = crossings(tree, a, d);
      const before = t.filter((x) => x < 0).length;
      expect(before % 2, `winding number ${winding}`).toBe(Math.abs(Math.round(winding)));
    }),
    { numRuns: 2000 },
  ));

test('crossMesh: the tree changes nothing: one leaf of all triangles gives the same crossings', () =>
  fc.assert(
    fc.property(
      fc.constantFrom(...trees.slice(0, 3).map(({ tree }) => tree)),
      anyPoint,
      direction,
      (tree, a, d) => {
        expect(crossings(oneLeaf(tree), a, d)).toEqual(crossings(tree, a, d));
      },
    ),
    { numRuns: 1000 },
  ));

const oneLeaf = (tree: MeshTree): MeshTree => ({
  ...tree,
  boxes: tree.boxes.slice(0, 6),
  skip: Uint32Array.of(1),
  start: Uint32Array.of(0),
  leafSize: Uint8Array.of(tree.triangles.length / 3),
});

test('crossMesh: t counts in lengths of d, and the other way along the line the crossings change places and sign', () =>
  fc.assert(
    fc.property(anyTree, anyPoint, direction, within(0.1, 10), (tree, a, d, k) => {
      const { t, turns } = crossings(tree, a, d);
      fc.pre(t.every((x, i) => i === 0 || x - t[i - 1] > 1e-6)); // rounding may swap what lies together
      const longer = crossings(tree, a, scale(-k, d));
      fc.pre(longer.t.length === t.length); // a line that grazes an edge may pass on its other side
      expectNear(longer.t, t.map((x) => -x / k).reverse(), 1e-9);
      expect(longer.turns).toEqual(turns.map((turn) => -turn).reverse());
    }),
    { numRuns: 1000 },
  ));

/** Of the faceted balls, cylinders and cones. */
const RINGS = 24;
/** No facet's middle lies deeper below the round surface than what its half angle takes, once in each direction. */
const FACET_DEPTH = 2 * (1 - Math.cos(Math.PI / (2 * RINGS)));

describe.each<{ shape: UnitShape; facets: readonly Facet[]; depth: number }>([
  { shape: { kind: 'box' }, facets: box([1, 1, 1]), depth: 0 },
  { shape: { kind: 'ball' }, facets: sphere(1, RINGS), depth: FACET_DEPTH },
  { shape: { kind: 'cylinder' }, facets: frustum(1, 2 * RINGS), depth: FACET_DEPTH },
  { shape: { kind: 'cone', top: 0.4 }, facets: frustum(0.4, 2 * RINGS), depth: FACET_DEPTH },
])('crossMesh: a turned $shape.kind of triangles', ({ shape, facets, depth }) => {
  const FLOAT32 = 2e-7;

  test('lies inside its analytic twin, and the twin made smaller by the facets’ depth inside it', () =>
    fc.assert(
      fc.property(
        rotation,
        fc.array(fc.tuple(anyPoint, direction), { minLength: 20, maxLength: 20 }),
        (R, lines) => {
          const tree = treeOf(mapped(facets, (p) => mulVec(R, p)));
          for (const [a, d] of lines) {
            const { t } = crossings(tree, a, d);
            const twin = (size: number): Interval => {
              const hit: Interval = { enter: 0, leave: 0 };
              const R_inv = transpose(R);
              crossShape(
                hit,
                shape,
                ...scale(1 / size, mulVec(R_inv, a)),
                ...scale(1 / size, mulVec(R_inv, d)),
              );
              return hit;
            };
            const outer = twin(1 + FLOAT32);
            const inner = twin(1 - depth - FLOAT32);
            expect(t.length).toBeLessThanOrEqual(2);
            if (inner.leave > inner.enter) expect(t.length).toBe(2);
            if (t.length === 0) continue;
            expect(t[0]).toBeGreaterThanOrEqual(outer.enter);
            expect(t[1]).toBeLessThanOrEqual(outer.leave);
            if (!(inner.leave > inner.enter)) continue;
            expect(t[0]).toBeLessThanOrEqual(inner.enter);
            expect(t[1]).toBeGreaterThanOrEqual(inner.leave);
          }
        },
      ),
      { numRuns: 30 },
    ));
});

/** Directions of no pattern: beside a face that the lines run along, the sum is off by a whole row of them. */
const OBLIQUE: readonly Vec3[] = [
  [0.31, -0.52, 0.79],
  [-0.83, 0.29, 0.47],
  [0.64, 0.73, -0.25],
];

test.each(trees)(
  'crossMesh: lengths inside the $name, over lines side by side, add up to its volume',
  ({ tree }) => {
    const LINES = 150; // along each side of a square wider than the solid
    const spacing = 4.4 / LINES;
    for (const along of OBLIQUE) {
      const d = unit(along);
      const x = unit(cross(d, [1, 0, 0]));
      const y = cross(d, x);
      let volume = 0;
      for (let i = 0; i < LINES; i++)
        for (let j = 0; j < LINES; j++) {
          const a = addScaled(scale((i + 0.5) * spacing - 2.2, x), (j + 0.5) * spacing - 2.2, y);
          const { t } = crossings(tree, a, d);
          for (let k = 0; k < t.length; k += 2) volume += (t[k + 1] - t[k]) * spacing ** 2;
        }
      // the midpoint rule of a function with kinks errs by about the spacing squared, here 9e-4
      expect(Math.abs(volume / meshMoments(tree, 1).mass - 1)).toBeLessThan(2e-3);
    }
  },
);

test('crossMesh: older numbers behind the crossings are left alone', () => {
  const out = [7, 7, 7, 7];
  expect(crossMesh(out, treeOf(box([1, 1, 1])), [0.2, 0.1, -5], [0, 0, 1])).toBe(2);
  expectNear(out, [4, 6, 7, 7], 1e-15);
});

test('crossMesh: nothing is crossed in a mesh of no triangles', () =>
  expect(crossMesh([], treeOf([]), [0, 0, 0], [0, 0, 1])).toBe(0));
