import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Segment, segmentDistance } from '../../src/math/segment-distance.js';
import { addScaled, norm, sub } from '../../src/math/vec3.js';
import { pointWithin } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const at = ({ from, to }: Segment, t: number) => addScaled(from, t, sub(to, from));
const segment = fc.record({ from: pointWithin(1), to: pointWithin(1) });

describe('segmentDistance', () => {
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
    expectNear(segmentDistance(one, other), want, 1e-12);
    expectNear(segmentDistance(other, one), want, 1e-12);
  });

  test('it is the least distance of 41 x 41 points of the segments, but for the steps between them', () => {
    fc.assert(
      fc.property(segment, segment, (first, second) => {
        const places = Array.from({ length: 41 }, (_, i) => i / 40);
        const least = Math.min(
          ...places.flatMap((s) => places.map((t) => norm(sub(at(first, s), at(second, t))))),
        );
        const step = (norm(sub(first.to, first.from)) + norm(sub(second.to, second.from))) / 80;
        const apart = segmentDistance(first, second);
        expect(apart).toBeLessThanOrEqual(least + 1e-12);
        expect(apart).toBeGreaterThanOrEqual(least - step - 1e-12);
      }),
      { numRuns: 300 },
    );
  });
});
