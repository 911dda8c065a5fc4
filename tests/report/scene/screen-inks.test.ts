import { describe, expect, test } from 'vitest';
import { type Ink, PAPER, SERIES } from '../../../src/report/scene/scene.js';
import { SCREENS } from '../../../src/report/scene/screen-inks.js';
import { ciede2000, contrast, SIGHTS, seenBy } from '../../support/colour-vision.js';

test.each([
  // rows of table 1 of Sharma, Wu & Dalal, Color Res. Appl. 30, 21 (2005), from memory; four decimals are given
  [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
  [[50, 2.8361, -74.02], [50, 0, -82.7485], 3.4412],
  [[50, -0.9009, -85.5211], [50, 0, -82.7485], 1],
  [[50, 0, 0], [50, -1, 2], 2.3669],
  [[50, 2.49, -0.001], [50, -2.49, 0.0009], 7.1792],
  [[50, 2.49, -0.001], [50, -2.49, 0.0011], 7.2195],
  [[50, -0.001, 2.49], [50, 0.0009, -2.49], 4.8045],
  [[50, 2.5, 0], [50, 0, -2.5], 4.3065],
  [[50, 2.5, 0], [73, 25, -18], 27.1492],
  [[50, 2.5, 0], [61, -5, 29], 22.8977],
  [[50, 2.5, 0], [56, -27, -3], 31.903],
  [[50, 2.5, 0], [58, 24, 15], 19.4535],
  [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
  [[22.7233, 20.0904, -46.694], [23.0331, 14.973, -42.5619], 2.0373],
  [[90.8027, -2.0831, 1.441], [91.1528, -1.6435, 0.0447], 1.4441],
  [[2.0776, 0.0795, -1.135], [0.9033, -0.0636, -0.5514], 0.9082],
] as const)('CIEDE2000 of %j and %j is as published', (one, other, want) => {
  expect(ciede2000(one, other)).toBeCloseTo(want, 4);
  expect(ciede2000(other, one)).toBeCloseTo(want, 4);
});

/** Inks that carry no meaning by themselves: grounds, grid lines, fills that have an edge or a number in them. */
const SILENT = /^(paper|faint|shade|tone\d)$/;

describe.each(Object.entries({ ...SCREENS, paper: PAPER }))('%s', (name, inks) => {
  test('what means something stands out from the ground at 3:1', () => {
    const weak = (Object.keys(inks) as Ink[])
      .filter((ink) => !SILENT.test(ink))
      .filter((ink) => contrast(inks[ink], inks.paper) < 3);
    expect(weak).toEqual([]);
  });

  test('text stands out from every ground it may lie on at 4.5:1: numbers in a map’s cells too', () => {
    for (const text of ['ink', 'soft'] as const)
      expect(contrast(inks[text], inks.paper), text).toBeGreaterThan(4.5);
    for (const ground of ['shade', 'tone1', 'tone2', 'tone3', 'tone4', 'tone5'] as const)
      expect(contrast(inks.ink, inks[ground]), ground).toBeGreaterThan(4.5);
  });

  // what is compared in one picture, and the marks of one ball; on paper all of them are black, told apart by their signs
  test.skipIf(name === 'paper').each(SIGHTS)(
    'to %s eyes what stands in one picture differs by 15',
    (sight) => {
      for (const together of [
        [...SERIES, 'soft'],
        ['pin', 'pap', 'marker'],
      ] as readonly Ink[][])
        together.forEach((one, i) => {
          for (const other of together.slice(0, i))
            expect(
              ciede2000(seenBy(sight, inks[one]), seenBy(sight, inks[other])),
              `${one} and ${other}`,
            ).toBeGreaterThan(15);
        });
    },
  );
});
