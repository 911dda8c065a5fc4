import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../support/arbitraries.js'; // its seed
import { ANY_UNIT, isUnread, kindOfUnit, readNumber } from '../../../src/records/text/read-number.js';

const KG = 1 / 0.45359237; // lb, exact by definition
const KMH = 1 / 1.609344; // mph, exact by definition

/** Each text with the number it stands for, in the unit that the field has. */
const SINGLE: Readonly<Record<string, readonly (readonly [text: string, value: number])[]>> = {
  in: [
    ['4 7/8', 4.875],
    ['4½', 4.5],
    ['4 ½', 4.5],
    ['4-½', 4.5],
    ['¾', 0.75],
    ['4⅜ in', 4.375],
    ['4 1⁄2', 4.5],
    ['4-1/2', 4.5],
    ['4,5', 4.5],
    ['4.5', 4.5],
    ['.5', 0.5],
    [',5', 0.5],
    ['4 1/2 inch', 4.5],
    ['4 1/2 inches', 4.5],
    ['4 1/2”', 4.5],
    ["4 1/2''", 4.5],
    ['4 1/2’’', 4.5],
    ['4 1/2″', 4.5],
    ['5 1/8"', 5.125],
    ['12,7 cm', 5],
    ['127 mm', 5],
    ['2,530', 2.53],
    ['+3/8', 0.375],
    ['up 3/8', 0.375],
    ['3/8 up', 0.375],
    ['3/8 in up', 0.375],
    ['Up 3/8"', 0.375],
    ['-1/4', -0.25],
    ['- 1/4', -0.25],
    ['−1/4', -0.25],
    ['–1/4', -0.25],
    ['−¼', -0.25],
    ['1/4 down', -0.25],
    ['1/4 in Down', -0.25],
    ['down 1/4', -0.25],
    ['\u00a04\u2009 1/2\u202f', 4.5],
  ],
  mph: [
    ['17.5', 17.5],
    ['17,5', 17.5],
    ['17.5 mph', 17.5],
    ['17½', 17.5],
    ['27,5 km/h', 27.5 * KMH],
    ['27 kph', 27 * KMH],
    ['27 kmh', 27 * KMH],
    ['7,5 m/s', 7.5 * 3.6 * KMH],
  ],
  'g/cc': [
    ['2.85', 2.85],
    ['2,85 g/cm3', 2.85],
    ['2.85g/cc', 2.85],
    ['2.85 g/cm³', 2.85],
    ['2.85 g/cm^3', 2.85],
    ['2850 kg/m3', 2.85],
    ['2,850 kg/m³', 2.85],
    ['2,850 g/cc', 2.85],
  ],
  lb: [
    ['15', 15],
    ['15lb', 15],
    ['15 lbs', 15],
    ['15 lbs.', 15],
    ['15 pound', 15],
    ['15 Pounds', 15],
    ['15#', 15],
    ['6,8 kg', 6.8 * KG],
    ['6.8kg', 6.8 * KG],
    ['240 oz', 15],
    ['15 lb 4 oz', 15.25],
    ['15lbs 4oz', 15.25],
    ['15 pounds 4 ounces', 15.25],
    ['15 lb, 4 oz', 15.25],
    ['15# 4½ oz', 15.28125],
  ],
  degrees: [
    ['45', 45],
    ['14°', 14],
    ['14º', 14],
    ['45 deg', 45],
    ['45 degrees', 45],
  ],
  rpm: [
    ['325', 325],
    ['480 rpm', 480],
  ],
  oz: [
    ['2,5', 2.5],
    ['3 ounces', 3],
  ],
  grit: [
    ['2000', 2000],
    ['2000 grit', 2000],
    ['2,000', 2000],
  ],
  ft: [
    ['41', 41],
    ["41'", 41],
    ['41 feet', 41],
    ['41 ft 6 in', 41.5],
    ['41\' 6"', 41.5],
    ['12.192 m', 40],
  ],
  boards: [
    ['22', 22],
    ['22 boards', 22],
  ],
  games: [['4 games', 4]],
  [ANY_UNIT]: [['3 cm', 3]],
};

describe('readNumber: what people type is one number', () => {
  for (const [unit, rows] of Object.entries(SINGLE))
    test.each(rows)(`${unit}: %j is %d`, (text, value) => {
      const read = readNumber(text, kindOfUnit(unit));
      if (isUnread(read)) throw new Error(`not read: ${read.hint}`);
      expect(read.value).toBeCloseTo(value, 12);
      expect(read).toMatchObject({ halfRange: null, isAbout: false });
    });
});

// biome-ignore format: one text a line
const RANGES: readonly (readonly [text: string, unit: string, middle: number, half: number])[] = [
  ['40-50', 'degrees', 45, 5],
  ['40–50', 'degrees', 45, 5],
  ['40 - 50', 'degrees', 45, 5],
  ['40 to 50', 'degrees', 45, 5],
  ['40..50', 'degrees', 45, 5],
  ['40°-50°', 'degrees', 45, 5],
  ['45 ± 5', 'degrees', 45, 5],
  ['45+/-5', 'degrees', 45, 5],
  ['17-18 mph', 'mph', 17.5, 0.5],
  ['17 mph to 18 mph', 'mph', 17.5, 0.5],
  ['17 mph - 18', 'mph', 17.5, 0.5],
  ['17,5-18,5', 'mph', 18, 0.5],
  ['32.18688 to 48.28032 km/h', 'mph', 25, 5],
  ['4 1/2 ± 1/4 in', 'in', 4.5, 0.25],
  ['4-5', 'in', 4.5, 0.5],
  ['4-4 1/2', 'in', 4.25, 0.25],
  ['4-1/2-5', 'in', 4.75, 0.25],
  ['4-1/4 to 4-3/4', 'in', 4.5, 0.25],
  ['3½-4½', 'in', 4, 0.5],
  ['1/4-1/2', 'in', 0.375, 0.125],
  ['1/4-1/2 down', 'in', -0.375, 0.125],
  ['1/4 ± 1/8 down', 'in', -0.25, 0.125],
  ['-1/4 to 1/8', 'in', -0.0625, 0.1875],
  ['1/4 down to 1/8 up', 'in', -0.0625, 0.1875],
];

test.each(RANGES)(
  'readNumber: %j in %s is a range around %d, half as wide as %d',
  (text, unit, middle, half) => {
    const read = readNumber(text, kindOfUnit(unit));
    if (isUnread(read)) throw new Error(`not read: ${read.hint}`);
    expect(read.value).toBeCloseTo(middle, 12);
    expect(read.halfRange).toBeCloseTo(half, 12);
  },
);

// factors exact by definition: 25.4 mm, 1.609344 km, 0.45359237 kg
// biome-ignore format: one answer a line
test.each([
  ['127', 'mm', 'in', 5],
  ['-12.7', 'mm', 'in', -0.5],
  ['12.7 mm down', 'mm', 'in', -0.5],
  ['5"', 'mm', 'in', 5],
  ['20 mph', 'km/h', 'mph', 20],
  ['32.18688', 'km/h', 'mph', 20],
  ['6.80388555', 'kg', 'lb', 15],
  ['15 lb', 'kg', 'lb', 15],
])('%j, asked for in %s, is %s: %d', (text, bare, wanted, want) => {
  const read = readNumber(text, { bare, wanted });
  expect(isUnread(read) ? null : read.value).toBeCloseTo(want, 12);
});

test.each(['', 'fast', '20 kg', '20 furlongs', '-5 mm down', 'mm', '5 mm mm'])('%j is no length', (text) => {
  expect(isUnread(readNumber(text, { bare: 'mm', wanted: 'in' }))).toBe(true);
});

test.each(['~45', '≈ 45', 'about 45', 'About 45°', 'around 45', 'approx. 45', 'ca. 45', 'roughly 45'])(
  'readNumber: %j is 45 or so',
  (text) => {
    expect(readNumber(text, kindOfUnit('degrees'))).toEqual({ value: 45, halfRange: null, isAbout: true });
  },
);

// biome-ignore format: one text a line
test.each([
  ['0-1/2', 'in', 'one number or a range'],
  ['4-1/2', 'degrees', 'lesser number'], // no mixed number but in inches, and no range from 4 to 1/2
  ['50-40', 'degrees', 'lesser number'],
  ['1,500', 'frames', 'thousands or for decimals'],
  ['20 kg', 'mph', 'kg is no unit of a speed'],
  ['5 mph', 'games', 'without a unit'],
  ['-1/4 down', 'in', 'not both'],
  ['+1/4 down', 'in', 'not both'],
  ['5 1/0', 'in', 'divided by 0'],
])('readNumber: %j in %s is refused: %s', (text, unit, hint) => {
  expect(readNumber(text, kindOfUnit(unit))).toMatchObject({ hint: expect.stringContaining(hint) });
});

test.each([
  '',
  'up',
  'down',
  '1/4 left',
  '--3',
  'in',
  'fast',
  'fast0',
  '4 1',
  '-1/4-1/8',
  '1.2.3',
  '1/2/3',
  '45-',
  '±5',
  '~',
  'about',
  '5 in in',
  '1e3',
  '0x10',
  'Infinity',
])('readNumber: %j is no number', (text) => {
  expect(isUnread(readNumber(text, kindOfUnit('in')))).toBe(true);
});

describe('readNumber: what is written is read back', () => {
  const units = fc.constantFrom('in', 'mph', 'lb', 'degrees', 'rpm', 'oz', 'ft', 'boards');
  const hundredths = fc.integer({ min: 0, max: 99_900 }).map((n) => n / 100);
  const sign = fc.constantFrom(['.', '-'], [',', '−']);

  test('a number with a decimal point or a decimal comma, with either minus', () => {
    fc.assert(
      fc.property(units, hundredths, sign, fc.boolean(), (unit, size, [point, minus], isNegative) => {
        const text = `${isNegative ? minus : ''}${String(size).replace('.', point)}`;
        expect(readNumber(text, kindOfUnit(unit))).toEqual({
          value: isNegative ? -size : size,
          halfRange: null,
          isAbout: false,
        });
      }),
    );
  });

  test('a range, by its ends or by its middle', () => {
    fc.assert(
      fc.property(units, hundredths, hundredths, sign, (unit, a, b, [point]) => {
        fc.pre(a !== b);
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const comma = (value: number): string => String(value).replace('.', point);
        for (const text of [`${comma(low)} to ${comma(high)}`, `${comma(low)}–${comma(high)}`]) {
          const read = readNumber(text, kindOfUnit(unit));
          if (isUnread(read)) throw new Error(`not read: ${text}`);
          expect(read.value).toBeCloseTo((low + high) / 2, 9);
          expect(read.halfRange).toBeCloseTo((high - low) / 2, 9);
        }
        expect(readNumber(`${comma(low)} +/- ${comma(high)}`, kindOfUnit(unit))).toEqual({
          value: low,
          halfRange: high,
          isAbout: false,
        });
      }),
    );
  });

  test('any text at all is a finite number or refused, and a range is not negative', () => {
    const text = fc.string({
      unit: fc.constantFrom(...'0123456789 .,/-−½"°~±', 'in', 'up', 'down', 'to', 'lb'),
    });
    fc.assert(
      fc.property(text, units, (typed, unit) => {
        const read = readNumber(typed, kindOfUnit(unit));
        if (isUnread(read)) return;
        expect(Number.isFinite(read.value)).toBe(true);
        expect(read.halfRange === null || read.halfRange >= 0).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});
