import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { checkMesh } from '../../../src/ball/mesh/check-mesh.js';
import type { MeshFault } from '../../../src/ball/mesh/mesh-fault.js';
import { meshMoments } from '../../../src/ball/mesh/mesh-moments.js';
import { type MeshTree, meshTree } from '../../../src/ball/mesh/mesh-tree.js';
import { diagonal, IDENTITY, type Mat3, mulMat, mulVec } from '../../../src/math/mat3.js';
import { add, norm, scale, sub, type Vec3 } from '../../../src/math/vec3.js';
import { direction, rotation, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';
import { box, type Facet, insideOut, lathe, mapped, moved, sphere } from '../../support/meshes/make-stl.js';
import { meshOf, treeOf } from '../../support/meshes/meshes.js';
import { Solids } from '../../support/solids.js';

const check = (facets: readonly Facet[], room = 100) => checkMesh(treeOf(facets), room);
const kinds = (facets: readonly Facet[], room?: number) => check(facets, room).faults.map(({ kind }) => kind);

const cube = box([1, 1, 1]);
const can = lathe(
  [
    [0, -1],
    [1, -1],
    [1, 1],
    [0, 1],
  ],
  40,
);

describe('checkMesh: finds nothing wrong with', () => {
  test.each<[string, readonly Facet[]]>([
    ['a box', cube],
    ['a ball', sphere(1, 30)],
    ['a can whose ends are fans', can],
    ['bodies apart', [...moved(cube, [-2, 0, 0]), ...moved(can, [2, 0, 0])]],
    ['a hollow', [...sphere(2, 20), ...insideOut(sphere(1, 20))]],
    ['a body in a hollow', [...sphere(3, 20), ...insideOut(sphere(2, 20)), ...sphere(1, 20)]],
    [
      'two hollows in one body',
      [...sphere(4, 20), ...[-2, 2].flatMap((x) => insideOut(moved(cube, [x, 0, 0])))],
    ],
    ['a box on the middle of a larger one', [...box([2, 2, 1]), ...moved(cube, [0, 0, 2])]],
    ['a can on a box', [...box([2, 2, 1]), ...moved(can, [0.2, 0.1, 2])]],
    ['bodies that touch at one corner', [...cube, ...moved(cube, [2, 2, 2])]],
    ['a plate as thin as a hundredth of its width', box([1, 1, 0.01])],
    ['a ring', ring()],
  ])('%s', (_, facets) => {
    const { faults, turnedOver } = check(facets);
    expect(faults).toEqual([]);
    expect(turnedOver).toBe(false);
    // and it is the same the other way about
    const other = check(insideOut(facets));
    expect(other.faults).toEqual([]);
    expect(other.turnedOver).toBe(true);
    expectNear(meshMoments(other.solid, 1).mass, meshMoments(treeOf(facets), 1).mass, 1e-9);
  });
});

/** A square bent into a ring around z: one surface with a hole through it. */
function ring(): Facet[] {
  const at = (i: number, j: number): Vec3 => {
    const [a, b] = [(2 * Math.PI * i) / 40, (2 * Math.PI * j) / 4];
    const r = 2 + 0.5 * Math.cos(b);
    return [r * Math.cos(a), r * Math.sin(a), 0.5 * Math.sin(b)];
  };
  return Array.from({ length: 160 }, (_, n) => {
    const [i, j] = [n >> 2, n & 3];
    const [a, b, c, d] = [at(i, j), at((i + 1) % 40, j), at((i + 1) % 40, (j + 1) % 4), at(i, (j + 1) % 4)];
    return [
      [a, b, c],
      [a, c, d],
    ] as const;
  }).flat();
}

describe('checkMesh: tells', () => {
  test.each<{ name: string; facets: readonly Facet[]; want: readonly MeshFault['kind'][] }>([
    { name: 'a missing triangle', facets: cube.slice(1), want: ['open'] },
    { name: 'a triangle twice', facets: [...cube, cube[0]], want: ['crowded'] },
    {
      name: 'a triangle turned over',
      facets: [...insideOut(cube.slice(0, 1)), ...cube.slice(1)],
      want: ['mixed-sides'],
    },
    { name: 'bodies that share an edge', facets: [...cube, ...moved(cube, [2, 2, 0])], want: ['crowded'] },
    { name: 'bodies that share a face', facets: [...cube, ...moved(cube, [2, 0, 0])], want: ['crowded'] },
    { name: 'a body twice', facets: [...cube, ...cube], want: ['crowded'] },
    { name: 'bodies that cut', facets: [...cube, ...moved(cube, [0.7, 0.6, 0.5])], want: ['cuts-itself'] },
    { name: 'a rod through a box', facets: [...cube, ...box([0.2, 0.3, 4])], want: ['cuts-itself'] },
    {
      name: 'equal beams that cross, level with one another',
      facets: [...box([3, 1, 1]), ...box([1, 3, 1])],
      want: ['cuts-itself'],
    },
    {
      name: 'a box slid along itself',
      facets: [...cube, ...moved(cube, [0.5, 0, 0])],
      want: ['cuts-itself'],
    },
    {
      name: 'five corners, so that triangles meet in one of them wherever they cut',
      facets: fiveCorners([1.2, 1.2, 0.3]),
      want: ['cuts-itself'],
    },
    { name: 'a vertex drawn through the other side', facets: drawnThrough(), want: ['cuts-itself'] },
    { name: 'a body within a body', facets: [...sphere(2, 20), ...cube], want: ['counted-twice'] },
    {
      name: 'a funnel whose foot is a slice of a box, so that no triangle is cut',
      facets: [...cube, ...funnel()],
      want: ['counted-twice'],
    },
    {
      name: 'a hollow in a hollow',
      facets: [...sphere(3, 20), ...insideOut(sphere(2, 20)), ...insideOut(cube)],
      want: ['mixed-parts'],
    },
    {
      name: 'one body of two inside out',
      facets: [...cube, ...insideOut(moved(cube, [4, 0, 0]))],
      want: ['mixed-parts'],
    },
    ...['z', 'y', 'x'].map((axis, i) => {
      const side = cube.slice(4 * i, 4 * i + 1);
      return {
        name: `a sheet of two sides, square to ${axis}`,
        facets: [...side, ...insideOut(side)],
        want: ['no-volume' as const],
      };
    }),
    { name: 'nothing at all', facets: [], want: ['no-volume'] },
    {
      name: 'two things at once',
      facets: [...cube.slice(1), ...moved(cube, [0.7, 0.6, 0.5])],
      want: ['open', 'cuts-itself'],
    },
  ])('$name', ({ facets, want }) => expect(kinds(facets)).toEqual(want));

  /** Widens upward from the square in which the plane z = 0 cuts the cube. */
  function funnel(): Facet[] {
    return mapped(box([1, 1, 1]), ([x, y, z]) => (z < 0 ? [x, y, 0] : [2 * x, 2 * y, 2]));
  }

  /** A tetrahedron whose face x, y has a fifth corner in it, drawn to some place. */
  function fiveCorners(fifth: Vec3): Facet[] {
    const [o, x, y, z]: Vec3[] = [
      [0, 0, 0],
      [2, 0, 0],
      [0, 2, 0],
      [0, 0, 2],
    ];
    return [
      [o, x, z],
      [o, z, y],
      [x, y, z],
      [o, fifth, x],
      [x, fifth, y],
      [y, fifth, o],
    ];
  }

  /** A ball of which one vertex lies beyond the other side. */
  function drawnThrough(): Facet[] {
    const [, , tip] = sphere(1, 8)[40];
    return mapped(sphere(1, 8), (p) => (norm(sub(p, tip)) < 1e-9 ? scale(-1.5, p) : p));
  }

  test('a small part turned inside out beside a large one, though one of its triangles has no area, whichever stands last', () => {
    const [o, x, y, z, half]: Vec3[] = [
      [0, 0, 0],
      [2, 0, 0],
      [0, 2, 0],
      [0, 0, 2],
      [1, 0, 0],
    ];
    const tetrahedron: Facet[] = [
      [o, y, x],
      [o, x, half], // flat
      [o, half, z],
      [half, x, z],
      [x, y, z],
      [y, o, z],
    ];
    tetrahedron.forEach((_, i) => {
      const turned = [...tetrahedron.slice(i), ...tetrahedron.slice(0, i)];
      const small = insideOut(mapped(turned, (p) => add(scale(0.0625, p), [5, 0, 0])));
      expect(kinds([...sphere(1, 20), ...small])).toEqual(['mixed-parts']);
    });
  });

  test('how many edges are open and where the first lies', () => {
    // a square of the box's top left out: its four sides are open
    const top = cube.filter((facet) => facet.every(([, , z]) => z === 1));
    const [fault] = check(cube.filter((facet) => !top.includes(facet))).faults;
    expect(fault).toMatchObject({ kind: 'open', edges: 4 });
    expect(fault.at.map(Math.abs).sort()).toEqual([0, 1, 1]);
    expect(fault.at[2]).toBe(1);
  });

  test('where a cut lies', () => {
    const [fault] = check([...sphere(1, 20), ...moved(sphere(1, 20), [1.6, 0, 0])]).faults;
    // the circle where the balls meet; facets lie within 0.013 of the balls
    expectNear(fault.at[0], 0.8, 0.02);
    expectNear(Math.hypot(fault.at[1], fault.at[2]), 0.6, 0.02);
  });
});

test('checkMesh: a mesh sticks out as soon as its farthest vertex does, and says by how much', () => {
  const far = moved(sphere(1, 20), [3, 4, 0]);
  const reach = Math.max(...far.flat().map(norm));
  expect(kinds(far, reach * (1 + 1e-6))).toEqual([]);
  const [fault] = check(far, reach * (1 - 1e-6)).faults;
  expect(fault).toMatchObject({ kind: 'sticks-out' });
  if (fault.kind === 'sticks-out') expectNear(fault.reach, norm(fault.at), 1e-15);
  expectNear(norm(fault.at), reach, 1e-6);
});

test.each([
  [0, 1, 2],
  [1, 2, 0],
  [2, 0, 1],
])('checkMesh: a plate two grains thick has a volume, square to whatever axis', (i, j, k) => {
  const plate = (thickness: number): MeshTree => {
    const half: [number, number, number] = [0, 0, 0];
    [half[i], half[j], half[k]] = [thickness / 2, 0.01, 0.04];
    return treeOf(box(half));
  };
  const { grain } = plate(0.01); // what is thinner is welded
  expect(checkMesh(plate(2 * grain), 1).faults).toEqual([]);
});

test('checkMesh: any triangle taken away or turned over is noticed', () => {
  const ball = sphere(1, 8);
  ball.forEach((facet, i) => {
    const others = ball.filter((_, j) => j !== i);
    expect(check(others).faults).toMatchObject([{ kind: 'open', edges: 3 }]);
    expect(check([...others, ...insideOut([facet])]).faults).toMatchObject([
      { kind: 'mixed-sides', edges: 3 },
    ]);
  });
});

describe('checkMesh: two boxes in any position', () => {
  let solids: Solids;
  beforeAll(async () => {
    solids = await Solids.load(8);
  });

  /** How a box lies to the unit cube, by the volumes that manifold-3d finds: what is shared, and what is left. */
  function relation(R: Mat3, half: Vec3, centre: Vec3): 'apart' | 'within' | 'cut' {
    const unitCube = solids.part({ shape: { kind: 'box' }, A: IDENTITY, c: [0, 0, 0] });
    const other = solids.part({ shape: { kind: 'box' }, A: mulMat(R, diagonal(half)), c: centre });
    if (unitCube.intersect(other).isEmpty()) return 'apart';
    return other.subtract(unitCube).isEmpty() ? 'within' : 'cut';
  }
  const WANT = { apart: [], within: ['counted-twice'], cut: ['cuts-itself'] };

  test('are well when they share no matter, counted twice when one lies in the other, else cut', () => {
    const seen = { apart: 0, within: 0, cut: 0 };
    const sizes = fc.tuple(within(0.1, 1.2), within(0.1, 0.8), within(0.1, 0.8));
    fc.assert(
      fc.property(rotation, sizes, direction, within(0, 2.5), (R, half, heading, distance) => {
        const centre = scale(distance, heading);
        const found = relation(R, half, centre);
        // nothing that a thousandth would change: the cut must be deeper than the grain, the gap too
        for (const k of [0.999, 1.001]) fc.pre(relation(R, scale(k, half), centre) === found);
        seen[found] += 1;
        const second = mapped(box(half), (p) => add(centre, mulVec(R, p)));
        expect(kinds([...cube, ...second])).toEqual(WANT[found]);
      }),
      { numRuns: 600 },
    );
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(30);
  });
});

test('checkMesh: what it gives back is the mesh itself, ready to be crossed', () => {
  const mesh = meshOf(cube);
  const { solid } = checkMesh(meshTree(mesh), 100);
  expect(solid.positions).toBe(mesh.positions);
  expectNear(meshMoments(solid, 1).mass, 8, 1e-14);
});
