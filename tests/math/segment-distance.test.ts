import fc from 'fast-check';
import { describe, test } from 'vitest';
import { nearestOfSegments, type Segment } from '../../src/math/segment-distance.js';
import { addScaled, norm, sub } from '../../src/math/vec3.js';
import { pointWithin } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const at = ({ from, to }: Segment, t: number) => addScaled(from, t, sub(to, from));
const segment = fc.record({ from: pointWithin(1), to: pointWithin(1) });

describe('nearestOfSegments', () => {
  test.each([
    {
      name: 'two skew ones: the length of the common perpendicular',
      first: [
        [-1, 0, 0],
        [1, 0, 0],
      ],
      second: [
        [0, -1, 2],
        [0, 1, 2],
      ],
      want: 2,
    },
    {
      name: 'crossing ones',
      first: [
        [-1, 0, 0],
        [1, 0, 0],
      ],
      second: [
        [0, -1, 0],
        [0, 1, 0],
      ],
      want: 0,
    },
    {
      name: 'parallel ones side by side',
      first: [
        [0, 0, 0],
        [1, 0, 0],
      ],
      second: [
        [0.5, 3, 0],
        [2, 3, 0],
      ],
      want: 3,
    },
    {
      name: 'parallel ones one behind the other',
      first: [
        [0, 0, 0],
        [1, 0, 0],
      ],
      second: [
        [4, 4, 0],
        [7, 4, 0],
      ],
      want: 5,
    },
    {
      name: 'an end against a middle',
      first: [
        [0, 0, 0],
        [1, 0, 0],
      ],
      second: [
        [3, -1, 0],
        [3, 1, 0],
      ],
      want: 2,
    },
    {
      name: 'two points',
      first: [
        [0, 0, 0],
        [0, 0, 0],
      ],
      second: [
        [2, 3, 6],
        [2, 3, 6],
      ],
      want: 7,
    },
    {
      name: 'a point beside a segment',
      first: [
        [0.25, 2, 0],
        [0.25, 2, 0],
      ],
      second: [
        [0, 0, 0],
        [1, 0, 0],
      ],
      want: 2,
    },
  ] as const)('$name (elementary geometry)', ({ first, second, want }) => {
    const one = { from: first[0], to: first[1] } as Segment;
    const other = { from: second[0], to: second[1] } as Segment;
    expectNear(nearestOfSegments(one, other).apart, want, 1e-12);
    expectNear(nearestOfSegments(other, one).apart, want, 1e-12);
  });

  test('no two of 41 x 41 points of the segments are nearer, and the points it names are as far apart as it says', () => {
    fc.assert(
      fc.property(segment, segment, (first, second) => {
        const { apart, onFirst, onSecond } = nearestOfSegments(first, second);
        expectNear(norm(sub(at(first, onFirst), at(second, onSecond))), apart, 1e-12);
        for (let i = 0; i <= 40; i++)
          for (let j = 0; j <= 40; j++)
            if (norm(sub(at(first, i / 40), at(second, j / 40))) < apart - 1e-12)
              throw new Error(`nearer at ${i}, ${j}`);
      }),
      { numRuns: 300 },
    );
  });
});
