import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crosser, type Solid, solidMoments } from '../../../src/ball/solid/layered-core.js';
import { diagonal, mulMat } from '../../../src/math/mat3.js';
import { addScaled, type Vec3 } from '../../../src/math/vec3.js';
import { partContains } from '../../oracles/part-contains.js';
import { direction, point, pointWithin, rotation, unitShape, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';
import { box, insideOut, moved } from '../../support/meshes/make-stl.js';
import { treeOf } from '../../support/meshes/meshes.js';

const crossed = (solid: Solid, a: Vec3, d: Vec3): number[] => {
  const ends: number[] = [];
  const count = crosser(solid)(ends, a, d);
  return ends.slice(0, count);
};

describe('crosser', () => {
  test('of a shape under any map: points of the line between its two ends lie inside, all others outside', () => {
    fc.assert(
      fc.property(
        unitShape,
        rotation,
        fc.tuple(within(0.4, 1.5), within(0.4, 1.5), within(0.4, 1.5)),
        point,
        pointWithin(1),
        direction,
        (shape, turn, half, c, near, d) => {
          const part = { shape, A: mulMat(turn, diagonal(half)), c, excess: 1 };
          const a: Vec3 = [c[0] + near[0], c[1] + near[1], c[2] + near[2]];
          const ends: number[] = [];
          const count = crosser(part)(ends, a, d);
          expect([0, 2]).toContain(count);
          const [enter, leave] = count === 2 ? [ends[0]!, ends[1]!] : [0, 0];
          for (let t = -4; t <= 4; t += 0.1) {
            const isNear = count === 2 && Math.min(Math.abs(t - enter), Math.abs(t - leave)) < 1e-6;
            if (!isNear)
              expect(partContains(part, addScaled(a, t, d))).toBe(count === 2 && t > enter && t < leave);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  test('a line past a shape goes in nowhere', () =>
    expect(
      crossed({ shape: { kind: 'ball' }, A: diagonal([1, 1, 1]), c: [0, 0, 3] }, [0, 0, 0], [1, 0, 0]),
    ).toEqual([]));

  test('of a hollow mesh: in, out into the hollow, in again, out', () => {
    const mesh = treeOf([...box([2, 2, 2]), ...insideOut(box([1, 1, 1]))]);
    expectNear(crossed({ mesh }, [-5, 0.2, 0.3], [1, 0, 0]), [3, 4, 6, 7], 1e-12);
  });
});

describe('solidMoments', () => {
  test('a mesh and the shape it was made of weigh the same, density one', () => {
    const c: Vec3 = [0.5, -0.25, 1];
    const mesh = solidMoments({ mesh: treeOf(moved(box([1, 2, 0.5]), c)) });
    const shape = solidMoments({ shape: { kind: 'box' }, A: diagonal([1, 2, 0.5]), c });
    expect(shape.mass).toBeCloseTo(8, 12);
    expectNear([mesh.mass, mesh.first, mesh.second], [shape.mass, shape.first, shape.second], 1e-12);
  });
});
