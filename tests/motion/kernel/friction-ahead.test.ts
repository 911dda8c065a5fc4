import { describe, expect, test } from 'vitest';
import { FOOT } from '../../../src/base/units.js';
import { frictionAt } from '../../../src/motion/kernel/film.js';
import {
  expectStep,
  findFriction,
  frictionFor,
  lookAhead,
  writeShareHeld,
} from '../../../src/motion/kernel/friction-ahead.js';
import { memory } from '../../../src/motion/kernel/memory.js';
import { FLAG, STATE, STEP } from '../../../src/motion/kernel/slots.js';
import { GRID } from '../../../src/motion/lane/film-grid.js';
import { oiledLane } from '../../../src/motion/lane/oil.js';
import { type Surface, surfaceOf } from '../../../src/motion/lane/surface.js';
import { beginShot } from '../../../src/motion/shot/begin-shot.js';
import { launchState } from '../../../src/motion/shot/launch-state.js';
import { principalBody } from '../../../src/motion/shot/principal-body.js';
import { drilledBall, expectWithin, usualRelease } from '../../support/bodies.js';
import { uniformLane } from '../../support/dry-lanes.js';
import { demoPattern } from '../../support/patterns.js';

const { here, endRates, middleRates, step, flags } = memory;
const { X, Y, VX, VY, NORMAL, PUSH_X, PUSH_Y } = STATE;
const ball = principalBody(drilledBall);
const oiled = oiledLane(demoPattern);

/** A ball at a place on a lane, about to take a step of h seconds; it has no oil of its own. */
function standAt(lane: Surface, x: number, y: number, h: number): void {
  const launch = { x: 0, angle: 0.1 };
  const settings = { step: h, freshSurface: null };
  beginShot(ball, launchState(ball, usualRelease, launch), lane, settings, false);
  here[X] = x;
  here[Y] = y;
  endRates[VX] = -1.5;
  endRates[VY] = 0.7;
  step[STEP.H] = h;
  expectStep();
}

/** The lane's friction a share of the step on. */
const frictionOn = (lane: Surface, share: number): number => {
  const t = share * step[STEP.H];
  const x = here[X] + here[VX] * t + (endRates[VX] * t * t) / 2;
  const y = here[Y] + here[VY] * t + (endRates[VY] * t * t) / 2;
  return frictionAt(lane, x, y);
};

/** Mean over a step of what is given over shares of it, by the rule of middles. */
function meanOver(of: (share: number) => number): number {
  const count = 2000;
  let sum = 0;
  for (let i = 0; i < count; i++) sum += of((i + 0.5) / count);
  return sum / count;
}

describe('lookAhead', () => {
  // where the oil ends: friction rises tenfold within half a metre
  test.each([
    { x: 0.05, y: 39 * FOOT, h: 0.008 },
    { x: 0.05, y: 40 * FOOT, h: 0.008 },
    { x: 0.24, y: 20 * FOOT, h: 0.012 },
  ])('the line that fits friction best over $h s from $x m, $y m on', ({ x, y, h }) => {
    standAt(oiled, x, y, h);
    const mean = meanOver((share) => frictionOn(oiled, share));
    const slope = 3 * meanOver((share) => (2 * share - 1) * frictionOn(oiled, share)); // least squares on 2 share − 1
    lookAhead();
    expect(Math.abs(slope)).toBeGreaterThan(5e-5);
    expectWithin(step[STEP.MEAN], mean, 2e-6);
    expectWithin(step[STEP.SLOPE], slope, 2e-6);
    expect(flags[FLAG.IS_LOST]).toBe(0);
  });

  test('is the lane’s own friction where there is no film, lost where that is negative or no number', () => {
    standAt(uniformLane(0.17), 0, 3, 0.008);
    step[STEP.SLOPE] = 1;
    lookAhead();
    expect([step[STEP.MEAN], step[STEP.SLOPE], flags[FLAG.IS_LOST]]).toEqual([0.17, 0, 0]);
    standAt(uniformLane(0), 0, 3, 0.008);
    lookAhead();
    expect(flags[FLAG.IS_LOST]).toBe(0);
    for (const friction of [-0.01, Number.NaN]) {
      standAt(uniformLane(friction), 0, 3, 0.008);
      lookAhead();
      expect(flags[FLAG.IS_LOST], `${friction}`).toBe(1);
    }
  });

  test.each([
    { name: 'a film less than nothing', film: (y: number) => (y > 10.03 ? -1 : 1), law: { dry: 0.2 } },
    {
      name: 'a film that is no number',
      film: (y: number) => (y > 10.03 ? Number.NaN : 1),
      law: { dry: 0.2 },
    },
    { name: 'friction less than nothing', film: () => 0.1, law: { dry: -0.2 } },
  ])('the ball is lost where it comes upon $name', ({ film, law }) => {
    const made = oiled.film!.map((_, i) => film((Math.floor(i / GRID.COLUMNS) - 1) / GRID.PER_CELL_Y));
    const lane = {
      ...surfaceOf(made, { oiled: 0.04, filmScale: 3, ...law }),
      filmEnd: Number.POSITIVE_INFINITY,
    };
    standAt(lane, 0, 10, 0.008);
    lookAhead();
    expect(flags[FLAG.IS_LOST]).toBe(1);
  });

  test('findFriction is friction where the ball stands', () => {
    for (const [x, y] of [
      [0.05, 39 * FOOT],
      [-0.3, 20 * FOOT],
      [0, 50 * FOOT],
    ] as const) {
      standAt(oiled, x, y, 0.008);
      findFriction();
      expectWithin(step[STEP.FOUND], frictionAt(oiled, x, y), 1e-15);
    }
  });
});

describe('writeShareHeld', () => {
  const NORMAL_FORCE = 70;
  const push = (rates: Float64Array, needed: number): void => {
    rates[NORMAL] = NORMAL_FORCE;
    rates[PUSH_X] = 0.6 * needed * NORMAL_FORCE;
    rates[PUSH_Y] = -0.8 * needed * NORMAL_FORCE;
  };

  /** How long friction holds a ball that needs friction along the parabola through start, middle and end of the step. */
  function held(y: number, h: number, [start, middle, end]: readonly [number, number, number]): number {
    standAt(oiled, 0.05, y, h);
    findFriction();
    step[STEP.NEEDED] = start;
    push(middleRates, middle);
    push(endRates, end);
    flags[FLAG.PARTS] = 16;
    writeShareHeld();
    return step[STEP.HELD];
  }

  const parabola =
    ([start, middle, end]: readonly [number, number, number]) =>
    (s: number): number =>
      start * (1 - s) * (1 - 2 * s) + middle * 4 * s * (1 - s) + end * s * (2 * s - 1);

  test('needs what the contact force asks for, over the normal force', () => {
    push(middleRates, 0.13);
    expectWithin(frictionFor(middleRates), 0.13, 1e-15);
  });

  test.each([
    // friction rises here, from 0.074 to 0.083 in the step
    { name: 'asked for ever more', needs: [0.05, 0.07, 0.1] as const },
    { name: 'asked for most at mid-step', needs: [0.03, 0.09, 0.05] as const },
    { name: 'asked for more at once', needs: [0.0735, 0.085, 0.09] as const },
  ])('$name: just past the place where friction gives out', ({ needs }) => {
    const [y, h] = [39 * FOOT, 0.012];
    const share = held(y, h, needs);
    const spare = (s: number): number => frictionOn(oiled, s) - parabola(needs)(s);
    expect(spare(0)).toBeGreaterThan(0);
    let gone = 0;
    while (spare(gone) >= 0 && gone < 1) gone += 1e-4;
    expect(gone).toBeLessThan(1);
    expect(spare(share)).toBeLessThan(0);
    expect(share - gone).toBeLessThan(0.05 / 16 + 2e-4); // a few hundredths of the gap between two looks
  });

  test('the whole step where friction is enough', () => {
    expect(held(39 * FOOT, 0.012, [0.05, 0.04, 0.06])).toBe(1);
  });
});
