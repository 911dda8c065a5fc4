import { mean, sampleCorrelation, standardDeviation } from 'simple-statistics';
import { expect, test } from 'vitest';
import { DEGREE, INCH, MPH } from '../../src/base/units.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import { HIGH_SURFACE, LOW_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';
import { drawDeviations } from '../../src/simulate/worlds/deviations.js';
import { SCATTER_BY_SKILL } from '../../src/simulate/worlds/release-scatter.js';
import { USUAL_BALLS } from '../support/balls.js';
import { averageBowler } from '../support/problems.js';

const published = USUAL_BALLS[0]!;
const { radius } = published;
const draw = (seed: number, count: number, bowler: Bowler = averageBowler) =>
  drawDeviations({ seed, count, bowler, published, bodyCount: 48 });

test('drawDeviations: the same seed gives the same worlds, another seed others', () => {
  expect(draw(7, 20)).toEqual(draw(7, 20));
  expect(draw(8, 20)).not.toEqual(draw(7, 20));
});

test('drawDeviations: more worlds continue the same sequence', () => {
  expect(draw(3, 40).slice(0, 10)).toEqual(draw(3, 10));
});

test('drawDeviations: scatter has the stated standard deviation, every range is kept', () => {
  const worlds = draw(1, 4000);
  const speeds = worlds.map((w) => w.speed / MPH);
  const tolerance = 4 / Math.sqrt(4000); // four standard errors of a mean, in deviations
  const stated = SCATTER_BY_SKILL.league;
  expect(Math.abs(mean(speeds))).toBeLessThan(tolerance * stated.speedMph);
  // tails cut at 0.1 % each side lower the deviation by under 2 %
  expect(standardDeviation(speeds) / stated.speedMph).toBeCloseTo(0.99, 1);
  expect(standardDeviation(worlds.map((w) => w.drillingAngle / DEGREE))).toBeCloseTo(2, 0);
  // marked by hand to 2° and 1/16 in: four standard errors of a deviation, 1/√(2·4000) each, and the tails
  const made = 4 / Math.sqrt(8000) + 0.02;
  for (const [drawn, deviation] of [
    [worlds.map((w) => w.drillingAngle / DEGREE), 2],
    [worlds.map((w) => w.valAngle / DEGREE), 2],
    [worlds.map((w) => (w.pinToPap * radius) / INCH), 1 / 16],
  ] as const)
    expect(Math.abs(standardDeviation(drawn) / deviation - 1)).toBeLessThan(made);
  for (const { surface, body } of worlds) {
    expect(surface.carriedShare).toBeGreaterThanOrEqual(LOW_SURFACE.carriedShare);
    expect(surface.carriedShare).toBeLessThanOrEqual(HIGH_SURFACE.carriedShare);
    expect(Number.isInteger(body) && body >= 0 && body < 48).toBe(true);
  }
});

test('drawDeviations: numbers that may be off themselves widen the scatter and move the PAP; the rest stays', () => {
  const unsure = { ...averageBowler, uncertainty: { speedMph: 0.3, papOverIn: 0.25 } };
  const worlds = draw(1, 4000, unsure);
  const known = draw(1, 4000);
  // what a bowler's mean may be off adds to the scatter, and has nothing to do with it
  const off = worlds.map((w, n) => (w.speed - known[n].speed) / MPH);
  expect(standardDeviation(off) / 0.3).toBeCloseTo(0.99, 1);
  const scatter = known.map(({ speed }) => speed / MPH);
  expect(Math.abs(sampleCorrelation(off, scatter))).toBeLessThan(4 / Math.sqrt(4000));
  // 0.4 and 0.3 mph add as squares: 0.5
  expect(standardDeviation(worlds.map((w) => w.speed / MPH)) / 0.5).toBeCloseTo(0.99, 1);
  expect(standardDeviation(worlds.map((w) => (w.papOver * radius) / INCH)) / 0.25).toBeCloseTo(0.99, 1);
  expect(worlds.every((w) => w.papUp === 0)).toBe(true);
  expect(worlds.map(({ papOver, speed, ...rest }) => rest)).toEqual(
    known.map(({ papOver, speed, ...rest }) => rest),
  );
});
