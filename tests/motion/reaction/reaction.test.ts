import { describe, expect, test } from 'vitest';
import { LANE_LENGTH } from '../../../src/base/constants.js';
import { DEGREE, FOOT, from, INCH } from '../../../src/base/units.js';
import { oiledLane } from '../../../src/motion/lane/oil.js';
import { meanReaction, type Reaction, reactionNumbers } from '../../../src/motion/reaction/reaction.js';
import { rollShot } from '../../../src/motion/shot/shot.js';
import {
  drilledBall,
  expectWithin,
  isotropicBall,
  last,
  spinning,
  usualRelease,
} from '../../support/bodies.js';
import { drawnShot } from '../../support/drawn-shot.js';
import { uniformLane } from '../../support/dry-lanes.js';
import { demoPattern } from '../../support/patterns.js';

const settings = { step: 0.002, freshSurface: { bandWidth: 0.00635, carriedShare: 0.15, wornPerPass: 0.3 } };

describe('reaction numbers', () => {
  test('of a straight ball from the edge of play to the far side: no hook, entry angle −atan(18.1/720) (exact)', () => {
    const body = isotropicBall(0.0645);
    const release = { ...spinning([-20, 0, 0]), axisTilt: 0 };
    // rolled along its own heading, so that friction only slows it
    const angle = Math.atan2(from(18.1, INCH), LANE_LENGTH);
    const shot = rollShot(
      body,
      { ...release, axisRotation: -angle },
      { x: from(-9, INCH), angle },
      uniformLane(0.1),
      settings,
    );
    const r = reactionNumbers(shot, body.radius);
    expectWithin(r.entryAngle, -1.44 * DEGREE, 0.005 * DEGREE);
    expectWithin(r.entryAngle, -angle, 1e-12);
    expectWithin(r.totalHook, 0, 1e-12);
    expectWithin(r.sharpness, 0, 1e-12);
    expectWithin(r.pinsX, from(9.1, INCH), 1e-12);
    expect(r.breakpointX).toBe(r.pinsX); // it only ever moves outward
    expect(r.breakpointY).toBe(LANE_LENGTH);
    expectWithin(r.flare, 0, 1e-6); // a hundredth of the width of a pencil line
  });

  test('of a hooking ball agree with its path', () => {
    const balanced = isotropicBall(from(2.53, INCH), drilledBall.radius); // rolls straight on, without a sway
    const shot = rollShot(balanced, usualRelease, { x: -0.1, angle: 0.03 }, oiledLane(demoPattern), settings);
    const r = reactionNumbers(shot, balanced.radius);
    expect(shot.outcome).toBe('pins');
    expectWithin(r.breakpointX, Math.max(...shot.x), 1e-5);
    expect(r.breakpointX).toBeGreaterThanOrEqual(Math.max(...shot.x));
    expectWithin(r.totalHook, -0.1 + LANE_LENGTH * Math.tan(0.03) - last(shot.x), 1e-12);
    expect(r.rollStart).toBe(shot.y[shot.rollStart]);
    expectWithin(r.turns, last(shot.phase) / (2 * Math.PI), 1e-12);
    // the mean place of all bending; the last turn's heading differs from that at the pins by 1e-4 of a turn of 0.12, and
    // the hook lies 7 m before the pins
    const turned = shot.x.map((_, i) => -shot.vx[i] / shot.vy[i]);
    const moment = turned.reduce(
      (sum, turn, i) => (i === 0 ? 0 : sum + ((turn - turned[i - 1]) * (shot.y[i - 1] + shot.y[i])) / 2),
      0,
    );
    expectWithin(r.hookStart, moment / (last(turned) - turned[0]), (1e-4 / 0.12) * 7.5);
    expect(r.hookStart).toBeLessThan(r.rollStart);
    expectWithin(r.entryAngle, Math.atan2(-last(shot.vx), last(shot.vy)), 1 * DEGREE);
    expect(last(shot.slip)).toBe(0); // rolling, the axis lies across the path
    expectWithin(r.rotationAtPins, Math.atan2(-last(shot.vx), last(shot.vy)), 1e-9);
  });

  test('a ball that slides to the pins says it does not roll before them', () => {
    const shot = rollShot(drilledBall, usualRelease, { x: 0, angle: 0 }, uniformLane(0.02), settings);
    const r = reactionNumbers(shot, drilledBall.radius);
    expect(r.rollsBeforePins).toBe(false);
    expect(r.rollStart).toBe(LANE_LENGTH);
  });

  test('change smoothly with the inputs: no steps of a sample’s size', () => {
    const lane = oiledLane(demoPattern);
    const at = (n: number): Reaction => {
      const release = { ...usualRelease, axisRotation: usualRelease.axisRotation + n * 0.0005 };
      return reactionNumbers(
        rollShot(drilledBall, release, { x: -0.1, angle: 0.03 }, lane, settings),
        drilledBall.radius,
      );
    };
    const runs = Array.from({ length: 21 }, (_, n) => at(n - 10));
    // A straight line through neighbours leaves this much over; a sample is 15 mm and 2 ms. The hook starts where two lines
    // meet that cross with a tangent of 0.12, so it moves by what the total hook does over that; sharpness is the difference
    // of two headings in the middle of the hook over ten feet.
    const largest: Partial<Record<keyof Reaction, number>> = {
      hookStart: 5e-5 / 0.12,
      rollStart: 0.01,
      sharpness: (2 * 1e-5) / from(10, FOOT),
      breakpointX: 1e-5,
      totalHook: 5e-5,
      entryAngle: 1e-6,
      flare: 1e-4,
    };
    for (const [key, tol] of Object.entries(largest) as [keyof Reaction, number][])
      for (let n = 1; n < runs.length - 1; n++) {
        const [a, b, c] = [runs[n - 1][key], runs[n][key], runs[n + 1][key]] as number[];
        expectWithin(b, (a + c) / 2, tol);
      }
  });

  test('the mean of two shots is the mean of each number; it rolls before the pins where both do', () => {
    const made = (value: number, rolls: boolean): Reaction => {
      const numbers = reactionNumbers(drawnShot(0), 0.1);
      const all = Object.keys(numbers).map((name, i) => [
        name,
        name === 'rollsBeforePins' ? rolls : value + i,
      ]);
      return Object.fromEntries(all) as Reaction;
    };
    const [a, b] = [made(1, true), made(6, true)];
    const names = Object.keys(a).filter((name) => name !== 'rollsBeforePins') as ['hookStart'];
    expect(names.length).toBeGreaterThan(12);
    const mean = meanReaction(a, b);
    expect(Object.keys(mean).sort()).toEqual(Object.keys(a).sort());
    for (const name of names) expect(mean[name]).toBe((a[name] + b[name]) / 2);
    expect(mean.rollsBeforePins).toBe(true);
    expect(meanReaction(a, made(6, false)).rollsBeforePins).toBe(false);
    expect(meanReaction(made(1, false), b).rollsBeforePins).toBe(false);
  });

  test('a ball that slips to the pins rolls at their distance, one that grips before them where it does', () => {
    const slips = reactionNumbers(drawnShot(3), 0.1);
    expect([slips.rollStart, slips.rollsBeforePins]).toEqual([LANE_LENGTH, false]);
    const grips = reactionNumbers(drawnShot(3, { rollStart: 0, y: Float64Array.of(0, 4, 9) }), 0.1);
    expect([grips.rollStart, grips.rollsBeforePins]).toEqual([0, true]);
  });
});
