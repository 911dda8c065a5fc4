import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { acos, asin, atan2 } from '../../src/math/atan.js';
import { exp, tanh } from '../../src/math/exp.js';
import { hypot } from '../../src/math/hypot.js';
import { ln } from '../../src/math/ln.js';
import { scoreOfShare, shareBelow } from '../../src/math/normal.js';
import { cube, fifth, power } from '../../src/math/power.js';
import { cos, cosNear, sin, sinNear, tan } from '../../src/math/sin-cos.js';
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

/** Values of many digits from another program: rows of arguments and the value. */
const VALUES = JSON.parse(
  readFileSync(new URL('elementary-values.json', import.meta.url), 'utf8'),
) as Readonly<Record<string, readonly (readonly number[])[]>>;

describe('own functions agree with values of many digits (mpmath)', () => {
  const inUlp = (error: number, want: number): number => error / ulpOf(want);
  const relative = (error: number, want: number): number => error / Math.abs(want);
  test.each([
    // the last digit of a quotient or a root on top of the polynomial's
    { name: 'asin', ours: asin, error: inUlp, most: 1 },
    { name: 'acos', ours: acos, error: inUlp, most: 1 },
    { name: 'atan2', ours: atan2, error: inUlp, most: 1 },
    { name: 'ln', ours: ln, error: inUlp, most: 1 },
    { name: 'tan', ours: tan, error: inUlp, most: 1 },
    { name: 'tanh', ours: tanh, error: inUlp, most: 1 },
    { name: 'hypot', ours: hypot, error: inUlp, most: 1 },
    // approximations, to what their sources state
    { name: 'scoreOfShare', ours: scoreOfShare, error: relative, most: 4e-3 },
    { name: 'shareBelow', ours: shareBelow, error: relative, most: 1.2e-7 },
  ])('$name', ({ name, ours, error, most }) => {
    const rows = VALUES[name] ?? [];
    expect(rows.length).toBeGreaterThan(7);
    for (const row of rows) {
      const [args, want] = [row.slice(0, -1), row[row.length - 1] as number];
      const off = Math.abs((ours as (...given: number[]) => number)(...args) - want);
      expect(off === 0 ? 0 : error(off, want), args.join()).toBeLessThanOrEqual(most);
    }
  });

  // theirs err by a unit, ours by one or two
  test.each([
    { name: 'asin', ours: asin, theirs: Math.asin, from: -1, to: 1 },
    { name: 'acos', ours: acos, theirs: Math.acos, from: -1, to: 1 },
    { name: 'tan', ours: tan, theirs: Math.tan, from: -1.57, to: 1.57 },
    { name: 'ln', ours: ln, theirs: Math.log, from: 1e-3, to: 1e4 },
    {
      name: 'a heading',
      ours: (x: number) => atan2(x, 2),
      theirs: (x: number) => Math.atan2(x, 2),
      from: -9,
      to: 9,
    },
    {
      name: 'an angle behind',
      ours: (x: number) => atan2(x, -2),
      theirs: (x: number) => Math.atan2(x, -2),
      from: -9,
      to: 9,
    },
  ])('$name over its range, beside the engine’s, to 2 units', ({ ours, theirs, from, to }) => {
    expect(worstUlp(ours, theirs, from, to)).toBeLessThanOrEqual(2);
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
  const ends = [0, -0, 1, -1, 3, -3];
  for (const y of ends) for (const x of ends) expect(atan2(y, x), `${y}, ${x}`).toBe(Math.atan2(y, x));
  for (const f of [asin, acos]) for (const x of [1.0001, -2, Number.NaN]) expect(f(x)).toBeNaN();
  expect([ln(0), ln(1), ln(Number.POSITIVE_INFINITY)]).toEqual([
    Number.NEGATIVE_INFINITY,
    0,
    Number.POSITIVE_INFINITY,
  ]);
  for (const x of [-1, Number.NaN]) expect(ln(x)).toBeNaN();
  expect([tanh(0), tanh(400), tanh(-400)]).toEqual([0, 1, -1]);
  expect([hypot(), hypot(0, 0), hypot(-3, 4)]).toEqual([0, 0, 5]);
});
