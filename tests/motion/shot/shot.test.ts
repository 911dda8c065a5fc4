import { describe, expect, test } from 'vitest';
import { memory } from '../../../src/motion/kernel/memory.js';
import { BALL_SLOT } from '../../../src/motion/kernel/slots.js';
import { writeBall } from '../../../src/motion/shot/begin-shot.js';
import { principalBody } from '../../../src/motion/shot/principal-body.js';
import { rollLeanShot, rollShot } from '../../../src/motion/shot/shot.js';
import {
  expectVector,
  expectWithin,
  isotropicBall,
  last,
  openLane,
  SKEW,
  unevenBall,
  usualRelease,
} from '../../support/bodies.js';
import { twoZoneLane, uniformLane, zonedLane } from '../../support/dry-lanes.js';

const body = isotropicBall(0.0645);
const launch = { x: 0, angle: 0.02 };

test('slip of a ball ends no faster than the kernel reckons with, at the usual normal force half as fast again', () => {
  for (const [gravity, { mass, radius, I_Bcm_B }] of [
    [9.8, body],
    [3, isotropicBall(0.05, 0.1, 5)],
  ] as const) {
    writeBall(principalBody({ mass, radius, I_Bcm_B, p_BoBcm_B: [0, 0, 0] }), gravity);
    const perPush = 1 / mass + radius ** 2 / I_Bcm_B[0][0]; // change of slip per push: any mechanics textbook
    expectWithin(memory.ball[BALL_SLOT.INVERSE_EFFECTIVE_MASS], perPush, 1e-12);
    expectWithin(memory.ball[BALL_SLOT.SLIP_RATE], 1.5 * mass * gravity * perPush, 1e-9);
  }
});

describe('a shot', () => {
  test('that only slides takes steps of one length, the last up to its time', () => {
    const { outcome, steps, rollStart, time } = rollShot(
      body,
      usualRelease,
      launch,
      uniformLane(0.05),
      openLane(0.1, 0.008),
    );
    expect({ outcome, steps, rollStart }).toEqual({ outcome: 'stopped', steps: 13, rollStart: -1 });
    expectWithin(last(time), 0.1, 1e-15);
  });

  test('ends in the gutter on either side, and at the pins otherwise', () => {
    const outcomeAt = (angle: number) =>
      rollLeanShot(body, { ...usualRelease, spin: 0 }, { x: 0, angle }, uniformLane(0.01), {
        step: 0.008,
        freshSurface: null,
      }).outcome;
    const steepest = Math.atan(0.5 * (1.0541 / 18.288)); // half of the lane’s width over its length
    expect([-1.1, -0.9, 0.9, 1.1].map((share) => outcomeAt(share * steepest))).toEqual([
      'gutter',
      'pins',
      'pins',
      'gutter',
    ]);
  });

  test('begins to roll once, though it slips again where friction gives out', () => {
    const { rollStart, slip, y } = rollShot(
      unevenBall([2.5, 2.535, 2.55], [0.0006, -0.0004, 0.0007], SKEW),
      { ...usualRelease, axisTilt: 0.3 },
      launch,
      twoZoneLane(0.3, 0.0005, 6),
      {
        step: 0.004,
        freshSurface: null,
      },
    );
    expect(y[rollStart]).toBeLessThan(6);
    expect(Math.min(...slip.slice(0, rollStart))).toBeGreaterThan(0);
    expect(slip[rollStart]).toBeLessThan(1e-9);
    expect(Math.max(...slip.slice(rollStart))).toBeGreaterThan(1e-9);
  });

  test('that rolls, slips and rolls again began to roll the first time', () => {
    const rolledOn = (later: readonly { fromY: number; friction: number }[]) =>
      rollShot(
        unevenBall([2.5, 2.535, 2.55], [0.0006, -0.0004, 0.0007], SKEW),
        { ...usualRelease, axisTilt: 0.3 },
        launch,
        zonedLane([{ fromY: 0, friction: 0.3 }, ...later]),
        { step: 0.004, freshSurface: null },
      );
    const { rollStart, slip } = rolledOn([
      { fromY: 6, friction: 0.0005 },
      { fromY: 8, friction: 0.3 },
    ]);
    expect(Math.max(...slip.slice(rollStart))).toBeGreaterThan(1e-3);
    expect(last(slip)).toBe(0);
    expect(rollStart).toBe(rolledOn([]).rollStart);
  });

  test('ends with the axis it spins about, and heads where it would roll: slip takes α s/(1 + α) off its velocity', () => {
    const { endAxis_W, rollHeading, vx, vy, spin } = rollShot(
      body,
      usualRelease,
      launch,
      uniformLane(0.05),
      openLane(0.4, 0.008),
    );
    const [wx, wy] = endAxis_W.map((a) => a * last(spin));
    expectWithin(Math.hypot(...endAxis_W), 1, 1e-15);
    const alpha = (0.0645 / body.radius) ** 2; // of what momentum about the contact keeps
    const [rx, ry] = [
      (last(vx) + alpha * body.radius * wy) / (1 + alpha),
      (last(vy) - alpha * body.radius * wx) / (1 + alpha),
    ];
    expectWithin(rollHeading, Math.atan2(-rx, ry), 1e-12);
  });

  test('that does not spin has no axis', () => {
    const settings = { ...openLane(0.1, 0.01), gravity: 0 };
    const { endAxis_W } = rollShot(body, { ...usualRelease, spin: 0 }, launch, uniformLane(0), settings);
    expectVector(endAxis_W, [0, 0, 0], 0);
  });
});
