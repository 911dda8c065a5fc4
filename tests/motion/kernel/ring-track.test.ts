import { expect, test } from 'vitest';
import type { Vec3 } from '../../../src/math/vec3.js';
import { memory } from '../../../src/motion/kernel/memory.js';
import { followTrack, setTrack, startTrack } from '../../../src/motion/kernel/ring-track.js';
import { FLAG, STATE, STEP, TRACK } from '../../../src/motion/kernel/slots.js';
import { beginShot } from '../../../src/motion/shot/begin-shot.js';
import { launchState } from '../../../src/motion/shot/launch-state.js';
import { principalBody } from '../../../src/motion/shot/principal-body.js';
import { drilledBall, expectVector, expectWithin, usualRelease } from '../../support/bodies.js';
import { uniformLane } from '../../support/dry-lanes.js';
import { turnedBall } from '../../support/turning-ball.js';

const { here, next, startRates, endRates, step, flags, track } = memory;
const { X, Y, VX, QW, WX, PHASE } = STATE;
const ball = principalBody(drilledBall);
const ACCELERATION: Vec3 = [30, -50, 40];
const PUSHED = [-3, 2] as const;
const RING_PLACES = 2000;

/** Lays a track through a step of a ball that turns and goes under steady accelerations. */
function layTrack(h: number): void {
  const freshSurface = { bandWidth: 0.006, carriedShare: 0.2, wornPerPass: 0 };
  const settings = { step: h, freshSurface, ringPlaces: RING_PLACES };
  beginShot(
    ball,
    launchState(ball, usualRelease, { x: -0.1, angle: 0.03 }),
    uniformLane(0.1),
    settings,
    false,
  );
  here[PHASE] = 7.3;
  step[STEP.H] = h;
  const { axes_W, phase } = turnedBall(ACCELERATION, h);
  next.set(here);
  [X, Y].forEach((slot, i) => {
    next[slot] += h * here[VX + i] + (h * h * PUSHED[i]) / 2;
    next[VX + i] += h * PUSHED[i];
  });
  next.set(quaternionOf(axes_W), QW);
  ACCELERATION.forEach((by, i) => {
    next[WX + i] += h * by;
  });
  next[PHASE] = phase;
  for (const [state, rates] of [
    [here, startRates],
    [next, endRates],
  ] as const) {
    rates.set(ACCELERATION, WX);
    rates[PHASE] = Math.hypot(state[WX], state[WX + 1], state[WX + 2]);
  }
}

/** Of a rotation that takes the axes of P to these, its scalar part not small. */
function quaternionOf([a, b, c]: readonly Vec3[]): readonly number[] {
  const w = Math.sqrt(1 + a[0] + b[1] + c[2]) / 2;
  return [w, (b[2] - c[1]) / (4 * w), (c[0] - a[2]) / (4 * w), (a[1] - b[0]) / (4 * w)];
}

/** The time at which the ball has turned so far, by halving. */
function whenTurned(angle: number, h: number): number {
  let [low, high] = [0, h];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (turnedBall(ACCELERATION, middle).phase < angle) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const errorsIn = (h: number): readonly number[] => {
  layTrack(h);
  setTrack();
  const place = Math.ceil((RING_PLACES * (here[PHASE] + 0.37 * (next[PHASE] - here[PHASE]))) / (2 * Math.PI));
  flags[FLAG.PLACES] = place;
  followTrack();
  const t = whenTurned((2 * Math.PI * place) / RING_PLACES, h);
  const { contact_P, w_WP_P } = turnedBall(ACCELERATION, t);
  const off = (at: number, want: readonly number[]): number =>
    Math.hypot(...want.map((value, i) => track[at + i] - value));
  return [
    off(
      TRACK.ON_X,
      [0, 1].map((i) => here[i] + t * here[VX + i] + (t * t * PUSHED[i]) / 2),
    ),
    off(TRACK.CONTACT_P, contact_P),
    off(TRACK.SPIN_P, w_WP_P) / 40,
  ];
};

test('the track lies where the ball has turned as far as the next place of a ring', () => {
  const [coarse, fine] = [errorsIn(0.016), errorsIn(0.008)];
  const orders = coarse.map((error, i) => Math.log2(error / fine[i]));
  const [ofCentre, ofContact, ofSpin] = orders;
  expect(Math.max(...coarse)).toBeLessThan(3e-4);
  // cubics err by the fourth power of the step; when a place is passed is found by one step of Newton's method, to the third
  expect(ofCentre, `${coarse} ${fine}`).toBeGreaterThan(2.8);
  expect(ofContact, `${coarse} ${fine}`).toBeGreaterThan(3.8);
  expect(ofSpin, `${coarse} ${fine}`).toBeGreaterThan(3.8);
});

test('the track begins where the ball stands', () => {
  layTrack(0.008);
  memory.trial.set(here);
  startTrack();
  const { contact_P, w_WP_P } = turnedBall(ACCELERATION, 0);
  expect([track[TRACK.ON_X], track[TRACK.ON_Y]]).toEqual([here[X], here[Y]]);
  expectVector([...track.slice(TRACK.CONTACT_P, TRACK.CONTACT_P + 3)] as never, contact_P, 1e-15);
  expectVector([...track.slice(TRACK.SPIN_P, TRACK.SPIN_P + 3)] as never, w_WP_P, 1e-12);
  expectWithin(track[TRACK.TURNED], here[PHASE], 0);
});
