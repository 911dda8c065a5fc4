import { mean, standardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { BOARD, LANE_LENGTH } from '../../src/base/constants.js';
import { DEGREE, from, INCH, MPH, RPM } from '../../src/base/units.js';
import { scale, unit, type Vec3 } from '../../src/math/vec3.js';
import { oiledLane } from '../../src/motion/lane/oil.js';
import { hookOf } from '../../src/motion/reaction/hook.js';
import type { Release } from '../../src/motion/shot/release.js';
import { rollShot, type Shot } from '../../src/motion/shot/shot.js';
import {
  drilledBall,
  expectWithin,
  isotropicBall,
  last,
  SKEW,
  unevenBall,
  usualRelease,
} from '../support/bodies.js';
import { uniformLane } from '../support/dry-lanes.js';
import { demoPattern } from '../support/patterns.js';

/** One millimetre off: what an ounce and a half of static weight makes of a 15 lb ball, and more. */
const OFFSET = 0.001;
const PHASES = Array.from({ length: 12 }, (_, i) => (2 * Math.PI * i) / 12);

/*
 * What the spin phase of an offset centre of mass does. A ball of unequal moments has another effect of the phase, which no
 * launch can take away: its axis is not that of its angular momentum, so it wobbles about that by I_px/I_pp, about a
 * degree, and where it is on the wobble at release turns the mean axis: 0.1 to 0.2 board (tests/simulate/spin-phase.test.ts).
 */

describe('the bowler sends the centre of mass', () => {
  test.each(PHASES)(
    'without friction it goes straight, spin phase %f: Bo stays within the offset of its line',
    (spinPhase) => {
      const launch = { x: 0.1, angle: 0.04 };
      for (const off of [
        [OFFSET, 0, 0],
        [0, OFFSET, 0],
        [0.5 * OFFSET, -0.6 * OFFSET, 0.6 * OFFSET],
      ] as const) {
        const body = unevenBall([2.5, 2.535, 2.55], off, SKEW);
        const shot = rollShot(body, { ...usualRelease, spinPhase }, launch, uniformLane(0), {
          step: 0.002,
          freshSurface: null,
          halfWidth: Number.POSITIVE_INFINITY,
        });
        const beside = shot.x.map((x, i) => Math.abs(x - launch.x - Math.tan(launch.angle) * shot.y[i]));
        expect(Math.max(...beside)).toBeLessThanOrEqual(OFFSET / Math.cos(launch.angle) + 1e-9);
        expectWithin(hookOf(shot).total, 0, OFFSET / Math.cos(launch.angle) + 1e-9);
      }
    },
  );

  const strong: Release = {
    ...usualRelease,
    spin: from(480, RPM),
    axisTilt: 7 * DEGREE,
    axisRotation: 66 * DEGREE,
  };
  const straight: Release = {
    ...usualRelease,
    speed: from(14, MPH),
    spin: from(150, RPM),
    axisRotation: 20 * DEGREE,
  };
  test.each([
    { name: 'usual', release: usualRelease, launch: { x: -0.1, angle: 0.04 } },
    { name: 'strong', release: strong, launch: { x: -0.3, angle: 0.06 } },
    { name: 'nearly straight', release: straight, launch: { x: -0.1, angle: 0.02 } },
  ])('$name release: total hook hardly depends on the spin phase', ({ release, launch }) => {
    const lane = oiledLane({ ...demoPattern, frictionOiled: 0.025, filmScale: 3.2 });
    for (const [name, off_B] of Object.entries(OFFSETS)) {
      const body = { ...isotropicBall(from(2.53, INCH)), p_BoBcm_B: scale(OFFSET, unit(off_B)) };
      const hooks = PHASES.map((spinPhase) => {
        const shot = rollShot(body, { ...release, spinPhase }, launch, lane, {
          step: 0.004,
          freshSurface: { bandWidth: 0.00635, carriedShare: 0.15, wornPerPass: 0.3 },
          halfWidth: Number.POSITIVE_INFINITY,
        });
        return hookOf(shot).total / BOARD;
      });
      // it was 0.6 to 1.6 while Bo was sent, which leaves sideways by ω×d: up to 40 mm/s on 8 m/s
      expect(standardDeviation(hooks), name).toBeLessThan(0.2);
      // and swings once a turn: two phases half a turn apart give the mean over all to a few hundredths of a board
      for (let i = 0; i < 6; i++) expectWithin((hooks[i] + hooks[i + 6]) / 2, mean(hooks), 0.02);
    }
  });
});

const OFFSETS: Record<string, Vec3> = { pap: [1, 0, 0], up: [0, 1, 0], grip: [0, 0, 1], between: [1, -1, 1] };

describe('rolling, whatever the friction: v = (v₀ + α R ω₀×z)/(1 + α) with α = (RG/R)² (any mechanics textbook)', () => {
  const radius = from(27, INCH) / (2 * Math.PI);
  const gyration = from(2.55, INCH);
  const release: Release = {
    speed: from(17.9, MPH),
    spin: from(416, RPM),
    axisTilt: 0,
    axisRotation: 45 * DEGREE,
    pap_B: [1, 0, 0],
  };
  const alpha = (gyration / radius) ** 2;
  const surfaceSpeed = (radius * release.spin) / Math.SQRT2; // along the lane and across, at 45°
  const across = (alpha * surfaceSpeed) / (1 + alpha);
  const down = (release.speed + alpha * surfaceSpeed) / (1 + alpha);

  /** Speed (m/s) and heading (rad) over the last turn of a ball that has come to roll on an endless lane. */
  const rolled = (
    off_B: Vec3,
    friction: number,
    spinPhase: number,
  ): { speed: number; heading: number; shot: Shot } => {
    const shot = rollShot(
      { ...isotropicBall(gyration, radius), p_BoBcm_B: off_B },
      { ...release, spinPhase },
      { x: 0, angle: 0 },
      uniformLane(friction),
      { step: 0.001, freshSurface: null, length: 40, halfWidth: Number.POSITIVE_INFINITY },
    );
    expect(shot.rollStart).toBeGreaterThan(0);
    const { x, y, time, phase } = shot;
    const end = time.length - 1;
    const from_ = phase.findIndex((turned) => turned >= last(phase) - 2 * Math.PI);
    const share = (last(phase) - 2 * Math.PI - phase[from_ - 1]) / (phase[from_] - phase[from_ - 1]);
    const before = (column: Float64Array): number =>
      column[from_ - 1] + share * (column[from_] - column[from_ - 1]);
    const [dx, dy, dt] = [x, y, time].map((column) => column[end] - before(column));
    return { speed: Math.hypot(dx, dy) / dt, heading: Math.atan2(-dx, dy), shot };
  };

  test('17.9 mph, 416 rpm, 45°, RG 2.55 in: 15.3 mph, 599 rpm, 7.34° from the launch line', () => {
    for (const friction of [0.05, 0.12, 0.3]) {
      const { shot } = rolled([0, 0, 0], friction, 0);
      expectWithin(last(shot.vy) / down, 1, 1e-6);
      expectWithin(-last(shot.vx) / across, 1, 1e-6);
      expectWithin(last(shot.spin) * radius, Math.hypot(down, across), 1e-6 * down);
      expectWithin(shot.rollHeading, Math.atan2(across, down), 1e-9);
    }
    expectWithin(Math.atan2(across, down) / DEGREE, 7.34, 0.005);
    expectWithin(Math.hypot(down, across) / radius / RPM, 599, 0.5);
  });

  test('a centre of mass off across the axis changes it by the square of its offset', () => {
    const headingOff = (offset: number): number => {
      const headings = PHASES.map((phase) => rolled([0, 0.8 * offset, 0.6 * offset], 0.12, phase).heading);
      return Math.abs(mean(headings) - Math.atan2(across, down));
    };
    const [whole, half] = [headingOff(2 * OFFSET), headingOff(OFFSET)];
    expect(whole).toBeLessThan(0.25 * DEGREE);
    expect(Math.log2(whole / half)).toBeGreaterThan(1.7);
  });

  test('the heading at which it will roll is foretold while it slides', () => {
    const short = rollShot(isotropicBall(gyration, radius), release, { x: 0, angle: 0 }, uniformLane(0.05), {
      step: 0.002,
      freshSurface: null,
      length: LANE_LENGTH,
      halfWidth: Number.POSITIVE_INFINITY,
    });
    expect(short.rollStart).toBe(-1);
    expectWithin(short.rollHeading, Math.atan2(across, down), 1e-9);
  });

  test('that of a drilled ball drifts as its axis precesses, and sways little', () => {
    const foretold = Array.from({ length: 60 }, (_, i) => {
      const shot = rollShot(drilledBall, usualRelease, { x: 0, angle: 0 }, uniformLane(0.05), {
        step: 0.002,
        freshSurface: null,
        length: 2 + 0.25 * i,
        halfWidth: Number.POSITIVE_INFINITY,
      });
      expect(shot.rollStart).toBe(-1);
      return shot.rollHeading / DEGREE;
    });
    // in a sixth of a turn; the ball's own heading sways by 0.25° meanwhile
    for (let i = 1; i < foretold.length; i++)
      expectWithin(foretold[i] as number, foretold[i - 1] as number, 0.05);
  });
});
