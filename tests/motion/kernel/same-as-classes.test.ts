import { expect, test } from 'vitest';
import { quantile } from '../../oracles/answer-error.js';
import { differences, noOilBack, noWear } from '../../oracles/class-differences.js';
import { expectLeanAsFull } from '../../support/lean-as-full.js';
import { randomShots } from '../../support/random-shots.js';

/*
 * The last digits are those of sine, cosine and the exponential; where a ball rolls and slips by turns they decide when. Samples lie
 * farther apart than those of the classes, which is where flare differs: thin oil counts by trapezoids between them.
 */
test('without oil on the ball the kernel and the classes do the same arithmetic', () => {
  const { pins, hookStart, flare } = differences(randomShots(200).map(noOilBack), 48);
  expect(quantile(pins, 0.5)).toBeLessThan(1e-13);
  expect(quantile(pins, 0.95)).toBeLessThan(1e-12);
  expect(quantile(pins, 1)).toBeLessThan(1e-6);
  expect(quantile(hookStart, 1)).toBeLessThan(0.015);
  expect(quantile(flare, 0.95)).toBeLessThan(0.01);
  expect(quantile(flare, 1)).toBeLessThan(0.025);
});

/* Places of rings lie elsewhere, at equal angles. */
test('with oil that does not wear off the ball, by at most 0.002 board, 0.015 ft of hook start, 0.025 in of flare', () => {
  const { pins, hookStart, flare } = differences(randomShots(200).map(noWear), 48);
  expect(quantile(pins, 0.5)).toBeLessThan(1e-4);
  expect(quantile(pins, 1)).toBeLessThan(0.002);
  expect(quantile(hookStart, 1)).toBeLessThan(0.015);
  expect(quantile(flare, 0.95)).toBeLessThan(0.01);
  expect(quantile(flare, 1)).toBeLessThan(0.025);
});

test('with oil that wears off, where places lie decides what a narrow crossing leaves: ever less, the finer they are', () => {
  const [coarse, fine] = [96, 480].map((places) => differences(randomShots(60), places).pins);
  expect(quantile(coarse, 0.95)).toBeLessThan(0.005);
  expect(quantile(fine, 0.95)).toBeLessThan(0.001);
  expect(quantile(fine, 1)).toBeLessThan(quantile(coarse, 1) / 3);
});

test('a lean shot is the full one with fewer columns, to the last bit, whatever was rolled before', () => {
  expectLeanAsFull(randomShots(12));
});
