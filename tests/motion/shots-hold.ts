import fc from 'fast-check';
import { expect } from 'vitest';
import { BOARD } from '../../src/base/constants.js';
import { ANSWER_STEP } from '../../src/motion/shot/answer-step.js';
import { quantile, rollRandom } from '../oracles/answer-error.js';
import { rotation } from '../support/arbitraries.js';
import { energyRise } from '../support/energy-rise.js';
import { mirroredShot, turnedShot } from '../support/moved-shots.js';
import { type RandomShot, randomShots } from '../support/random-shots.js';

/*
 * What holds of every shot, whoever bowls it, by how many are tried: some with each run of the tests, a hundred thousand in
 * `npm run check:slow`.
 */

/** Slip that counts as none once a ball has rolled, m/s, and the rounding of energies beside it. */
const NO_SLIP = 1.01e-6;

const most = (values: readonly number[]): number => values.reduce((a, b) => Math.max(a, b), 0);
const ascending = (values: readonly number[]): readonly number[] => [...values].sort((a, b) => a - b);

/**
 * Energy (some 300 J) rises by what the step errs, and where a slip too small to count is left out, by that slip. The step's share falls
 * with the fourth power of the step, but for the few shots in which a ball grips and slips by turns: there steps end at the push that ends
 * the slip, and halving the step still leaves less than a quarter.
 */
export function energyIsTheSteps(count: number): void {
  const shots = randomShots(count);
  const [coarse, fine] = [0.008, 0.004].map((step) => {
    const rises = shots.map((shot) => energyRise(shot, step));
    expect(most(rises.map(({ bySlip }) => bySlip))).toBeLessThan(NO_SLIP);
    return ascending(rises.map(({ byStep }) => byStep));
  });
  for (const share of [0.5, 0.75, 0.9]) {
    const order = Math.log2(quantile(coarse, share) / quantile(fine, share));
    expect(Math.abs(order - 4), `order ${order} at quantile ${share}`).toBeLessThan(0.2);
  }
  expect(most(fine)).toBeLessThan(most(coarse) / 4);
  expect(most(coarse)).toBeLessThan(0.02);
}

/**
 * How far two shots that should end in one place, or in its mirror image, end apart at the pins, m. A shot in the gutter ends with the
 * first step past the edge, which may be another one: of these only the outcome is compared.
 */
function apart(one: RandomShot, other: RandomShot, sign: 1 | -1): number {
  const [a, b] = [one, other].map((shot) => {
    const { outcome, x, y } = rollRandom(shot, { step: ANSWER_STEP });
    return { outcome, x: x[x.length - 1], y: y[y.length - 1] };
  });
  expect(b.outcome).toBe(a.outcome);
  return a.outcome === 'pins' ? Math.hypot(b.x - sign * a.x, b.y - a.y) : 0;
}

/**
 * Rounding moves most shots by less than a millionth of a millimetre. Where a ball grips and slips by turns rounding decides when, which
 * is worth as much as the step errs there.
 */
function expectRounding(distances: readonly number[]): void {
  const sorted = ascending(distances);
  expect(quantile(sorted, 0.9)).toBeLessThan(1e-12);
  expect(quantile(sorted, 0.98)).toBeLessThan(1e-9);
  expect(most(sorted)).toBeLessThan(0.05 * BOARD);
}

/** A left-hander's shot with the mirrored ball on the mirrored lane is the right-hander's in a mirror. */
export const mirrorImagesAgree = (count: number): void =>
  expectRounding(randomShots(count).map((shot) => apart(shot, mirroredShot(shot), -1)));

/** How the frame lies in which a ball is described changes nothing. */
export function framesAgree(count: number): void {
  const turns = fc.sample(rotation, { numRuns: count, seed: 4297 });
  expectRounding(randomShots(count).map((shot, i) => apart(shot, turnedShot(shot, turns[i]), 1)));
}
