import { expect, test } from 'vitest';
import { demoShelf } from '../../src/records/read/shelf.js';
import type { PublishedBall } from '../../src/records/schemas/ball.js';
import { NOMINAL_SURFACE, USUAL_FRICTION } from '../../src/simulate/worlds/assumed-surface.js';
import { EXPECTED, figuresOf, finishBesideTopWeight, misfit, sceneOf } from './friction.js';
import { drawSettings, effectiveCount, fitLogNormal } from './friction-prior.js';

const { bowlers, balls, lanes } = demoShelf();
const pick = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;
const house = pick(lanes, 'house-easy');
const usual = {
  ...USUAL_FRICTION,
  filmScale: NOMINAL_SURFACE.filmScale,
  finishExponent: NOMINAL_SURFACE.finishExponent,
};

test.each(bowlers.map(({ id }) => id))(
  '%s: 500 to 4000 grit moves hook start by more than half an ounce of top weight (published ranking: surface first, static weights last)',
  (id) => {
    const ball = pick(balls, id === 'youth-twelve' ? 'plain-twelve' : 'plain-medium') as PublishedBall;
    const { finishFt, topWeightFt } = finishBesideTopWeight(pick(bowlers, id), ball, house)!(usual);
    expect(finishFt).toBeGreaterThan(2 * Math.abs(topWeightFt));
  },
);

test('the study rolls a setting as answers do: the usual one gives the tool’s own line', () => {
  const bowler = pick(bowlers, 'average-right');
  const figures = figuresOf(sceneOf(bowler, pick(balls, 'plain-medium'), house), usual)!;
  for (const [name, expected] of Object.entries(EXPECTED.league))
    expect(misfit(figures[name as keyof typeof figures], expected), name).toBeLessThan(0.5);
});

test('fitLogNormal gives back the distribution that settings were drawn from, and weights shift it', () => {
  const settings = drawSettings(20_000, 3);
  const even = fitLogNormal(
    settings,
    settings.map(() => 1),
  );
  expect(even.median[0] / 0.025).toBeCloseTo(1, 1);
  expect(even.logDeviation[0] / 0.35).toBeCloseTo(0.98, 1); // tails are cut
  expect(Math.abs(even.correlation[0][1])).toBeLessThan(0.03);
  // exp(k x) on a normal x of deviation s moves its mean by k s² and leaves its deviation (exact, but for the cut tails)
  const k = 2;
  const weights = settings.map(({ oiled }) => (oiled / 0.025) ** k);
  const moved = fitLogNormal(settings, weights);
  expect(Math.log(moved.median[0] / even.median[0])).toBeCloseTo(k * even.logDeviation[0] ** 2, 1);
  expect(effectiveCount(settings.map(() => 0.3))).toBeCloseTo(settings.length, 6);
  expect(effectiveCount(weights)).toBeLessThan(0.7 * settings.length);
});
