import { describe, expect, test } from 'vitest';
import { coreMatter } from '../../../src/ball/drill/core-matter.js';
import { addMoments } from '../../../src/ball/mass/mass-properties.js';
import type { Layer, LayeredCore } from '../../../src/ball/solid/layered-core.js';
import { partMoments } from '../../../src/ball/solid/part.js';
import { diagonal, IDENTITY, type Mat3 } from '../../../src/math/mat3.js';
import { expectNear } from '../../support/expect-near.js';
import { box, insideOut } from '../../support/meshes/make-stl.js';
import { treeOf } from '../../support/meshes/meshes.js';

/* Lines through cores whose shares are worked out by hand. */

const ballOf = (radius: number, excess: number): Layer => ({
  shape: { kind: 'ball' },
  A: diagonal([radius, radius, radius]),
  c: [0, 0, 0],
  excess,
});
const outer = partMoments({ ...ballOf(3, 5), excess: 5 } as never);
const inner = partMoments({ ...ballOf(1, 2), excess: 2 } as never);
const nested: LayeredCore = {
  layers: [ballOf(3, 5), ballOf(1, 2)],
  moments: addMoments(addMoments(outer, inner), partMoments({ ...ballOf(1, 5) } as never), -1),
};

/** The x axis from −10 on, a tenth of a square metre wide. */
const axis = (s: number, e: number) => [{ a: [-10, 0, 0], d: [1, 0, 0], area: 0.1, s, e }] as const;

/** Quarter turn about z: what lies along x in C lies along y in B. */
const QUARTER: Mat3 = [
  [0, -1, 0],
  [1, 0, 0],
  [0, 0, 1],
];

describe('coreMatter: layers', () => {
  test('the later solid is where both are: 2 m and 2 m of the outer one at 5, 2 m of the inner one at 2', () => {
    const { along, moments } = coreMatter({ core: [], layers: nested });
    expect(moments).toEqual(nested.moments);
    const { mass, first, second } = along(IDENTITY, axis(0, 20));
    expectNear(mass, 0.1 * (4 * 5 + 2 * 2), 1e-14);
    expectNear(first, [0, 0, 0], 1e-13);
    expectNear(second[0][0], 0.1 * (5 * 2 * ((27 - 1) / 3) + 2 * (2 / 3)), 1e-12);
  });

  test('a stretch that begins or ends inside holds what lies along it', () => {
    const { along } = coreMatter({ core: [], layers: nested });
    expectNear(along(IDENTITY, axis(0, 10)).mass, 0.1 * (2 * 5 + 1 * 2), 1e-14);
    expectNear(along(IDENTITY, axis(10.5, 11.5)).mass, 0.1 * (0.5 * 2 + 0.5 * 5), 1e-14);
    expect(along(IDENTITY, axis(0, 6.9)).mass).toBe(0);
    expect(along(IDENTITY, []).mass).toBe(0);
  });

  test('several stretches add up, each counted anew', () => {
    const { along } = coreMatter({ core: [], layers: nested });
    const twice = along(IDENTITY, [...axis(0, 20), ...axis(0, 20)]);
    expectNear(twice.mass, 2 * along(IDENTITY, axis(0, 20)).mass, 1e-14);
  });

  test('a hollow mesh is matter on both sides of its hollow alone', () => {
    const mesh = treeOf([...box([2, 3, 4]), ...insideOut(box([1, 1, 1]))]);
    const { along } = coreMatter({ core: [], layers: { layers: [{ mesh, excess: 5 }], moments: outer } });
    const { mass, second } = along(IDENTITY, [{ a: [-10, 0.1, 0.2], d: [1, 0, 0], area: 0.1, s: 0, e: 20 }]);
    expectNear(mass, 0.1 * 5 * 2, 1e-12);
    expectNear(second[0][0], 0.1 * 5 * 2 * ((8 - 1) / 3), 1e-12);
  });

  test('the core turns with the layout: a box 4 along x in C is crossed along y in B', () => {
    const long: Layer = { shape: { kind: 'box' }, A: diagonal([4, 1, 1]), c: [0, 0, 0], excess: 1 };
    const { along } = coreMatter({ core: [], layers: { layers: [long], moments: outer } });
    const y = [{ a: [0, -10, 0], d: [0, 1, 0], area: 1, s: 0, e: 20 }] as const;
    expectNear(along(IDENTITY, y).mass, 2, 1e-14);
    expectNear(along(QUARTER, y).mass, 8, 1e-13);
  });
});

describe('coreMatter: parts, and parts beside layers', () => {
  const aside = { shape: { kind: 'box' }, A: diagonal([1, 1, 1]), c: [6, 0, 0], excess: 7 } as const;

  test('parts alone: each holds what is its own', () => {
    const { along, moments } = coreMatter({ core: [aside] });
    expect(moments).toEqual(partMoments(aside));
    const { mass, first } = along(IDENTITY, axis(0, 20));
    expectNear([mass, first[0]], [0.1 * 7 * 2, 0.1 * 7 * 2 * 6], 1e-13);
    const turned = along(QUARTER, [{ a: [0, -10, 0], d: [0, 1, 0], area: 0.1, s: 0, e: 15 }]);
    expectNear([turned.mass, turned.first[1]], [0.1 * 7 * 0, 0], 1e-13);
    expectNear(along(QUARTER, [{ a: [0, -10, 0], d: [0, 1, 0], area: 0.1, s: 0, e: 16 }]).mass, 0.7, 1e-13);
  });

  test('both: the sum of both', () => {
    const { along, moments } = coreMatter({ core: [aside], layers: nested });
    expectNear(moments.mass, nested.moments.mass + 8 * 7, 1e-11);
    expectNear(along(IDENTITY, axis(0, 20)).mass, 0.1 * (24 + 14), 1e-13);
  });
});
