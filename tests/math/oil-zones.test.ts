import { expect, test } from 'vitest';
import { greatestFilm, type OilZone } from '../../src/math/oil-zones.js';

const zone: OilZone = { fromX: 2, toX: 6, fromY: 10, toY: 30, film: 40, filmEnd: 20 };

test.each([
  { name: 'halfway down a zone the film is halfway', x: 4, y: 20, want: 30 },
  { name: 'its edges belong to it', x: 2, y: 30, want: 20 },
  { name: 'beside it there is none', x: 1.9, y: 20, want: 0 },
  { name: 'past it there is none', x: 4, y: 30.1, want: 0 },
])('greatestFilm: $name', ({ x, y, want }) => expect(greatestFilm([zone], x, y)).toBeCloseTo(want, 12));

test('greatestFilm: where zones overlap the thicker counts, whatever their order', () => {
  const flat: OilZone = { ...zone, film: 25, filmEnd: 25 };
  for (const zones of [
    [zone, flat],
    [flat, zone],
  ]) {
    expect(greatestFilm(zones, 4, 12)).toBeCloseTo(38, 12);
    expect(greatestFilm(zones, 4, 28)).toBeCloseTo(25, 12);
  }
});
