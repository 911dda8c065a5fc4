import { describe, expect, test } from 'vitest';
import { exp } from '../../src/math/exp.js';
import { cube, fifth, power } from '../../src/math/power.js';
import { cos, cosNear, sin, sinNear } from '../../src/math/sin-cos.js';
import { seeded } from '../support/bodies.js';

/** Size of a unit in the last place of a double. */
const ulpOf = (value: number): number => 2 ** Math.max(-1074, Math.floor(Math.log2(Math.abs(value))) - 52);

/** Greatest difference from another function, in units in the last place, over angles or exponents of a range. */
function worstUlp(
  ours: (x: number) => number,
  theirs: (x: number) => number,
  from: number,
  to: number,
): number {
  const random = seeded(29);
  let worst = 0;
  for (let n = 0; n < 200_000; n++) {
    const x = from + (to - from) * random();
    const want = theirs(x);
    worst = Math.max(worst, Math.abs(ours(x) - want) / ulpOf(want));
  }
  return worst;
}

/*
 * Both sides err by less than one unit in the last place of the true value, so whole units apart they may be by one, where the
 * true value lies between two doubles.
 */
const ONE_APART = 1;

describe('own elementary functions agree with the engine’s to the last place', () => {
  test.each([
    { range: 'a step of the ball, ±π/4', from: -Math.PI / 4, to: Math.PI / 4 },
    { range: 'a launch and a spin phase, ±20 rad', from: -20, to: 20 },
    { range: 'any phase of a shot, ±10,000 rad', from: -1e4, to: 1e4 },
    { range: 'all that is reduced, ±1,000,000 rad', from: -1e6, to: 1e6 },
  ])('sine and cosine over $range', ({ from, to }) => {
    expect(worstUlp(sin, Math.sin, from, to)).toBeLessThanOrEqual(ONE_APART);
    expect(worstUlp(cos, Math.cos, from, to)).toBeLessThanOrEqual(ONE_APART);
  });

  test('sine and cosine without reduction, ±π/4', () => {
    expect(worstUlp((x) => sinNear(x), Math.sin, -Math.PI / 4, Math.PI / 4)).toBeLessThanOrEqual(ONE_APART);
    expect(worstUlp((x) => cosNear(x), Math.cos, -Math.PI / 4, Math.PI / 4)).toBeLessThanOrEqual(ONE_APART);
  });

  test('close to whole quarter turns, where most digits cancel', () => {
    for (let quarters = 1; quarters < 600_000; quarters += 997) {
      const angle = quarters * (Math.PI / 2);
      const [ours, theirs] = quarters & 1 ? [cos(angle), Math.cos(angle)] : [sin(angle), Math.sin(angle)];
      expect(Math.abs(ours - theirs) / ulpOf(theirs)).toBeLessThanOrEqual(ONE_APART);
    }
  });

  test.each([
    { range: 'film over its scale, −100 to 0', from: -100, to: 0 },
    { range: 'all that is no subnormal number', from: -708, to: 709 },
  ])('the exponential function over $range', ({ from, to }) => {
    expect(worstUlp(exp, Math.exp, from, to)).toBeLessThanOrEqual(ONE_APART);
  });

  test('the exponential function below the smallest normal number', () => {
    expect(worstUlp(exp, Math.exp, -745, -708)).toBeLessThanOrEqual(ONE_APART);
  });
});

describe('own powers agree with the engine’s', () => {
  // the engine's power and our products of two and of four roundings err by half a unit a rounding and half a unit
  test.each([
    { what: 'cubes', ours: cube, exponent: 3, apart: 2 },
    { what: 'fifth powers', ours: fifth, exponent: 5, apart: 3 },
  ])('$what of lengths, to $apart units in the last place', ({ ours, exponent, apart }) => {
    expect(worstUlp(ours, (x) => x ** exponent, 0.01, 10)).toBeLessThanOrEqual(apart);
    expect(ours(2)).toBe(2 ** exponent);
  });

  test.each([
    { what: 'finishes, of 200 to 8000 grit', x: (u: number) => 2000 / (200 + 7800 * u), exponent: 0.35 },
    { what: 'oil left after games', x: (u: number) => 1 - 0.02 * u, exponent: 40 },
    { what: 'oil left after part of a turn', x: (u: number) => 1 - 0.6 * u, exponent: 0.7 },
    { what: 'a root', x: (u: number) => 1 + u, exponent: 1 / 14 },
  ])('$what: to 2 units in the last place', ({ x, exponent }) => {
    const ours = (u: number): number => power(x(u), exponent);
    expect(worstUlp(ours, (u) => x(u) ** exponent, 0, 1)).toBeLessThanOrEqual(2);
  });

  test('the ends of their ranges', () => {
    expect([power(0, 0), power(0, 3), power(1, 1e9), power(7, 0)]).toEqual([1, 0, 1, 1]);
  });
});

test('the ends of their ranges', () => {
  expect(exp(0)).toBe(1);
  expect(exp(Number.NEGATIVE_INFINITY)).toBe(0);
  expect(exp(-1e4)).toBe(0);
  expect(exp(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
  expect(exp(Number.NaN)).toBeNaN();
  expect(sin(0)).toBe(0);
  expect(cos(0)).toBe(1);
  for (const f of [sin, cos]) for (const x of [Number.NaN, Number.POSITIVE_INFINITY]) expect(f(x)).toBeNaN();
  expect(sin(1e9)).toBe(Math.sin(1e9));
  expect(cos(-1e9)).toBe(Math.cos(1e9));
});
