import { expect, test } from 'vitest';
import { sharedFits } from '../../src/prepare/shared-fits.js';
import { ASKED } from './blind-case.js';
import { blindBowler, RANKED, ranks } from './learning.js';
import { evenness, summary } from './learning-page.js';
import { blindOtherLane, LANE_LOGS } from './other-lanes.js';
import { blindReadAim } from './read-aims.js';

/* A smaller run of the study that writes LEARNING.md. */

const fitter = sharedFits();

test('after thirty shots blind bowlers’ next nights are foretold far better, on the logged ball and on another, in bands that hold', () => {
  const found = Array.from({ length: 24 }, (_, place) =>
    blindBowler(place, [[], [10, 10, 10]], {}, fitter),
  ).filter((each) => each !== null);
  expect(found.length).toBeGreaterThan(10);
  for (const which of ['logged', 'other'] as const) {
    const [before, after] = [0, 1].map((log) => summary(found.map((each) => each[log][which][0])));
    expect(after.error).toBeLessThan(0.6 * before.error);
    expect(after.halfWidth).toBeLessThan(0.6 * before.halfWidth);
    const all = summary(found.flatMap((each) => ASKED.map((_, i) => each[1][which][i])));
    expect(all.covered).toBeGreaterThan(0.85);
  }
});

test('two nights on another lane foretell one on this lane nearer, and two here nearer still, in bands that hold', () => {
  const found = Array.from({ length: 24 }, (_, place) => blindOtherLane(place, fitter)).filter(
    (each) => each !== null,
  );
  expect(found.length).toBeGreaterThan(7);
  const pinsAfter = (here: number, there: number) => {
    const log = LANE_LOGS.findIndex((each) => each.here === here && each.there === there);
    return summary(found.map((each) => each[log][0]));
  };
  const [none, elsewhere, here] = [pinsAfter(0, 0), pinsAfter(0, 2), pinsAfter(2, 0)];
  expect(elsewhere.error).toBeLessThan(0.85 * none.error);
  expect(elsewhere.halfWidth).toBeLessThan(0.85 * none.halfWidth);
  expect(here.halfWidth).toBeLessThan(elsewhere.halfWidth);
  const all = summary(found.flatMap((each) => each.slice(1).flat()));
  expect(all.covered).toBeGreaterThan(0.85);
});

test('who reads the arrows a board high, in the log and of the night to come, is foretold as near as others', () => {
  const twist = { bias: { arrowsBoard: 1 } };
  const found = Array.from({ length: 24 }, (_, place) => blindReadAim(place, twist, fitter)).filter(
    (each) => each !== null,
  );
  expect(found.length).toBeGreaterThan(10);
  const [exact, read] = (['takenForExact', 'asRead'] as const).map((which) =>
    summary(found.map((each) => each[which])),
  );
  expect(read.covered).toBeGreaterThan(0.8);
  expect(read.error).toBeLessThan(0.7 * exact.error);
});

test('bands of what is learned hold as many truths as they say, where all is as the fit takes it to be', () => {
  const found = Array.from({ length: 60 }, (_, place) => ranks(place, fitter)).filter(
    (each) => each !== null,
  );
  expect(found.length).toBeGreaterThan(30);
  for (const [i] of RANKED.entries()) {
    const { chance, covered } = evenness(found.map((each) => each[i]));
    expect(chance).toBeGreaterThan(1e-4); // six numbers: by luck once in some two thousand runs
    expect(covered[2]).toBeGreaterThan(0.75); // over three standard errors below 0.9
  }
});
