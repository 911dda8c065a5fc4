import { expect, test } from 'vitest';
import { type Ensemble, fitEnsemble } from '../../src/ball/core/ensemble.js';
import { coresOf } from '../../src/prepare/cores-of.js';
import { type CoreFitter, fitCores } from '../../src/prepare/fit-cores.js';
import type { PublishedBall } from '../../src/records/schemas/ball.js';
import { plainBall } from '../support/problems.js';
import { type Refused, refusalOf } from '../support/refusal-of.js';
import { said } from '../support/said.js';

const { coreShape: _, ...unshaped } = { ...(plainBall as PublishedBall), coreShape: undefined };
const ballOf = (given: Partial<PublishedBall>): PublishedBall => ({ ...unshaped, ...given });

test('fitCores: a symmetric ball of unknown core gets as many plain cores as lobed ones', () => {
  const bodies = fitCores(ballOf({}), 'moment', 64);
  expect(bodies.length).toBe(64);
  expect(bodies.filter(({ core }) => core.length === 3).length).toBe(32); // foot, flange and head
  expect(bodies.filter(({ core }) => core.length === 5).length).toBe(32); // a trunk and four noses
});

test('fitCores: where one family has too few, the other stands in', () => {
  const noLobed: CoreFitter = (published, count): Ensemble =>
    fitEnsemble(published, published.family === 'lobed' ? 3 : count);
  const bodies = fitCores(ballOf({}), 'moment', 64, noLobed);
  expect(bodies.length).toBe(64);
  expect(bodies.filter(({ core }) => core.length === 5).length).toBe(3);
});

test('coresOf: fewer cores than asked for are told, and the numbers are not blamed on the maker', () => {
  const few: CoreFitter = (published) => fitEnsemble(published, 7);
  const { bodies, warnings } = coresOf(ballOf({ coreShape: 'plain' }), 'right', 'moment', 64, few);
  expect(bodies.length).toBe(7);
  expect(said(warnings)).toMatch(/Only 7 cores .* too few to say/);
  expect(said(warnings)).not.toMatch(/maker/);
  expect(coresOf(ballOf({ coreShape: 'plain' }), 'right', 'moment', 64).warnings).toEqual([]);
});

test.each([
  { lb: 14, rg: 2.5, says: true },
  { lb: 15, rg: 2.45, says: true },
  { lb: 14, rg: 2.56, says: false },
  { lb: 15, rg: 2.52, says: false },
])('coresOf: $lb lb with RG $rg: an unusual cover or filler is warned of ($says)', ({ lb, rg, says }) => {
  const ball = ballOf({ weightLb: lb, rgIn: rg, differentialIn: 0.05 });
  const { bodies, warnings } = coresOf(ball, 'right', 'moment', 64);
  expect(bodies.length).toBe(64);
  expect(/edge of what is usually built/.test(said(warnings))).toBe(says);
});

/** What is said of a ball that cannot be. */
const refused = (ball: PublishedBall): Refused => refusalOf(() => fitCores(ball, 'moment', 64));

const impossible: readonly { name: string; ball: PublishedBall; field: string; why: RegExp }[] = [
  {
    name: 'an RG too low for the weight',
    ball: ballOf({ weightLb: 14, rgIn: 2.4, differentialIn: 0.03, coreShape: 'plain' }),
    field: 'ball.rgIn',
    why: /a plain core.* denser than 3\.8 g\/cc/,
  },
  {
    name: 'an RG far too low for the weight',
    ball: ballOf({ weightLb: 11, rgIn: 2.45, differentialIn: 0.05 }),
    field: 'ball.rgIn',
    why: /a plain or lobed core.* denser than 3\.8 g\/cc/,
  },
  {
    name: 'an RG too high for the weight',
    ball: ballOf({ weightLb: 16, rgIn: 2.75, differentialIn: 0.045 }),
    field: 'ball.rgIn',
    why: /stick out into the cover/,
  },
  {
    name: 'a weight that is a slip',
    ball: ballOf({ weightLb: 8, rgIn: 2.5 }),
    field: 'ball.weightLb',
    why: /lighter than any that is tried/,
  },
  {
    name: 'a differential too small for the top weight',
    ball: ballOf({ differentialIn: 0.006, topWeightOz: 6, pinToCgIn: 5 }),
    field: 'ball.differentialIn',
    why: /low-RG axis would leave the pin/,
  },
  {
    name: 'a mass bias at a weight too low',
    ball: ballOf({ weightLb: 12, rgIn: 2.45, differentialIn: 0.05, intermediateDifferentialIn: 0.015 }),
    field: 'ball.rgIn',
    why: /an asymmetric core/,
  },
];

test.each(impossible)('impossibleCore: $name is named, with the reason', ({ ball, field, why }) => {
  const { codes, worded } = refused(ball);
  const { faults, message } = worded;
  expect(codes).toEqual(['no-such-core']);
  expect(faults.map((fault) => fault.field)).toEqual([field]);
  expect(message).toMatch(why);
});

/** The numbers a refusal offers, as the fields they belong to. */
const OFFERS: readonly [RegExp, keyof PublishedBall][] = [
  [/RG ([\d.]+) in/, 'rgIn'],
  [/(?<!intermediate )differential ([\d.]+) in/, 'differentialIn'],
  [/intermediate differential ([\d.]+) in/, 'intermediateDifferentialIn'],
  [/(?<!top )weight ([\d.]+) lb/, 'weightLb'],
  [/top weight ([\d.]+) oz/, 'topWeightOz'],
  [/pin to CG ([\d.]+) in/, 'pinToCgIn'],
];

test.each(impossible)('impossibleCore: whatever it offers in place of $name has cores', ({ ball }) => {
  const hint = refused(ball).worded.faults[0].hint ?? '';
  expect(hint).not.toMatch(/maker/);
  const offers = OFFERS.flatMap(([pattern, field]) => {
    const value = pattern.exec(hint)?.[1];
    return value === undefined ? [] : [{ [field]: Number(value) }];
  });
  expect(offers.length).toBe(hint.split('; or ').length);
  for (const offer of offers) expect(fitCores({ ...ball, ...offer }, 'moment', 1).length).toBeGreaterThan(0);
});

test('impossibleCore: top weight and pin to CG are offered when they are the cause, and only then', () => {
  expect(refused(ballOf({ differentialIn: 0.006, topWeightOz: 6, pinToCgIn: 5 })).worded.message).toMatch(
    /top weight [3-5]\.\d+ oz; or pin to CG [1-4]\.\d+ in/,
  );
  expect(refused(ballOf({ weightLb: 10, rgIn: 2.5 })).worded.message).not.toMatch(/top weight|pin to CG/);
});

test('impossibleCore: where no single number helps it says so', () => {
  const { message } = refused(
    ballOf({
      weightLb: 8,
      rgIn: 2.4,
      differentialIn: 0.01,
      coreShape: 'lobed',
      topWeightOz: 6,
      pinToCgIn: 6,
    }),
  ).worded;
  expect(message).toMatch(/Changing any one number does not help/);
});
