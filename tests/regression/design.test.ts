import { describe, expect, test } from 'vitest';
import { DEGREE, INCH, MM, MPH, to } from '../../src/base/units.js';
import { symmetricEigen } from '../../src/math/eigen3.js';
import { filmAt } from '../../src/motion/kernel/film.js';
import { xToBoard } from '../../src/motion/lane/boards.js';
import { frictionUnder } from '../../src/motion/lane/surface.js';
import { DESIGN, designShots, SHOTS_PER_LANE } from '../../src/regression/design.js';
import { FEATURES, middlingRoll } from '../../src/regression/features.js';
import type { ShotInputs } from '../../src/regression/inputs.js';
import { isPlayable } from '../fit/playable.js';
import { ROW, shotRows } from '../fit/shot-rows.js';

const LANES = 40;
const shots = Array.from({ length: LANES }, (_, lane) => designShots(7, lane)).flat();

/** RG about the three principal axes, in; the design's balls weigh 1 kg. */
const rgs = ({ body }: ShotInputs): number[] =>
  symmetricEigen(body.I_Bcm_B).values.map((moment) => to(Math.sqrt(moment), INCH));

/** Reads an axis of the design back from what was to be rolled. */
const READ: Partial<Record<keyof typeof DESIGN, (shot: ShotInputs) => number>> = {
  speedMph: ({ release }) => to(release.speed, MPH),
  spinRatio: ({ body, release }) => (body.radius * release.spin) / release.speed,
  axisTiltDeg: ({ release }) => to(release.axisTilt, DEGREE),
  axisRotationDeg: ({ release }) => to(release.axisRotation, DEGREE),
  circumferenceIn: ({ body }) => to(2 * Math.PI * body.radius, INCH),
  lowRgIn: (shot) => rgs(shot)[0],
  differentialIn: (shot) => rgs(shot)[2] - rgs(shot)[0],
  intermediateShare: (shot) => (rgs(shot)[2] - rgs(shot)[1]) / (rgs(shot)[2] - rgs(shot)[0]),
  centrePapMm: ({ body }) => to(body.p_BoBcm_B[0], MM),
  centreUpMm: ({ body }) => to(body.p_BoBcm_B[1], MM),
  centreGripMm: ({ body }) => to(body.p_BoBcm_B[2], MM),
  frictionOiled: ({ surface }) => frictionUnder(surface.stretches[0], Number.POSITIVE_INFINITY),
  frictionDry: ({ surface }) => frictionUnder(surface.stretches[0], 0),
  bandWidthIn: ({ freshSurface }) => to(freshSurface.bandWidth, INCH),
  carriedShare: ({ freshSurface }) => freshSurface.carriedShare,
  laydownBoard: ({ launch }) => xToBoard(launch.x),
};

/** Share of a triangular or even distribution below a value: its closed form. */
function shareBelow(axis: readonly number[], value: number): number {
  const least = axis[0];
  const most = axis[axis.length - 1];
  if (axis.length === 2) return (value - least) / (most - least);
  const usual = axis[1];
  return value < usual
    ? (value - least) ** 2 / ((most - least) * (usual - least))
    : 1 - (most - value) ** 2 / ((most - least) * (most - usual));
}

describe('the design', () => {
  test.each(Object.entries(READ))('%s: in its range, and spread as it says', (name, read) => {
    const axis: readonly number[] = DESIGN[name as keyof typeof DESIGN];
    const values = shots.map(read).sort((a, b) => a - b);
    expect(values.length).toBe(LANES * SHOTS_PER_LANE);
    expect(values[0]).toBeGreaterThanOrEqual(axis[0] - 1e-9);
    expect(values[values.length - 1]).toBeLessThanOrEqual(axis[axis.length - 1] + 1e-9);
    // greatest gap between the two distribution functions; 640 random numbers would make it 0.034 in the mean
    const gaps = values.map((value, i) => Math.abs(shareBelow(axis, value) - (i + 0.5) / values.length));
    expect(Math.max(...gaps)).toBeLessThan(0.02);
  });

  test('a seed and a lane give the same shots again; another seed gives others', () => {
    const speeds = (seed: number): number[] => designShots(seed, 3).map(({ release }) => release.speed);
    expect(speeds(7)).toEqual(speeds(7));
    expect(speeds(8).some((speed) => speeds(7).includes(speed))).toBe(false);
  });

  test('holds rare releases and lanes of little oil too', () => {
    const some = (claim: (shot: ShotInputs) => boolean): number => shots.filter(claim).length / shots.length;
    expect(some(({ release }) => release.axisTilt > 40 * DEGREE)).toBeGreaterThan(0.01);
    expect(some(({ release }) => release.axisRotation < 20 * DEGREE)).toBeGreaterThan(0.05);
    expect(some(({ release }) => release.speed < 13 * MPH)).toBeGreaterThan(0.08);
    const thickest = ({ surface }: ShotInputs): number =>
      Math.max(...[2, 4, 6, 8, 10].map((y) => filmAt(surface, 0, y)));
    expect(some((shot) => thickest(shot) < 25)).toBeGreaterThan(0.01);
  });
});

describe('rows of shots', () => {
  const rows = shotRows(7, 0, 4);

  test('are those of the playable shots that reach the pins, all of them numbers', () => {
    const playable = shots
      .slice(0, 4 * SHOTS_PER_LANE)
      .filter(({ body, release, launch, surface, freshSurface }) =>
        isPlayable(middlingRoll(body.radius, release, launch, surface, freshSurface), launch),
      );
    expect(rows.length % ROW).toBe(0);
    expect(rows.length / ROW).toBeLessThanOrEqual(playable.length);
    expect(rows.length / ROW).toBeGreaterThan(0.7 * playable.length);
    expect(rows.every(Number.isFinite)).toBe(true);
  });

  test('begin with the features and end with the lane', () => {
    const speed = FEATURES.findIndex(({ name }) => name === 'speed');
    const speeds = new Set(shots.map(({ release }) => Math.fround(release.speed)));
    for (let at = 0; at < rows.length; at += ROW) {
      expect(speeds.has(rows[at + speed])).toBe(true);
      expect([0, 1, 2, 3]).toContain(rows[at + ROW - 1]);
    }
  });

  test('are the same in one go and in parts', () => {
    const parts = [...shotRows(7, 0, 2), ...shotRows(7, 2, 4)];
    expect([...rows]).toEqual(parts);
  });
});
