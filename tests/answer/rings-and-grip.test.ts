import { describe, expect, test } from 'vitest';
import { arcAngle } from '../../src/math/sphere.js';
import { leastClearance, ringFrom, ringsOnBall } from '../../src/motion/reaction/rings.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import { simulator } from '../../src/simulate/simulator.js';
import { NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';

const ball = ballProblem(plainBall, averageBowler, 'moment');
const { radius } = ball.published;
const engine = simulator(unaimedProblem(houseLane, averageBowler, plainBall, ball));
const STRAIGHT = { x: 0, angle: 0 };
const roll = (drillingAngleDeg: number, pinToPapIn: number, valAngleDeg: number) =>
  engine
    .shot(toLayout({ drillingAngleDeg, pinToPapIn, valAngleDeg }, radius), NO_DEVIATIONS, STRAIGHT)
    .full();

/** Least arc (rad) from a hole's mouth to the ring of one turn. */
const toRing = (shot: ReturnType<typeof roll>, name: string, turn: number): number => {
  const hole = ball.holes.find((each) => each.name === name);
  if (!hole) throw new Error(name);
  return Math.min(...ringFrom(shot, 2 * Math.PI * turn, 73).map((p) => arcAngle(p, hole.mouth_B)));
};

describe('flare and the grip (common practice, no source)', () => {
  test.each([20, 35, 50, 70])(
    'at a VAL angle of %i° the first ring is the nearest to the thumb, later ones lie farther off',
    (val) => {
      const shot = roll(50, 4.5, val);
      for (const turn of [4, 8])
        expect(toRing(shot, 'thumb', turn)).toBeGreaterThan(toRing(shot, 'thumb', 0));
    },
  );

  test('within the VAL angles the trade drills no ring runs over a hole; far beyond them rings run over the fingers', () => {
    const clearance = (val: number): number => {
      const shot = roll(50, 4.5, val);
      return Math.min(
        ...ball.holes.map((hole) => leastClearance(shot, hole.mouth_B, Math.asin(hole.open.radius / radius))),
      );
    };
    for (const val of [20, 30, 40, 50, 60, 70]) expect(clearance(val)).toBeGreaterThan(0);
    expect(clearance(110)).toBeLessThan(0);
  });

  test('the axis wanders clockwise about the pin, the way the drilling angle is counted toward the marker', () => {
    const shot = roll(50, 4.5, 45);
    const samples = shot.time.length;
    const at = (i: number) => [shot.axis_B[3 * i], shot.axis_B[3 * i + 1], shot.axis_B[3 * i + 2]] as const;
    const later = at(Math.floor(samples / 2));
    // with the pin up and toward the grip, clockwise is toward the grip and down
    expect(later[0]).toBeLessThan(at(0)[0]);
    expect(later[1]).toBeLessThan(at(0)[1]);
  });

  test('every full turn has a ring', () => {
    const shot = roll(50, 4.5, 45);
    const turns = shot.phase[shot.phase.length - 1] / (2 * Math.PI);
    expect(ringsOnBall(shot)).toHaveLength(Math.floor(turns));
  });
});
