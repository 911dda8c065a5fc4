import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CENTRE, INERTIA, NO_OIL, splitCauses } from '../../src/explain/split-causes.js';
import { within } from '../support/arbitraries.js';

/** Values of the eight balls by a law of what differs: 1 where the ball has it of the other layout, or oil on its rings. */
const eight = (law: (centre: number, inertia: number, oil: number) => number): number[] =>
  Array.from({ length: 8 }, (_, mask) =>
    law(mask & CENTRE ? 1 : 0, mask & INERTIA ? 1 : 0, mask & NO_OIL ? 0 : 1),
  );

describe('splitCauses', () => {
  test('effects that only add are each found whole, and what the reference does is none', () => {
    const split = splitCauses(eight((c, i, oil) => 38 + 3 * c + 0.5 * i + 0.7 * i * oil));
    expect(split.total).toBeCloseTo(4.2, 12);
    expect(split.centre).toBeCloseTo(3, 12);
    expect(split.flare).toBeCloseTo(0.7, 12);
    expect(split.inertia).toBeCloseTo(0.5, 12);
    expect(split.without.centre).toBeCloseTo(1.2, 12);
    expect(split.without.flare).toBeCloseTo(3.5, 12);
    expect(split.without.inertia).toBeCloseTo(3, 12);
  });

  test('oil that does the same to both balls is no cause', () => {
    const split = splitCauses(eight((c, i, oil) => 2 * c + i - 5 * oil));
    expect(split.flare).toBeCloseTo(0, 12);
    expect(split.inertia).toBeCloseTo(1, 12);
  });

  test('what centre and inertia do only together is halved', () => {
    const split = splitCauses(eight((c, i) => 4 * c * i));
    expect(split).toMatchObject({ total: 4, centre: 2, flare: 0, inertia: 2 });
    expect(split.without).toEqual({ centre: 0, flare: 4, inertia: 0 });
  });

  test('the three add up to the difference, whatever the values', () => {
    fc.assert(
      fc.property(fc.array(within(-50, 50), { minLength: 8, maxLength: 8 }), (values) => {
        const { total, centre, flare, inertia } = splitCauses(values);
        expect(total).toBe(values[CENTRE | INERTIA] - values[0]);
        expect(centre + flare + inertia).toBeCloseTo(total, 9);
      }),
    );
  });
});
