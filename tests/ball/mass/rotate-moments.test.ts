import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coreMoments } from '../../../src/ball/drill/ball-body.js';
import { addMoments, NO_MOMENTS } from '../../../src/ball/mass/mass-properties.js';
import { rotateMoments } from '../../../src/ball/mass/rotate-moments.js';
import { type Part, partMoments, turnPart, type UnitShape } from '../../../src/ball/solid/part.js';
import { point, rotation } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';

const shapes = fc.constantFrom<UnitShape>({ kind: 'ball' }, { kind: 'box' }, { kind: 'cone', top: 0.4 });
const parts = fc.tuple(shapes, rotation, point).map(([shape, A, c]): Part => ({ shape, A, c, excess: 1 }));

test('rotateMoments: turning a part and turning its moments come to the same', () =>
  fc.assert(
    fc.property(parts, rotation, (part, R) => {
      const turned = partMoments(turnPart(part, R));
      const mapped = rotateMoments(R, partMoments(part));
      expectNear(
        [turned.mass, turned.first, turned.second],
        [mapped.mass, mapped.first, mapped.second],
        1e-12,
      );
    }),
  ));

test('rotateMoments: a quarter turn about z takes what lies along x to y', () => {
  const R = [
    [0, -1, 0],
    [1, 0, 0],
    [0, 0, 1],
  ] as const;
  const along = {
    mass: 2,
    first: [6, 0, 0],
    second: [
      [18, 0, 0],
      [0, 0, 0],
      [0, 0, 0],
    ],
  } as const; // 2 kg at x = 3
  const { mass, first, second } = rotateMoments(R, along);
  expectNear(
    [mass, first, second],
    [
      2,
      [0, 6, 0],
      [
        [0, 0, 0],
        [0, 18, 0],
        [0, 0, 0],
      ],
    ],
    1e-14,
  );
});

test('NO_MOMENTS: a core of nothing, and added to others changes none', () => {
  const nothing = {
    mass: 0,
    first: [0, 0, 0],
    second: [
      [0, 0, 0],
      [0, 0, 0],
      [0, 0, 0],
    ],
  };
  expect(coreMoments([])).toEqual(nothing);
  const some = partMoments({
    shape: { kind: 'box' },
    A: [
      [1, 0, 0],
      [0, 2, 0],
      [0, 0, 3],
    ],
    c: [1, 2, 3],
    excess: 5,
  });
  expect(addMoments(some, NO_MOMENTS)).toEqual(some);
});
