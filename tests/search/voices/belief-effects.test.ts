import { describe, expect, test } from 'vitest';
import { BOARD } from '../../../src/base/constants.js';
import { DEGREE, FOOT, from, INCH } from '../../../src/base/units.js';
import { BELIEFS, type Belief } from '../../../src/records/shared/beliefs.js';
import {
  addedInUnit,
  addedTo,
  beliefEffects,
  movedBy,
  shareOfRange,
} from '../../../src/search/voices/belief-effects.js';
import type { LayoutQuantities } from '../../../src/search/voices/layout-quantities.js';

const usual: LayoutQuantities = {
  drillingAngleDeg: 50,
  valAngleDeg: 35,
  pinToPapIn: 4.5,
  markToPapIn: 4,
  differentialIn: 0.035,
  intermediateDifferentialIn: 0.01,
  rgIn: 2.54,
  finishGrit: 2000,
};
const at = (id: string): number => BELIEFS.findIndex((belief) => belief.id === id);
const effectsOf = (changed: Partial<LayoutQuantities>) => beliefEffects({ ...usual, ...changed }, usual);

describe('shareOfRange', () => {
  const belief = (quantity: Belief['quantity'], start: number, end: number): Belief => ({
    ...BELIEFS[0],
    quantity,
    from: start,
    to: end,
  });
  test.each([
    { name: 'a quarter of the way', of: belief('drillingAngleDeg', 20, 80), a: 35, b: 50, share: 15 / 60 },
    { name: 'the same both ways', of: belief('drillingAngleDeg', 20, 80), a: 50, b: 35, share: -15 / 60 },
    { name: 'a range that falls', of: belief('valAngleDeg', 70, 20), a: 60, b: 35, share: 25 / 50 },
    { name: 'all of it', of: belief('pinToPapIn', 3.375, 5.5), a: 3.375, b: 5.5, share: 1 },
    { name: 'no more than all of it', of: belief('pinToPapIn', 3.375, 5.5), a: 2, b: 6.5, share: 1 },
    { name: 'from outside, as from the end', of: belief('pinToPapIn', 3.375, 5.5), a: 1, b: 4.4375, share: 0.5 },
    { name: 'outside the range, nothing', of: belief('valAngleDeg', 70, 20), a: 75, b: 90, share: 0 },
    { name: 'a finish by its logarithm: 500 to 1000 of 500 to 4000', of: belief('finishGrit', 500, 4000), a: 500, b: 1000, share: 1 / 3 },
    { name: 'a finish by its logarithm: 1000 to 2000', of: belief('finishGrit', 500, 4000), a: 1000, b: 2000, share: 1 / 3 },
    { name: 'a finish coarser than the range counts as its end', of: belief('finishGrit', 500, 4000), a: 80, b: 1000, share: 1 / 3 },
  ])('$name', ({ of, a, b, share }) => {
    expect(shareOfRange(of, a, b)).toBeCloseTo(share, 12);
  }); // biome-ignore format: one row a case
});

describe('beliefEffects', () => {
  test('a layout beside itself: none', () => {
    expect(effectsOf({})).toHaveLength(BELIEFS.length);
    expect(effectsOf({}).every((effect) => effect === 0)).toBe(true);
  });

  test('each is its most, in SI, times the share of its range: by hand for one of each number moved', () => {
    const effects = effectsOf({
      drillingAngleDeg: 80,
      valAngleDeg: 20,
      differentialIn: 0.05,
      intermediateDifferentialIn: 0.02,
      finishGrit: 1000,
    });
    const half = 1 / 2;
    expect(effects[at('drilling-angle-later')]).toBeCloseTo(from(1.15, FOOT) * half, 12); // 30 of 60°
    expect(effects[at('drilling-angle-sharper')]).toBeCloseTo(0.03 * (DEGREE / FOOT) * half, 12);
    expect(effects[at('val-angle-sharper')]).toBeCloseTo(0.03 * (DEGREE / FOOT) * 0.3, 12); // 15 of 50°
    expect(effects[at('differential-hooks-more')]).toBeCloseTo(2.2 * BOARD * half, 12); // 0.015 of 0.030 in
    expect(effects[at('differential-flares-more')]).toBeCloseTo(from(0.2, INCH) * half, 12);
    expect(effects[at('intermediate-shorter')]).toBeCloseTo(from(-0.4, FOOT) * half, 12); // 0.010 of 0.020 in
    expect(effects[at('finish-hooks-less')]).toBeCloseTo((2.2 * BOARD) / 3, 12); // one of three doublings, coarser
    expect(effects[at('pin-away-later')]).toBe(0);
    expect(effects[at('rg-later')]).toBe(0);
  });

  test('there and back cancel', () => {
    const changed = { ...usual, drillingAngleDeg: 20, rgIn: 2.6, pinToPapIn: 5.5 };
    const [there, back] = [beliefEffects(changed, usual), beliefEffects(usual, changed)];
    for (const [b, effect] of there.entries()) expect(effect + back[b]).toBeCloseTo(0, 15);
  });
});

describe('addedTo and addedInUnit', () => {
  const effects = effectsOf({ drillingAngleDeg: 80, pinToPapIn: 5.5, rgIn: 2.6 });
  const sizes = BELIEFS.map((_, b) =>
    b === at('drilling-angle-later') ? 1 : b === at('rg-later') ? 0.25 : b === at('pin-away-later') ? 0 : 0.9,
  );

  test('beliefs about one number add up, each by its size; one that does not hold adds nothing', () => {
    // 1 × 1.15 ft × 30/60 + 0.25 × 1.15 ft × 0.06/0.12
    const laterFt = 1.15 / 2 + (0.25 * 1.15) / 2;
    expect(addedTo('hookStart', effects, sizes)).toBeCloseTo(from(laterFt, FOOT), 12);
    expect(addedInUnit('hookStartFt', effects, sizes)).toBeCloseTo(laterFt, 12);
  });

  test('beliefs about other numbers add nothing to it', () => {
    const others = BELIEFS.map((belief) => (movedBy(belief) === 'sharpness' ? 0 : 1));
    expect(addedTo('sharpness', effects, others)).toBe(0);
    expect(
      addedTo(
        'sharpness',
        effects,
        BELIEFS.map(() => 1),
      ),
    ).toBeCloseTo(
      0.015 * (DEGREE / FOOT), // half of 0.03: the drilling angle alone moved
      12,
    );
  });
});
