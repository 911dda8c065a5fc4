import { describe, expect, test } from 'vitest';
import { FOOT } from '../../../src/base/units.js';
import { targetsOf } from '../../../src/search/scoring/target.js';
import type { Outcome } from '../../../src/simulate/simulator.js';

/** Outcomes whose hooks start at 30, 31, … 40 ft, in no order. */
const attained = [34, 40, 31, 37, 30, 36, 33, 39, 32, 35, 38].map(
  (feet) => ({ shot: 'pins', reaction: { hookStart: feet * FOOT, sharpness: 1, totalHook: 1 } }) as Outcome,
);

const target = (hookStart: number | string) => targetsOf({ hookStart }, attained)[0];

describe('targetsOf', () => {
  test('a step is a quantile of what is attained, by its number or its word', () => {
    expect(target(3)).toMatchObject({ step: 3, value: 35 * FOOT });
    expect(target('middle')).toEqual(target(3));
    expect(target('late')).toEqual(target(4));
    expect(target(3)).not.toHaveProperty('asked');
  });

  test('a number is the target itself', () => {
    const { step, asked, value } = target('37 ft') ?? {};
    expect(step).toBeNull();
    expect(asked).toBeCloseTo(37 * FOOT, 12);
    expect(value).toBeCloseTo(37 * FOOT, 12);
  });

  test('a number that no layout attains is clipped to what nearly all attain, and kept as it was asked', () => {
    for (const [text, end] of [
      ['52 ft', 'high'],
      ['20 ft', 'low'],
    ] as const) {
      const clipped = target(text);
      expect(clipped?.value).toBe(clipped?.[end]);
      expect(clipped?.asked).toBeCloseTo(Number.parseInt(text, 10) * FOOT, 12);
    }
  });

  test('what the schema of wants refuses is no wish, and said by its name', () => {
    expect(() => target('soonish')).toThrow(/hookStart ./);
  });

  test('without a wish there is no target', () => {
    expect(targetsOf({}, attained)).toEqual([]);
  });
});
