import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Solid } from '../../../src/ball/solid/layered-core.js';
import type { UnitShape } from '../../../src/ball/solid/part.js';
import { around, type Box, boxOf, meetingOf } from '../../../src/ball/solid/solid-box.js';
import { solidReach } from '../../../src/ball/solid/solid-reach.js';
import { diagonal, IDENTITY, mulMat, mulVec } from '../../../src/math/mat3.js';
import { add, type Vec3 } from '../../../src/math/vec3.js';
import { point, rotation, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';
import { box, moved } from '../../support/meshes/make-stl.js';
import { treeOf } from '../../support/meshes/meshes.js';

/** How far a shape under a map reaches along a row of that map, from its middle: elementary geometry. */
const REACH: Readonly<Record<string, (row: Vec3) => number>> = {
  ball: ([x, y, z]) => Math.hypot(x, y, z),
  box: ([x, y, z]) => Math.abs(x) + Math.abs(y) + Math.abs(z),
  cylinder: ([x, y, z]) => Math.hypot(x, y) + Math.abs(z),
};

describe('boxOf', () => {
  test('of a ball, a box and a cylinder under any map, in any frame: half as wide as the rows of the map say', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('ball', 'box', 'cylinder'),
        rotation,
        fc.tuple(within(0.2, 2), within(0.2, 2), within(0.2, 2)),
        point,
        rotation,
        (kind, turn, half, c, R_QC) => {
          const A = mulMat(turn, diagonal(half));
          const { low, high } = boxOf({ shape: { kind } as UnitShape, A, c }, R_QC);
          const middle = mulVec(R_QC, c);
          const reaches = mulMat(R_QC, A).map((row) => REACH[kind]!(row));
          expectNear(low, [middle[0] - reaches[0]!, middle[1] - reaches[1]!, middle[2] - reaches[2]!], 1e-12);
          expectNear(
            high,
            [middle[0] + reaches[0]!, middle[1] + reaches[1]!, middle[2] + reaches[2]!],
            1e-12,
          );
        },
      ),
    );
  });

  test('of a cone: its rims alone reach out, the wide one at the bottom and the narrow one at the top', () => {
    const cone: Solid = { shape: { kind: 'cone', top: 0.25 }, A: diagonal([2, 2, 3]), c: [1, 0, 10] };
    const { low, high } = boxOf(cone, IDENTITY);
    expectNear(
      [low, high],
      [
        [-1, -2, 7],
        [3, 2, 13],
      ],
      1e-14,
    );
    const leaning = boxOf(cone, [
      [0, 0, 1],
      [0, 1, 0],
      [-1, 0, 0],
    ]);
    expectNear(
      [leaning.low, leaning.high],
      [
        [7, -2, -3],
        [13, 2, 1],
      ],
      1e-14,
    );
  });

  test('of a mesh: that of its corners, whatever its place', () => {
    fc.assert(
      fc.property(point, rotation, (c, R_QC) => {
        const mesh = treeOf(moved(box([0.5, 1, 1.5]), c));
        const { low, high } = boxOf({ mesh }, R_QC);
        const middle = mulVec(R_QC, c);
        const reaches = mulMat(R_QC, diagonal([0.5, 1, 1.5])).map((row) => REACH.box!(row));
        expectNear(low, [middle[0] - reaches[0]!, middle[1] - reaches[1]!, middle[2] - reaches[2]!], 1e-6); // float32
        expectNear(high, [middle[0] + reaches[0]!, middle[1] + reaches[1]!, middle[2] + reaches[2]!], 1e-6);
      }),
      { numRuns: 20 },
    );
  });
});

const at = (low: Vec3, size: Vec3): Box => ({ low, high: add(low, size) });

describe('meetingOf', () => {
  const one = at([0, 0, 0], [2, 3, 4]);

  test('what two boxes share', () => {
    expect(meetingOf(one, at([1, -1, 3], [5, 2, 5]))).toEqual({ low: [1, 0, 3], high: [2, 1, 4] });
    expect(meetingOf(at([1, -1, 3], [5, 2, 5]), one)).toEqual({ low: [1, 0, 3], high: [2, 1, 4] });
    expect(meetingOf(one, at([0.5, 0.5, 0.5], [1, 1, 1]))).toEqual(at([0.5, 0.5, 0.5], [1, 1, 1]));
  });

  test.each<[string, Vec3]>([
    ['along x', [3, 0, 0]],
    ['along y', [0, 4, 0]],
    ['along z', [0, 0, 5]],
    ['with faces that touch', [2, 0, 0]],
    ['with faces a rounding apart', [0, 3 - 1e-12, 0]],
    ['on the other side', [0, 0, -4]],
  ])('apart %s they share nothing', (_, low) => expect(meetingOf(one, at(low, [2, 3, 4]))).toBeNull());

  test('a micrometre is shared', () =>
    expect(meetingOf(one, at([2 - 1e-6, 0, 0], [1, 1, 1]))).not.toBeNull());
});

test('around: from the lower to the higher of both, whichever comes first', () => {
  const [one, other] = [at([0, 1, 2], [1, 1, 1]), at([-1, 5, 2.5], [1, 2, 0.1])];
  const both = { low: [-1, 1, 2], high: [1, 7, 3] };
  expect(around(one, other)).toEqual(both);
  expect(around(other, one)).toEqual(both);
});

describe('solidReach', () => {
  test('of a mesh: its farthest corner from the origin', () => {
    expect(solidReach({ mesh: treeOf(box([1, 2, 2])) })).toBeCloseTo(3, 6);
    expect(solidReach({ mesh: treeOf(moved(box([1, 1, 1]), [-1, 3, -1])) })).toBeCloseTo(Math.sqrt(24), 6);
  });

  test('of a shape: that of its part', () =>
    expect(solidReach({ shape: { kind: 'box' }, A: diagonal([1, 2, 2]), c: [0, 0, 0] })).toBeCloseTo(3, 12));
});
