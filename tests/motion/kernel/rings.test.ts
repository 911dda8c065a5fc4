import { describe, expect, test } from 'vitest';
import { unit, type Vec3 } from '../../../src/math/vec3.js';
import { memory } from '../../../src/motion/kernel/memory.js';
import { findNearRings, layPlace, meetAllRings, meetNearRings } from '../../../src/motion/kernel/rings.js';
import { AHEAD, CONTACT, STATE, TRACK } from '../../../src/motion/kernel/slots.js';
import { oiledLane } from '../../../src/motion/lane/oil.js';
import { beginShot } from '../../../src/motion/shot/begin-shot.js';
import { principalBody } from '../../../src/motion/shot/principal-body.js';
import { rollShot } from '../../../src/motion/shot/shot.js';
import { drilledBall, expectWithin, last, unevenBall, usualRelease } from '../../support/bodies.js';
import { uniformLane } from '../../support/dry-lanes.js';
import { demoPattern } from '../../support/patterns.js';

const RADIUS = 0.109;
const WIDTH = 0.006;
const STEPS = 200; // a turn

/** What a contact met, sample by sample. */
interface Met {
  readonly carried: number[];
  readonly fresh: number[];
  readonly contact: Float64Array[];
}

/** A contact that draws great circles about an axis which may move from turn to turn, over a given film. */
function drawRings(
  turns: number,
  axisAt: (turn: number) => Vec3,
  filmAt: (turn: number) => number,
  wornPerPass = 0,
  steps = STEPS,
): Met {
  const met: Met = { carried: [], fresh: [], contact: [] };
  const { here, track, ahead, contact: spinning, placeC, placeFilm, placeRing, placeShare } = memory;
  const freshSurface = { bandWidth: WIDTH, carriedShare: 0.2, wornPerPass };
  const ball = principalBody({ ...drilledBall, radius: RADIUS });
  beginShot(ball, here.slice(), uniformLane(0), { step: 1, freshSurface, ringPlaces: steps }, false);
  for (let i = 0; i <= turns * steps; i++) {
    const turn = i / steps;
    const angle = 2 * Math.PI * turn;
    const a = unit(axisAt(turn));
    const u = unit([a[1], -a[0], 0]);
    const v: Vec3 = [a[1] * u[2] - a[2] * u[1], a[2] * u[0] - a[0] * u[2], a[0] * u[1] - a[1] * u[0]];
    const contact = Float64Array.from(u, (c, k) => Math.cos(angle) * c + Math.sin(angle) * v[k]);
    // a step from a place before to one after
    ahead[AHEAD.REACH] = (2 * Math.PI) / steps;
    ahead.set(contact, AHEAD.MIDDLE);
    spinning.set(a, CONTACT.A0);
    here[STATE.PHASE] = angle - 0.999 * ahead[AHEAD.REACH];
    findNearRings();
    track.set(contact, TRACK.CONTACT_P);
    track.set(a, TRACK.SPIN_P);
    placeFilm[0] = filmAt(turn);
    layPlace();
    placeC.set(contact);
    placeRing[0] = i;
    placeShare[0] = 0;
    meetNearRings(1);
    meetAllRings();
    met.carried.push(memory.placeCarried[0]);
    met.fresh.push(memory.placeFresh[0]);
    met.contact.push(contact);
  }
  return met;
}

test('a ring is near that the contact comes upon only toward the end of a step', () => {
  drawRings(
    1.5,
    () => [1, 0, 0],
    () => 30,
  );
  const { here, ahead, contact, placeC, placeRing, placeShare } = memory;
  const next = 1.5 * STEPS + 1;
  const turned = (2 * Math.PI * next) / STEPS;
  /** So many band widths beside the ring, where it is one turn old. */
  const beside = (bands: number): Vec3 => {
    const aside = (bands * WIDTH) / RADIUS;
    return [Math.sin(aside), -Math.cos(aside) * Math.cos(turned), -Math.cos(aside) * Math.sin(turned)];
  };
  ahead[AHEAD.REACH] = 0.05; // 0.9 band widths to either side of the middle
  ahead.set(beside(1.6), AHEAD.MIDDLE);
  contact.set([0, Math.sin(turned), -Math.cos(turned)], CONTACT.A0); // goes straight across
  here[STATE.PHASE] = turned - ahead[AHEAD.REACH];
  findNearRings();
  placeC.set(beside(0.75));
  placeRing[0] = next;
  placeShare[0] = 0;
  meetNearRings(1);
  expectWithin(memory.placeCarried[0], 0.2 * 30 * bump(RADIUS * beside(0.75)[0]), 1e-12);
});

/** The stated bump: (1 − (o/w)²)². */
const bump = (offset: number): number => Math.max(0, 1 - (offset / WIDTH) ** 2) ** 2;

describe('oil that the ball carries', () => {
  test('is none in the first turn: all cover is fresh', () => {
    const { carried, fresh } = drawRings(
      1,
      () => [1, 0.2, 0],
      () => 30,
    );
    expect(Math.max(...carried.slice(0, STEPS))).toBe(0);
    expect(Math.min(...fresh.slice(0, STEPS))).toBe(1);
  });

  test('is the stated share of the lane’s film where the ball rolls on the same ring again', () => {
    const { carried, fresh } = drawRings(
      3,
      () => [1, 0.2, 0],
      () => 30,
    );
    for (let i = STEPS + 1; i < carried.length; i += 17) {
      expectWithin(carried[i], 0.2 * 30, 1e-9);
      expectWithin(fresh[i], 0, 1e-9);
    }
  });

  test('keeps the oiliest of all earlier turns, long after the oil has ended', () => {
    const { carried } = drawRings(
      6,
      () => [1, 0.2, 0],
      (turn) => (turn < 1.5 ? 30 : 0),
    );
    expectWithin(carried[5.25 * STEPS], 6, 1e-9);
  });

  test('fades with the distance from the ring, and comes back where rings cross', () => {
    const tilt = 0.04; // second ring turned by this about the z axis: 4.4 mm apart at the widest, crossing at ±z
    const axis = (turn: number): Vec3 => (turn <= 1 ? [1, 0, 0] : [Math.cos(tilt), Math.sin(tilt), 0]);
    const { carried, contact } = drawRings(2, axis, (turn) => (turn <= 1 ? 30 : 0));
    for (let i = STEPS + 2; i < carried.length; i += 7) {
      const offset = RADIUS * contact[i][0]; // distance from the plane x = 0 of the first ring
      expectWithin(carried[i], 6 * bump(offset), 1e-3);
    }
    const over = Math.min(...carried.slice(STEPS + 2));
    expectWithin(over, 6 * bump(RADIUS * Math.sin(tilt)), 1e-2);
    expectWithin(Math.max(...carried.slice(STEPS + 2)), 6, 1e-2); // the bow tie
  });

  test('is none on rings farther apart than the band, save at the crossing', () => {
    const axis = (turn: number): Vec3 => [1, 0.3 * Math.floor(turn - 1e-9), 0];
    const { carried } = drawRings(2, axis, () => 30);
    const second = carried.slice(STEPS + 2);
    expect(second.filter((film) => film === 0).length / second.length).toBeGreaterThan(0.85);
  });
});

describe('oil that wears off the ball', () => {
  const oilFirst = (turn: number): number => (turn < 1.5 ? 30 : 0);

  test.each([0, 0.3, 0.7, 1])(
    'each pass over a ring takes its share %f off: (1 − share) to the power of passes',
    (share) => {
      const { carried } = drawRings(6, () => [1, 0.2, 0], oilFirst, share);
      // a quarter turn on, the last ring with oil was laid in the second turn; three quarters on, in the first
      expectWithin(carried[5.25 * STEPS], 6 * (1 - share) ** 3, 1e-9);
      expectWithin(carried[5.75 * STEPS], 6 * (1 - share) ** 4, 1e-9);
      expectWithin(carried[1.25 * STEPS], 6, 1e-9); // what is met is as the passes before have left it
    },
  );

  test('a pass beside the ring takes off as much less as the bump says', () => {
    const tilt = 0.03;
    const axis = (turn: number): Vec3 =>
      turn > 1 && turn <= 2 ? [Math.cos(tilt), Math.sin(tilt), 0] : [1, 0, 0];
    const { carried, contact } = drawRings(3, axis, (turn) => (turn <= 1 ? 30 : 0), 0.5);
    for (let i = 2 * STEPS + 4; i < carried.length - 2; i += 7) {
      // the second turn passed the first ring's point here at its distance from the tilted circle
      const offset = RADIUS * (Math.cos(tilt) * contact[i][0] + Math.sin(tilt) * contact[i][1]);
      expectWithin(carried[i], 6 * (1 - 0.5 * bump(offset)), 5e-3);
    }
  });

  test('however finely a turn is sampled: rings far apart wear where they cross', () => {
    const axis = (turn: number): Vec3 => [1, 0.5 * Math.floor(Math.min(turn, 3.999) - 1e-9), 0];
    const back = (turn: number): Vec3 => (turn > 3 ? [1, 0, 0] : axis(turn));
    // all oil left on the first ring, as the fourth turn finds it on going round it again: between zero and whole
    const left = (steps: number): number => {
      const { carried } = drawRings(4, back, (turn) => (turn <= 1 ? 30 : 0), 0.7, steps);
      const again = carried.slice(3 * steps + 1);
      return again.reduce((sum, film) => sum + film, 0) / again.length;
    };
    const [coarse, fine] = [left(48), left(960)];
    expect(fine).toBeLessThan(5.99);
    expectWithin(coarse, fine, 0.02 * 6);
  });
});

describe('wear where rings cross', () => {
  const worn = 0.6;
  const steps = 48;
  /** Integral of the bump over offsets in band widths, by the rule of middles. */
  const meanBump = (middle: number, half: number): number => {
    const count = 4000;
    let sum = 0;
    for (let i = 0; i < count; i++) sum += bump(WIDTH * (middle + half * ((2 * i + 1) / count - 1)));
    return sum / count;
  };

  test.each([0.01, 0.05, 0.12, 0.5, 1.2])(
    'at %f rad: as much is taken off a place as the bump says in the mean over the stretch around it',
    (tilt) => {
      const axis = (turn: number): Vec3 => (turn <= 1 ? [1, 0, 0] : [Math.cos(tilt), Math.sin(tilt), 0]);
      const { contact } = drawRings(2, axis, (turn) => (turn <= 1 ? 30 : 0), worn, steps);
      const offset = (i: number): number => (RADIUS * contact[i][0]) / WIDTH;
      for (let i = steps + 2; i < 2 * steps; i++) {
        const half = Math.abs(offset(i) - offset(i - 1)) / 2;
        expectWithin(memory.ringOil[i - steps], 30 * (1 - worn * meanBump(offset(i), half)), 1e-5);
      }
    },
  );

  test('spinning on the contact point draws no ring, and is no number nowhere', () => {
    const { carried, fresh } = drawRings(
      1,
      () => [1, 0, 0],
      () => 30,
      worn,
    );
    memory.track.set(memory.track.slice(TRACK.CONTACT_P, TRACK.CONTACT_P + 3), TRACK.SPIN_P);
    layPlace();
    const at = carried.length;
    for (const number of memory.ringPlane.slice(4 * at, 4 * at + 4))
      expect(Number.isFinite(number)).toBe(true);
    expect(fresh.every(Number.isFinite)).toBe(true);
  });
});

test('only the latest places are remembered: what was written over is neither met nor worn', () => {
  const steps = 2000; // a turn; 8.2 turns are remembered
  const [from, to] = [9.1, 9.15]; // turns at which oil is laid
  const worn = 0.3;
  const { carried, fresh } = drawRings(
    11.2,
    () => [1, 0.2, 0],
    (turn) => (turn >= from && turn < to ? 30 : 0),
    worn,
    steps,
  );
  for (let i = 0; i < carried.length; i += 20) {
    const turn = i / steps;
    const passes = Math.floor(turn) - 9;
    const isOver = turn % 1 > 0.101 && turn % 1 < 0.149 && passes > 0;
    const isBeside = turn % 1 < 0.099 || turn % 1 > 0.151 || passes <= 0;
    if (isOver) expectWithin(carried[i], 6 * (1 - worn) ** (passes - 1), 1e-9);
    if (isBeside) expect(carried[i], `${turn}`).toBe(0);
    if (turn > 1.01) expectWithin(fresh[i], 0, 1e-9);
  }
});

describe('what carried oil does to a shot', () => {
  const lane = oiledLane(demoPattern);
  const roll = (body: typeof drilledBall, carriedShare: number) =>
    rollShot(body, usualRelease, { x: -0.1, angle: 0.03 }, lane, {
      step: 0.002,
      freshSurface: { bandWidth: 0.00635, carriedShare, wornPerPass: 0 },
    });

  test('a share of nothing is the same as no coupling at all', () => {
    const none = rollShot(drilledBall, usualRelease, { x: -0.1, angle: 0.03 }, lane, {
      step: 0.002,
      freshSurface: null,
    });
    expect(last(roll(drilledBall, 0).x)).toBe(last(none.x));
  });

  test('a ball that flares hooks more than one that does not, by far more than its inertia alone would do', () => {
    const flares = unevenBall([2.55, 2.54, 2.49]); // pin near the grip's centre, some 70° from the PAP
    const tracks = unevenBall([2.527, 2.527, 2.527]);
    const more = (share: number): number => last(roll(tracks, share).x) - last(roll(flares, share).x);
    expect(more(0.15)).toBeGreaterThan(0.02); // m to the left
    expect(Math.abs(more(0))).toBeLessThan(0.0127); // half an inch
  });
});
