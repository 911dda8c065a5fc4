import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/math/vec3.js';
import { writeContact } from '../../../src/motion/kernel/contact-kinematics.js';
import { memory } from '../../../src/motion/kernel/memory.js';
import { setOut, writeContacts, writeOnePlace, writePlaces } from '../../../src/motion/kernel/path-ahead.js';
import { AHEAD, CONTACT, FLAG, STATE, STEP } from '../../../src/motion/kernel/slots.js';
import { beginShot } from '../../../src/motion/shot/begin-shot.js';
import { launchState } from '../../../src/motion/shot/launch-state.js';
import { principalBody } from '../../../src/motion/shot/principal-body.js';
import { drilledBall, expectVector, expectWithin, usualRelease } from '../../support/bodies.js';
import { uniformLane } from '../../support/dry-lanes.js';
import { turnedBall } from '../../support/turning-ball.js';

const { here, endRates, step, flags, ahead, contact, placeX, placeY, placeC, placeRing, placeShare } = memory;
const RING_PLACES = 100;
const ball = principalBody(drilledBall);

/** Sets out on a step of h seconds, cut into parts, under steady accelerations. */
function lookAlong(h: number, parts: number, acceleration_W: Vec3, pushed: readonly [number, number]): void {
  const launch = { x: -0.1, angle: 0.03 };
  const freshSurface = { bandWidth: 0.006, carriedShare: 0.2, wornPerPass: 0 };
  const settings = { step: h, freshSurface, ringPlaces: RING_PLACES };
  beginShot(ball, launchState(ball, usualRelease, launch), uniformLane(0.1), settings, false);
  here[STATE.PHASE] = 7.3;
  endRates.set(acceleration_W, STATE.WX);
  endRates.set(pushed, STATE.VX);
  step[STEP.H] = h;
  flags[FLAG.PARTS] = parts;
  setOut();
  writePlaces();
  writeContacts();
}

/** When the places are passed: Gauss's two points in each part, s. */
const timesOf = (h: number, parts: number): readonly number[] =>
  Array.from({ length: parts }, (_, k) =>
    [-1, 1].map((side) => (h * (k + 0.5 + side / Math.sqrt(12))) / parts),
  ).flat();

const contactAt = (i: number): Vec3 => [placeC[3 * i], placeC[3 * i + 1], placeC[3 * i + 2]];

describe('the way ahead', () => {
  // half a radian in a step; then turns so wide that sine and cosine need their whole range
  test.each([
    { h: 0.008, parts: 2 },
    { h: 0.008, parts: 7 },
    { h: 0.05, parts: 2 },
    { h: 0.16, parts: 2 },
    { h: 0.16, parts: 31 },
  ])('of a ball that turns evenly for $h s, in $parts parts: exact', ({ h, parts }) => {
    const times = timesOf(h, parts);
    lookAlong(h, parts, [0, 0, 0], [0, 0]);
    const want = times.map((t) => turnedBall([0, 0, 0], t));
    const seen = want.map((_, i) => ({
      ...{ x: placeX[i], y: placeY[i], contact: contactAt(i) },
      ...{ ring: placeRing[i], share: placeShare[i] },
    }));
    want.forEach(({ contact_P, phase }, i) => {
      expectWithin(seen[i].x, here[STATE.X] + here[STATE.VX] * times[i], 1e-14);
      expectWithin(seen[i].y, here[STATE.Y] + here[STATE.VY] * times[i], 1e-14);
      expectVector(seen[i].contact, contact_P, 1e-11);
      expect(seen[i].ring).toBe(Math.floor((phase * RING_PLACES) / (2 * Math.PI)));
      expectWithin(seen[i].ring + seen[i].share, (phase * RING_PLACES) / (2 * Math.PI), 1e-9);
    });
    expectVector(
      [...ahead.slice(AHEAD.MIDDLE, AHEAD.MIDDLE + 3)] as never,
      turnedBall([0, 0, 0], h / 2).contact_P,
      1e-11,
    );
  });

  test('of a pushed centre is a parabola', () => {
    lookAlong(0.01, 3, [0, 0, 0], [-3, 2]);
    timesOf(0.01, 3).forEach((t, i) => {
      expectWithin(placeX[i], here[STATE.X] + here[STATE.VX] * t - 1.5 * t * t, 1e-15);
      expectWithin(placeY[i], here[STATE.Y] + here[STATE.VY] * t + t * t, 1e-15);
    });
  });

  test('of a ball whose spin changes is seen with an error of the third power of the step', () => {
    const acceleration: Vec3 = [300, -500, 400];
    const errorOf = (h: number): number => {
      lookAlong(h, 2, acceleration, [0, 0]);
      const contacts = timesOf(h, 2).map((_, i) => contactAt(i));
      const middle = [...ahead.slice(AHEAD.MIDDLE, AHEAD.MIDDLE + 3)] as unknown as Vec3;
      const seen = [...contacts, middle];
      const errors = [...timesOf(h, 2), h / 2].map((t, i) =>
        Math.hypot(...turnedBall(acceleration, t).contact_P.map((c, k) => c - seen[i][k])),
      );
      return Math.max(...errors);
    };
    const errors = [0.004, 0.002, 0.001].map(errorOf);
    expect(errors[0]).toBeLessThan(1e-3);
    for (const k of [1, 2]) expect(Math.log2(errors[k - 1] / errors[k]), `${errors}`).toBeGreaterThan(2.8);
  });

  test('begins where the ball is', () => {
    lookAlong(0.008, 2, [0, 0, 0], [0, 0]);
    memory.trial.set(here);
    writeContact();
    writeOnePlace();
    const { contact_P, w_WP_P, phase } = turnedBall([0, 0, 0], 0);
    expectVector(contactAt(0), contact_P, 1e-15);
    expectWithin(contact[CONTACT.SPIN], Math.hypot(...w_WP_P), 1e-12);
    expectVector(
      [...contact.slice(CONTACT.A0, CONTACT.A0 + 3)] as never,
      w_WP_P.map((w) => w / Math.hypot(...w_WP_P)) as never,
      1e-14,
    );
    expect([placeX[0], placeY[0]]).toEqual([here[STATE.X], here[STATE.Y]]);
    expectWithin(placeRing[0] + placeShare[0], (phase * RING_PLACES) / (2 * Math.PI), 1e-12);
    expect(placeShare[0]).toBeGreaterThanOrEqual(0);
    expect(placeShare[0]).toBeLessThan(1);
  });

  test('a ball that does not spin has no axis', () => {
    memory.trial.set(here);
    for (const slot of [STATE.WX, STATE.WY, STATE.WZ]) memory.trial[slot] = 0;
    writeContact();
    for (const component of contact.slice(CONTACT.A0, CONTACT.SPIN + 1)) expectWithin(component, 0, 0);
  });
});
