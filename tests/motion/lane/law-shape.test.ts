import { describe, expect, test } from 'vitest';
import { asExponential } from '../../../src/motion/lane/law-shape.js';
import { frictionUnder } from '../../../src/motion/lane/surface.js';

const LAW = { oiled: 0.025, dry: 0.2, filmScale: 3.2 };
const FILMS = Float64Array.of(0, 0.01, 1, 3.2, 12, 60);

/** Friction under each film, by a law of some shape. */
const frictions = (shape: number): number[] =>
  Array.from(asExponential(FILMS, shape, LAW.filmScale), (film) => frictionUnder(LAW, film));
const between = (share: (scales: number) => number): number[] =>
  Array.from(FILMS, (film) => LAW.oiled + (LAW.dry - LAW.oiled) * share(film / LAW.filmScale));

describe('asExponential', () => {
  test.each([
    { shape: 0, name: 'an exponential', source: 'exp(−f)', share: (f: number) => Math.exp(-f) },
    { shape: 1, name: 'a hyperbola', source: '1/(1 + f)', share: (f: number) => 1 / (1 + f) },
    { shape: -1, name: 'a straight line', source: 'max(0, 1 − f)', share: (f: number) => Math.max(0, 1 - f) },
    { shape: 0.5, name: 'a square', source: '1/(1 + f/2)²', share: (f: number) => (1 + f / 2) ** -2 },
  ])('a shape of $shape is $name: $source', ({ shape, share }) => {
    for (const [i, want] of between(share).entries()) expect(frictions(shape)[i]).toBeCloseTo(want, 9);
  });

  test('shapes near 0 come to the exponential, and all are alike in thin oil', () => {
    for (const [i, want] of frictions(0).entries()) expect(frictions(1e-6)[i]).toBeCloseTo(want, 6);
    for (const shape of [-0.9, 0.5, 3]) expect(frictions(shape)[1]).toBeCloseTo(frictions(0)[1], 5); // second order in 0.003
  });

  test('thicker oil never grips more, and a film that is there keeps being one', () => {
    for (const shape of [-1.5, -0.5, 0.7, 4]) {
      const film = asExponential(FILMS, shape, LAW.filmScale);
      for (let i = 1; i < film.length; i++) expect(film[i]).toBeGreaterThanOrEqual(film[i - 1]);
      expect(film.every(Number.isFinite)).toBe(true);
      expect(film[0]).toBeCloseTo(0, 12);
    }
  });
});
