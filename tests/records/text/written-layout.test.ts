import { describe, expect, test } from 'vitest';
import { readLayout } from '../../../src/records/text/written-layout.js';
import { inputErrorOf } from '../../support/faults-of.js';

const angles = (
  drillingAngleDeg: number,
  pinToPapIn: number,
  valAngleDeg: number,
  mark: string | null = null,
) => ({
  notation: 'angles',
  numbers: { drillingAngleDeg, pinToPapIn, valAngleDeg },
  mark,
});
const distances = (pinToPapIn: number, markerToPapIn: number, pinBufferIn: number, pinSide = 'above') => ({
  notation: 'distances',
  numbers: { pinToPapIn, markerToPapIn, pinBufferIn },
  pinSide,
});
const buffer = (
  drillingAngleDeg: number,
  pinToPapIn: number,
  pinBufferIn: number,
  mark: string | null = null,
  pinSide = 'above',
) => ({
  notation: 'angle-and-buffer',
  numbers: { drillingAngleDeg, pinToPapIn, pinBufferIn },
  mark,
  pinSide,
});

describe('readLayout', () => {
  // biome-ignore format: one layout a line
  test.each([
    ['70 x 4 1/2 x 30', angles(70, 4.5, 30)],
    ['70° × 4 1/2" × 30°', angles(70, 4.5, 30)],
    ['5° x 4 x 5°', angles(5, 4, 5)],
    ['70 x 114.3 mm x 30', angles(70, 4.5, 30)],
    ['70 cg x 4 1/2 x 30', angles(70, 4.5, 30, 'cg')],
    ['70 to the mass bias x 4 1/2 x 30', angles(70, 4.5, 30, 'mass-bias')],
    ['5 mb x 4 1/2 x 5', angles(5, 4.5, 5, 'mass-bias')],
    ['70 x 4½ x 30', angles(70, 4.5, 30)],
    ['70 x 4,5 x 30', angles(70, 4.5, 30)],
    ['70 by 4-1/2 by 30', angles(70, 4.5, 30)],
    ['70 cg / 4 1/2 / 30', angles(70, 4.5, 30, 'cg')],
    ['70/4.5/30', angles(70, 4.5, 30)],
    ['4 1/2 / 3 3/8 / 2 below', distances(4.5, 3.375, 2, 'below')],
    ['4½ × 3⅜ × 2', distances(4.5, 3.375, 2)],
    ["4 1/2'' by 3 3/8'' by 2''", distances(4.5, 3.375, 2)],
    ['11,43 cm x 8,5725 cm x 5,08 cm', distances(4.5, 3.375, 2)],
    ['4 1/2 x 3 3/8 x 2', distances(4.5, 3.375, 2)],
    ['4 1/2 in x 3 3/8 in x 2 in', distances(4.5, 3.375, 2)],
    ['127 mm x 76.2 mm x 50.8 mm', distances(5, 3, 2)],
    ['12.7 cm x 7.62 cm x 5.08 cm below', distances(5, 3, 2, 'below')],
    ['4 1/2 x 3 3/8 x 2, pin below', distances(4.5, 3.375, 2, 'below')],
    ['4 1/2 x 3 3/8 x 2 in buffer', distances(4.5, 3.375, 2)],
    ['60 x 4.5 x 3 in buffer', buffer(60, 4.5, 3)],
    ['60 x 4.5 x buffer 3', buffer(60, 4.5, 3)],
    ['60 x 4 1/2 x 3"', buffer(60, 4.5, 3)],
    ['60° x 4 1/2 in x 76,2 mm', buffer(60, 4.5, 3)],
    ['5° x 4 x 2 pin buffer', buffer(5, 4, 2)],
    ['60 mb x 4 1/2 x 2 in', buffer(60, 4.5, 2, 'mass-bias')],
    ['60 x 4 1/2 x 2 in below', buffer(60, 4.5, 2, null, 'below')],
    ['70 degrees x 4 1/2 inches x 30 degrees', angles(70, 4.5, 30)],
    ['5 x 4 x 5 degree', angles(5, 4, 5)],
    ['6 3/4 x 4 x 30', angles(6.75, 4, 30)],
    ['70 x 4 x 5', angles(70, 4, 5)],
    ['6 3/4 x 4 x 6 3/4', distances(6.75, 4, 6.75)],
    ['70cg x 4.5 x 30', angles(70, 4.5, 30, 'cg')],
    ['70 to mb x 4.5 x 30', angles(70, 4.5, 30, 'mass-bias')],
    ['70 to the mass-bias mark x 4.5 x 30', angles(70, 4.5, 30, 'mass-bias')],
    ['4.5x3.375x2,below', distances(4.5, 3.375, 2, 'below')],
    ['4.5 x 3.375 x 2 , pin below', distances(4.5, 3.375, 2, 'below')],
    ['4.5 x 3.375 x 2 Above', distances(4.5, 3.375, 2)],
    ['60x4.5x2buffer', buffer(60, 4.5, 2)],
    ['60 x 4.5 x pin buffer 2', buffer(60, 4.5, 2)],
    ['6 3/4 x 4.5 x 2 buffer', distances(6.75, 4.5, 2)],
  ])('%s', (text, want) => {
    const read = readLayout(text);
    expect(read.notation).toBe(want.notation);
    for (const [key, value] of Object.entries(want.numbers))
      expect(read.numbers[key as never]).toBeCloseTo(value, 12);
    const { numbers: _, ...rest } = want;
    expect(read).toMatchObject(rest);
  });

  test.each(['70', '70 x 4', '70 x 4 1/2 x 30 x 2', '', '70/4/1/2/30'])(
    '%j is neither; both notations are shown',
    (text) => {
      const { code, faults } = inputErrorOf(() => readLayout(text));
      expect(code).toBe('layout-text');
      expect(faults).toMatchObject([{ field: 'layout', rule: expect.stringContaining('three numbers') }]);
      expect(faults[0].hint).toMatch(
        /70 x 4 1\/2 x 30.*4 1\/2 x 3 3\/8 x 2.*in inches or with mm.*70 x 4 1\/2 x 2 in/,
      );
    },
  );

  test.each([
    ['70 x 4 1/2 x 8 in', 'layout: pin buffer'],
    ['200 x 4 1/2 x 2 in', 'layout: drilling angle'],
    ['4 1/2 in x 3 x 30°', 'layout: drilling angle'],
    ['70 x 4.5° x 30', 'layout: pin-to-PAP'],
    ['100 mm x 90 mm x 30', 'layout: pin buffer'],
    ['70 x 4 1/2 cg x 30', 'layout: pin-to-PAP'],
    ['cg 70 x 4 1/2 x 30', 'layout: drilling angle'],
    ['60 x 4 1/2 x 2 buffer 3', 'layout: VAL angle'],
  ])('%j: a length is never taken for an angle, nor an angle for a length', (text, field) => {
    expect(inputErrorOf(() => readLayout(text)).faults).toMatchObject([{ field }]);
  });

  test('numbers out of range are told by what they are', () => {
    expect(inputErrorOf(() => readLayout('70 x 45 x 30')).faults).toMatchObject([
      { field: 'layout: pin-to-PAP' },
    ]);
    expect(inputErrorOf(() => readLayout('5 in x 15 in x 2 in')).faults).toMatchObject([
      { field: 'layout: marker-to-PAP' },
    ]);
  });

  test('a layout in angles says by its VAL angle where the pin lies', () => {
    const { code, faults } = inputErrorOf(() => readLayout('70 x 4 1/2 x 30 below'));
    expect(code).toBe('layout-text');
    expect(faults).toMatchObject([
      {
        field: 'layout',
        rule: 'must not say above or below in angles',
        hint: expect.stringContaining('VAL angle above 90'),
      },
    ]);
  });
});
