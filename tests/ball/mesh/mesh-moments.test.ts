import Module from 'manifold-3d';
import { describe, expect, test } from 'vitest';
import { sphereMoments } from '../../../src/ball/drill/ball-body.js';
import { fromMoments, inertiaOfSecond, type MassProperties } from '../../../src/ball/mass/mass-properties.js';
import type { Mesh } from '../../../src/ball/mesh/mesh.js';
import { meshMoments } from '../../../src/ball/mesh/mesh-moments.js';
import { partMoments } from '../../../src/ball/solid/part.js';
import { fromColumns, mulVec } from '../../../src/math/mat3.js';
import { scale, unit, type Vec3 } from '../../../src/math/vec3.js';
import { meshEngine } from '../../oracles/mesh-engine.js';
import { expectNear } from '../../support/expect-near.js';
import { box, type Facet, insideOut, lathe, mapped, moved, sphere } from '../../support/meshes/make-stl.js';
import { meshOf } from '../../support/meshes/meshes.js';

const tetrahedron = ((): Facet[] => {
  const [o, x, y, z]: Vec3[] = [
    [0, 0, 0],
    [5, 0, 0],
    [0, 4, 0],
    [0, 0, 3],
  ];
  return [
    [o, y, x],
    [o, x, z],
    [o, z, y],
    [x, y, z],
  ];
})();

// the volume and centroid of any tetrahedron, and the inertia of one with three square edges: any mechanics textbook
test('meshMoments: a tetrahedron with edges 5, 4, 3 along the axes has volume 10 and the inertia of its closed form', () => {
  const { mass, p_BoBcm_B, I_Bcm_B } = fromMoments(meshMoments(meshOf(tetrahedron), 1));
  expectNear(mass, 10, 1e-14);
  expectNear(p_BoBcm_B, [1.25, 1, 0.75], 1e-14);
  expectNear(
    I_Bcm_B,
    [
      [9.375, 2.5, 1.875],
      [2.5, 12.75, 1.5],
      [1.875, 1.5, 15.375],
    ],
    1e-13,
  );
});

test('meshMoments: a turned box off the centre has the moments of its analytic twin', () => {
  const R = fromColumns([2 / 3, 2 / 3, 1 / 3], [-2 / 3, 1 / 3, 2 / 3], [1 / 3, -2 / 3, 2 / 3]);
  const half: Vec3 = [1, 0.5, 2];
  const c: Vec3 = [0.3, -0.7, 0.2];
  const turned = mapped(box(half), (p) => mulVec(R, p));
  const A = fromColumns(
    ...([0, 1, 2].map((i) => scale(half[i], mulVec(R, unitAxis(i)))) as [Vec3, Vec3, Vec3]),
  );
  const twin = partMoments({ shape: { kind: 'box' }, A, c, excess: 1.7 });
  const got = meshMoments(meshOf(moved(turned, c)), 1.7);
  // corners are float32: 6e-8 of up to 2.2, in moments of up to 40
  expectNear(got.mass, twin.mass, 1e-5);
  expectNear(got.first, twin.first, 1e-5);
  expectNear(got.second, twin.second, 2e-5);
});

test('meshMoments: inside out is the same with the other sign, so a hollow takes its matter away', () => {
  const shell = meshMoments(meshOf([...sphere(2, 30), ...insideOut(sphere(1, 30))]), 1);
  const [outer, inner] = [meshMoments(meshOf(sphere(2, 30)), 1), meshMoments(meshOf(sphere(1, 30)), 1)];
  expectNear(shell.mass, outer.mass - inner.mass, 1e-12);
  expectNear(
    shell.second,
    [0, 1, 2].map((i) => [0, 1, 2].map((j) => outer.second[i][j] - inner.second[i][j])),
    1e-12,
  );
});

test('meshMoments: twice the rings leave a quarter of what a faceted ball lacks of a round one', () => {
  const want = sphereMoments(1, 1);
  const lacks = [16, 32, 64].map((rings) => {
    const got = meshMoments(meshOf(sphere(1, rings)), 1);
    return [want.mass - got.mass, want.second[0][0] - got.second[0][0], want.second[2][2] - got.second[2][2]];
  });
  for (const finer of [1, 2])
    for (const i of [0, 1, 2]) {
      const order = Math.log2(lacks[finer - 1][i] / lacks[finer][i]);
      expectNear(order, 2, 0.05);
    }
});

describe('meshMoments: other programs weigh the same', () => {
  const knobby = mapped(
    lathe(
      [
        [0, -40],
        [30, -35],
        [45, 5],
        [20, 25],
        [25, 40],
        [0, 42],
      ],
      24,
    ),
    ([x, y, z]) => [
      0.001 * (x + 6 * Math.sin(z / 9)),
      0.001 * y * (1 + 0.2 * Math.cos(x / 11)),
      0.001 * (z + 7),
    ],
  );
  const mesh = meshOf(knobby);

  test('manifold-3d: volume', async () => {
    const kernel = await Module();
    kernel.setup();
    expect(
      meshMoments(mesh, 1).mass / new kernel.Manifold(asManifoldMesh(kernel, mesh)).volume(),
    ).toBeCloseTo(1, 6);
  });

  test('mujoco-js: mass, centre and inertia of the exact mesh', async () => {
    const kernel = await Module();
    kernel.setup();
    const weigh = await meshEngine();
    const solid = new kernel.Manifold(asManifoldMesh(kernel, mesh));
    const theirs: MassProperties = weigh([{ solid, density: 2000 }]);
    const ours = fromMoments(meshMoments(mesh, 2000));
    // both from float32 corners, 4e-9 m of 0.05 m: 1e-7 of everything
    expectNear(ours.mass, theirs.mass, 1e-6 * ours.mass);
    expectNear(ours.p_BoBcm_B, theirs.p_BoBcm_B, 1e-8);
    const size = inertiaOfSecond(meshMoments(mesh, 2000).second)[0][0];
    expectNear(ours.I_Bcm_B, theirs.I_Bcm_B, 1e-6 * size);
  });
});

const asManifoldMesh = (kernel: Awaited<ReturnType<typeof Module>>, { positions, triangles }: Mesh) =>
  new kernel.Mesh({ numProp: 3, vertProperties: Float32Array.from(positions), triVerts: triangles });

const unitAxis = (i: number): Vec3 => unit([i === 0 ? 1 : 0, i === 1 ? 1 : 0, i === 2 ? 1 : 0]);
