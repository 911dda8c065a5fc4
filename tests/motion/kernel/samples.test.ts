import { beforeAll, describe, expect, test } from 'vitest';
import { LANE_LENGTH } from '../../../src/base/constants.js';
import { cross, norm, type Vec3 } from '../../../src/math/vec3.js';
import { filmAt } from '../../../src/motion/kernel/film.js';
import { oiledLane } from '../../../src/motion/lane/oil.js';
import { surfaceOf } from '../../../src/motion/lane/surface.js';
import { ANSWER_STEP } from '../../../src/motion/shot/answer-step.js';
import { rollShot, type Shot } from '../../../src/motion/shot/shot.js';
import {
  drilledBall,
  expectWithin,
  isotropicBall,
  last,
  unevenBall,
  usualRelease,
} from '../../support/bodies.js';
import { uniformLane } from '../../support/dry-lanes.js';
import { expectLeanAsFull } from '../../support/lean-as-full.js';
import { demoPattern } from '../../support/patterns.js';
import { randomShots } from '../../support/random-shots.js';

const launch = { x: -0.1, angle: 0.03 };
const freshSurface = { bandWidth: 0.00635, carriedShare: 0.15, wornPerPass: 0 };

describe('the samples of a shot with oil on lane and ball', () => {
  const lane = oiledLane(demoPattern);
  let shot: Shot;
  beforeAll(() => {
    shot = rollShot(drilledBall, usualRelease, launch, lane, { step: ANSWER_STEP, freshSurface });
  });
  const three = (column: Float64Array, i: number): Vec3 => [
    column[3 * i],
    column[3 * i + 1],
    column[3 * i + 2],
  ];

  test('begin at the foul line and end at the pins, at most a 32nd of a turn apart', () => {
    const { time, y, phase } = shot;
    expect(shot.outcome).toBe('pins');
    expect(time[0]).toBe(0);
    expect(phase[0]).toBe(0);
    expect(Math.abs(y[0])).toBeLessThan(0.001);
    expect(last(y)).toBe(LANE_LENGTH);
    for (let i = 1; i < time.length; i++) {
      expect(time[i]).toBeGreaterThan(time[i - 1]);
      expect(phase[i] - phase[i - 1]).toBeGreaterThan(0);
      expect(phase[i] - phase[i - 1]).toBeLessThan((1.001 * 2 * Math.PI) / 32);
    }
    expect(time.length).toBeLessThan((1.6 * 32 * last(phase)) / (2 * Math.PI)); // and hardly closer
  });

  test('tell one motion: places by velocities, angle by spin, the contact by the spin about its axis', () => {
    const { time, x, y, vx, vy, phase, spin, contact_B, axis_B } = shot;
    const spinning = (i: number): Vec3 => three(axis_B, i).map((a) => a * spin[i]) as unknown as Vec3;
    const off = { place: 0, phase: 0, contact: 0, unit: 0 };
    const note = (what: keyof typeof off, ...errors: number[]): void => {
      off[what] = Math.max(off[what], ...errors.map((error) => (Number.isNaN(error) ? 1 : Math.abs(error))));
    };
    for (let i = 1; i < time.length; i++) {
      const half = (time[i] - time[i - 1]) / 2;
      note(
        'place',
        x[i] - x[i - 1] - half * (vx[i] + vx[i - 1]),
        y[i] - y[i - 1] - half * (vy[i] + vy[i - 1]),
      );
      note('phase', phase[i] - phase[i - 1] - half * (spin[i] + spin[i - 1]));
      const [from, to] = [three(contact_B, i - 1), three(contact_B, i)];
      const [before, after] = [cross(from, spinning(i - 1)), cross(to, spinning(i))];
      note('contact', ...to.map((c, k) => c - from[k] - half * (before[k] + after[k])));
      note('unit', norm(to) - 1, norm(three(axis_B, i)) - 1);
    }
    expect(off.place).toBeLessThan(2e-6);
    expect(off.phase).toBeLessThan(2e-5);
    expect(off.contact).toBeLessThan(1e-3); // it turns by 0.2 rad from one sample to the next
    expect(off.unit).toBeLessThan(1e-12);
  });

  test('have the film that lies on the lane there', () => {
    expect(shot.film).toEqual(shot.x.map((x, i) => filmAt(lane, x, shot.y[i])));
  });

  test('a lean shot is the full one with fewer columns, to the last bit, whatever was rolled before', () => {
    expectLeanAsFull(randomShots(3, 5, 2));
  });
});

/*
 * Where all of the lane has one film and none wears off, the oil that is met follows from how near the nearest ring is, which all rings
 * are asked for, while oil is looked for on the near ones alone.
 */
test.each([
  { name: 'rings that flare', body: unevenBall([2.55, 2.54, 2.49]), ringPlaces: 96, bandWidth: 0.003 },
  { name: 'rings that lie on one another', body: isotropicBall(0.0645), ringPlaces: 96, bandWidth: 0.008 },
  { name: 'rings with few places', body: unevenBall([2.55, 2.52, 2.49]), ringPlaces: 24, bandWidth: 0.008 },
])(
  'under one film everywhere no ring is missed that carries oil: $name',
  ({ body, ringPlaces, bandWidth }) => {
    const film = 20;
    const lane = surfaceOf(
      oiledLane(demoPattern).film!.map(() => film),
      { oiled: 0.04, dry: 0.2, filmScale: 8 },
    );
    const settings = { step: ANSWER_STEP, freshSurface: { ...freshSurface, bandWidth }, ringPlaces };
    const shot = rollShot(body, usualRelease, launch, lane, settings);
    expect(shot.outcome).toBe('pins');
    shot.carried.forEach((carried, i) => {
      expectWithin(carried, film * freshSurface.carriedShare * (1 - shot.fresh[i]), 1e-9);
    });
    const second = shot.phase.findIndex((turned) => turned > 2.1 * Math.PI);
    expect(Math.max(...shot.carried.slice(0, second / 1.2))).toBe(0); // the first turn meets no ring
    expect(Math.max(...shot.carried.slice(second))).toBeGreaterThan(2); // a later one does
  },
);

test('slip of a ball of equal moments falls evenly, by (1 + m R²/J) μ g a second (any mechanics textbook)', () => {
  const [gyration, friction, gravity] = [0.0645, 0.1, 9.8];
  const body = isotropicBall(gyration);
  const shot = rollShot(body, usualRelease, launch, uniformLane(friction), {
    step: ANSWER_STEP,
    freshSurface: null,
    gravity,
  });
  const rate = (1 + (body.radius / gyration) ** 2) * friction * gravity;
  const end = shot.rollStart < 0 ? shot.time.length : shot.rollStart;
  for (let i = 0; i < end; i++) expectWithin(shot.slip[i], shot.slip[0] - rate * shot.time[i], 1e-6);
});
