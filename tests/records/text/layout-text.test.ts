import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../support/arbitraries.js'; // its seed
import { formatLayout, formatSixteenths, parseLayout } from '../../../src/records/text/layout-text.js';
import { parseFraction } from '../../../src/records/text/parse-fraction.js';
import { inputErrorOf } from '../../support/faults-of.js';

describe('parseFraction', () => {
  test.each([
    ['4', 4],
    ['4.5', 4.5],
    ['.5', 0.5],
    ['4 1/2', 4.5],
    ['4-1/2', 4.5],
    ['1/2', 0.5],
    ['11/16', 0.6875],
    [' 5  1/8 ', 5.125],
    ['4,5', 4.5],
    ['4½', 4.5],
  ])('%j is %d', (text, want) => {
    expect(parseFraction(text)).toBe(want);
  });

  test.each(['', ' ', '.', 'x', '4 1', '1/', '/2', '-4', '4 1/2 1/2', '1e3', '0x10'])(
    '%j is no number',
    (text) => {
      expect(parseFraction(text)).toBeNaN();
    },
  );
});

describe('formatSixteenths', () => {
  test('what it writes is read back to the nearest sixteenth', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 27, noNaN: true }), (inches) => {
        const read = parseFraction(formatSixteenths(inches));
        expect(read * 16).toBe(Math.round(inches * 16));
        expect(Math.abs(read - inches)).toBeLessThanOrEqual(1 / 32);
      }),
    );
  });

  test('fractions are in lowest terms', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), (sixteenths) => {
        const fraction = /(\d+)\/(\d+)$/.exec(formatSixteenths(sixteenths / 16));
        if (fraction) expect(Number(fraction[1]) % 2).toBe(1);
      }),
    );
  });

  test('a negative length keeps its sign, a negative nothing has none', () => {
    expect([-0.375, -1.5, -0.01].map(formatSixteenths)).toEqual(['-3/8', '-1 1/2', '0']);
  });
});

describe('parseLayout', () => {
  const layout = fc.record({
    drillingAngleDeg: fc.integer({ min: 0, max: 180 }),
    pinToPapIn: fc.integer({ min: 0, max: 108 }).map((sixteenths) => sixteenths / 16),
    valAngleDeg: fc.integer({ min: 0, max: 180 }),
  });

  test('a layout written in words is read back as it was', () => {
    fc.assert(
      fc.property(layout, (numbers) => {
        expect(parseLayout(formatLayout(numbers))).toEqual(numbers);
      }),
    );
  });

  test.each([
    '70 x 4 1/2 x 30',
    '70x4.5x30',
    '70 X 4-1/2 X 30',
    '70° × 4 1/2" × 30°',
    ' 70 deg * 4.50 in * 30 deg ',
    '70 x 4½ x 30',
    '70 x 4,5 x 30',
    '70 by 4 1/2 by 30',
    '70by4.5by30',
    '70 / 4 1/2 / 30',
    '70/4½/30',
    '70/4.5/30',
    '70 degrees x 4 1/2 inch x 30 degrees',
    "70° x 4 1/2'' x 30°",
  ])('%j is the same layout', (text) => {
    expect(parseLayout(text)).toEqual({ drillingAngleDeg: 70, pinToPapIn: 4.5, valAngleDeg: 30 });
  });

  test.each(['', '70', '70 x 4 1/2', '70 x 4 x 30 x 2', '70 4.5 30', '70/4/1/2/30', '70/30'])(
    '%j is not three numbers',
    (text) => {
      const { code, faults } = inputErrorOf(() => parseLayout(text));
      expect(code).toBe('layout-text');
      expect(faults).toMatchObject([
        { field: 'layout', got: JSON.stringify(text), hint: expect.stringContaining('70 x 4 1/2 x 30') },
      ]);
    },
  );

  test('each number that cannot be used is named, all at once', () => {
    const { faults } = inputErrorOf(() => parseLayout('seventy x 45 x -30'));
    expect(faults.map(({ field, got }) => [field, got])).toEqual([
      ['layout: drilling angle', '"seventy"'],
      ['layout: pin-to-PAP', '"45"'],
      ['layout: VAL angle', '"-30"'],
    ]);
    expect(faults[1].rule).toBe('must be 0 to 6.75 in');
  });

  test('any text at all gives a layout within its limits or an InputError', () => {
    const text = fc.string({ unit: fc.constantFrom(...'0123456789 x./-°"in') });
    fc.assert(
      fc.property(text, (typed) => {
        try {
          const { drillingAngleDeg, pinToPapIn, valAngleDeg } = parseLayout(typed);
          expect(drillingAngleDeg >= 0 && drillingAngleDeg <= 180).toBe(true);
          expect(pinToPapIn >= 0 && pinToPapIn <= 6.75).toBe(true);
          expect(valAngleDeg >= 0 && valAngleDeg <= 180).toBe(true);
        } catch (error) {
          expect(error).toMatchObject({ name: 'InputError' });
        }
      }),
    );
  });
});
