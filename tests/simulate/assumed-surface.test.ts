import { mean, sampleCorrelation, standardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { loadFrictionPrior } from '../../src/records/shared/shared-data.js';
import { NOMINAL_SURFACE, USUAL_FRICTION } from '../../src/simulate/worlds/assumed-surface.js';
import { drawDeviations } from '../../src/simulate/worlds/deviations.js';
import { frictionOf } from '../../src/simulate/worlds/friction-of.js';
import { USUAL_BALLS } from '../support/balls.js';
import { averageBowler } from '../support/problems.js';

const lane = { frictionOiled: USUAL_FRICTION.oiled, frictionDry: USUAL_FRICTION.dry };
const prior = loadFrictionPrior();

describe('friction in the worlds', () => {
  const COUNT = 8000;
  const worlds = drawDeviations({
    seed: 5,
    count: COUNT,
    bowler: averageBowler,
    published: USUAL_BALLS[0]!,
    bodyCount: 8,
  });
  const logs = [
    worlds.map(({ surface }) => Math.log(surface.frictionOiledFactor * prior.median[0])),
    worlds.map(({ surface }) => Math.log(surface.frictionDryFactor * prior.median[1])),
    worlds.map(({ surface }) => Math.log(surface.filmScale)),
    worlds.map(({ surface }) => Math.log(surface.finishExponent)),
  ];
  const se = 4 / Math.sqrt(COUNT); // four standard errors, in deviations

  test.each(prior.names.map((name, i) => [name, i] as const))(
    '%s has the median and the spread of the joint distribution, its tails cut at 2.5 deviations',
    (_, i) => {
      expect(Math.abs(mean(logs[i]) - Math.log(prior.median[i]))).toBeLessThan(se * prior.logDeviation[i]);
      // a normal deviate held within ±2.5 has a deviation of 0.984
      expect(standardDeviation(logs[i]) / prior.logDeviation[i]).toBeCloseTo(0.984, 1);
      const farthest = Math.max(...logs[i].map((value) => Math.abs(value - Math.log(prior.median[i]))));
      expect(farthest).toBeLessThanOrEqual(2.5 * prior.logDeviation[i] + 1e-12);
    },
  );

  test('and its correlations', () => {
    for (let i = 0; i < 4; i++)
      for (let j = 0; j < i; j++)
        expect(Math.abs(sampleCorrelation(logs[i], logs[j]) - prior.correlation[i][j])).toBeLessThan(
          se + 0.01,
        );
  });
});

describe('frictionOf', () => {
  test('at the reference finish it is the lane’s own', () => {
    const { oiled, dry, filmScale } = frictionOf(lane, 2000, NOMINAL_SURFACE);
    expect(oiled).toBe(USUAL_FRICTION.oiled);
    expect(dry).toBe(USUAL_FRICTION.dry);
    expect(filmScale).toBe(NOMINAL_SURFACE.filmScale);
  });

  test('a finish moves friction on oil by a power law, and on dry boards by a share of that power', () => {
    const [coarse, fine] = [500, 4000].map((grit) => frictionOf(lane, grit, NOMINAL_SURFACE));
    expect(coarse.oiled / fine.oiled).toBeCloseTo(8 ** NOMINAL_SURFACE.finishExponent, 12);
    const onDry = NOMINAL_SURFACE.finishExponent * NOMINAL_SURFACE.finishOnDry;
    expect(coarse.dry / fine.dry).toBeCloseTo(8 ** onDry, 12);
  });

  test('no ball exceeds the legal friction of 0.32 (secondary, USBC), nor is more slippery dry than oiled', () => {
    const rough = { ...NOMINAL_SURFACE, finishExponent: 0.3, frictionOiledFactor: 9 };
    const { oiled, dry } = frictionOf({ frictionOiled: 0.3, frictionDry: 0.4 }, 220, rough);
    expect(dry).toBe(0.32);
    expect(oiled).toBe(dry);
    expect(frictionOf({ frictionOiled: 0.005, frictionDry: 0.2 }, 6000, rough).oiled).toBeGreaterThanOrEqual(
      0.005,
    );
  });
});
