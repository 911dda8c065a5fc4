import { expect, test } from 'vitest';
import { uniformLane } from '../support/dry-lanes.js';
import { energyRise } from '../support/energy-rise.js';
import { randomShots } from '../support/random-shots.js';
import { energyIsTheSteps, framesAgree, mirrorImagesAgree } from './shots-hold.js';

test('random shots: energy rises by no more than the step errs, which half the step shows', () => {
  expect.hasAssertions();
  energyIsTheSteps(400);
});

test('random shots on hardly any friction, which slide all the way: energy never rises', () => {
  for (const shot of randomShots(40)) {
    const { byStep, bySlip } = energyRise({ ...shot, surface: uniformLane(0.005) }, 0.008);
    expect(byStep).toBeLessThan(1e-12);
    expect(bySlip).toBe(0);
  }
});

test('random shots and their mirror images are mirror images', () => {
  expect.hasAssertions();
  mirrorImagesAgree(200);
});

test('a ball described in any other frame rolls the same shot', () => {
  expect.hasAssertions();
  framesAgree(200);
});
