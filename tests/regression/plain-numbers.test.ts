import { describe, expect, test } from 'vitest';
import { GRAVITY, LANE_LENGTH } from '../../src/base/constants.js';
import { DEGREE, FOOT } from '../../src/base/units.js';
import { smeared } from '../../src/motion/lane/film-grid.js';
import { surfaceOf } from '../../src/motion/lane/surface.js';
import { turnedInOil } from '../../src/motion/reaction/flare.js';
import { hookOf } from '../../src/motion/reaction/hook.js';
import { rollShot } from '../../src/motion/shot/shot.js';
import { plainHook, plainHookStart, plainSharpness } from '../../src/regression/plain-numbers.js';
import { FEET, plainRoll } from '../../src/regression/plain-roll.js';
import { expectWithin, isotropicBall } from '../support/bodies.js';
import { uniformLane } from '../support/dry-lanes.js';

const RADIUS = 0.1085;
const SPEED = 8;

/** Of the plain ball, m. */
const GYRATION = Math.sqrt(0.352) * RADIUS;

describe('the plain roll', () => {
  test('of a ball that rolls from the start: straight, turning by its way over its radius (exact)', () => {
    const release = { speed: SPEED, spin: SPEED / RADIUS, axisTilt: 0, axisRotation: 0 };
    const launch = { x: 0.1, angle: 0 };
    const roll = plainRoll(RADIUS, release, launch, uniformLane(0.1), 0, 0);
    expectWithin(roll.turned[FEET], LANE_LENGTH / RADIUS, 1e-9);
    expectWithin(plainHook(roll, launch), 0, 1e-12);
    expect(plainHookStart(roll, launch)).toBe(LANE_LENGTH);
    expect(plainSharpness(roll)).toBe(0);
  });

  test('turns in oil until the film is too thin to leave a ring, between feet', () => {
    const release = { speed: SPEED, spin: SPEED / RADIUS, axisTilt: 0, axisRotation: 0 };
    // a film that falls by a unit a foot and is thinner than half a unit from 29.5 ft on
    const film = smeared((_, y) => 30 - y / FOOT, 0, 0); // without a kink, which the grid would round
    const lane = surfaceOf(film, { oiled: 0.1, dry: 0.1, filmScale: 1 });
    const roll = plainRoll(RADIUS, release, { x: 0, angle: 0 }, lane, 0, 0);
    expectWithin(turnedInOil(roll), (29.5 * FOOT) / RADIUS, 1e-9);
    const dry = plainRoll(RADIUS, release, { x: 0, angle: 0 }, uniformLane(0.1), 0, 0);
    expect(turnedInOil(dry)).toBe(dry.turned[FEET]);
  });

  test('of a ball that slides all the way hooks as the closed form says: a = −μ g ŝ on a parabola', () => {
    const mu = 0.04;
    const side = 4; // m/s of surface speed across, too fast to be stopped before the pins
    const spin = Math.hypot(SPEED, side) / RADIUS;
    const release = { speed: SPEED, spin, axisTilt: 0, axisRotation: Math.atan2(side, SPEED) };
    const roll = plainRoll(RADIUS, release, { x: 0, angle: 0 }, uniformLane(mu), 0, 0);
    const hook = (mu * GRAVITY * (LANE_LENGTH / SPEED) ** 2) / 2;
    // each foot takes the heading of its beginning: half a foot of sixty is lost, twice in a parabola
    expectWithin(plainHook(roll, { x: 0, angle: 0 }), hook, hook / FEET);
    expectWithin(plainSharpness(roll), (mu * GRAVITY) / SPEED ** 2, 1e-3 * ((mu * GRAVITY) / SPEED ** 2));
    // of what it would turn until it rolls, the part still to come counts at the pins
    const share = Math.tan(roll.heading[FEET]) / Math.tan(roll.rollHeading);
    expectWithin(plainHookStart(roll, { x: 0, angle: 0 }), LANE_LENGTH * (1 - share / 2), 0.51 * FOOT);
    const taken = 0.352 / 1.352;
    expectWithin(Math.tan(roll.rollHeading), (taken * side) / SPEED, 1e-12); // the friction-free formula
  });

  test('is near the engine’s shot of the same plain ball', () => {
    const release = { speed: SPEED, spin: 35, axisTilt: 10 * DEGREE, axisRotation: 50 * DEGREE };
    const launch = { x: -0.1, angle: 0.03 };
    const lane = uniformLane(0.07);
    const roll = plainRoll(RADIUS, release, launch, lane, 0, 0);
    const shot = rollShot(isotropicBall(GYRATION, RADIUS), { ...release, pap_B: [1, 0, 0] }, launch, lane, {
      step: 0.002,
      freshSurface: null,
    });
    const { start, total, sharpness } = hookOf(shot);
    expectWithin(plainHook(roll, launch), total, total / 40);
    expectWithin(plainHookStart(roll, launch), start, FOOT);
    expectWithin(plainSharpness(roll), sharpness, sharpness / 20);
    expectWithin(roll.turned[FEET], shot.phase[shot.phase.length - 1] as number, 0.02 * roll.turned[FEET]);
  });
});
