import { expect, test } from 'vitest';
import { differences, noOilBack, noWear } from '../../oracles/class-differences.js';
import { randomShots } from '../../support/random-shots.js';

/* A handful of the shots of `same-as-classes.test.ts`, quick enough to be asked of every mutant. */

const SHOTS = randomShots(8, 11, 3);
const most = (values: readonly number[]): number => values[values.length - 1];

test('a few shots without oil on the ball: the kernel and the classes do the same arithmetic', () => {
  const { pins, hookStart, flare } = differences(SHOTS.map(noOilBack), 48);
  expect(most(pins)).toBeLessThan(1e-9);
  expect(most(hookStart)).toBeLessThan(0.015);
  expect(most(flare)).toBeLessThan(0.01);
});

test.each([
  { name: 'that does not wear off', change: noWear, boards: 0.001 },
  { name: 'that wears off', change: <T>(shot: T): T => shot, boards: 0.02 },
])('a few shots with oil $name: the kernel and the classes find the same way', ({ change, boards }) => {
  const { pins, hookStart, flare } = differences(SHOTS.map(change), 96);
  expect(most(pins)).toBeLessThan(boards);
  expect(most(hookStart)).toBeLessThan(0.03);
  expect(most(flare)).toBeLessThan(0.02);
});
