import { expect, test } from 'vitest';
import { energyIsTheSteps, framesAgree, mirrorImagesAgree } from './shots-hold.js';

/** Some minutes each on one core. */
const MANY = 100_000;

test('energy rises by no more than the step errs, which half the step shows', () => {
  expect.hasAssertions();
  energyIsTheSteps(MANY);
});

test('a shot and its mirror image are mirror images', () => {
  expect.hasAssertions();
  mirrorImagesAgree(MANY);
});

test('a ball described in another frame rolls the same shot', () => {
  expect.hasAssertions();
  framesAgree(MANY);
});
