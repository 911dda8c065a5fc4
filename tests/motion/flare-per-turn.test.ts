import { expect, test } from 'vitest';
import { DEGREE, from, INCH, to } from '../../src/base/units.js';
import { arcAngle } from '../../src/math/sphere.js';
import type { Vec3 } from '../../src/math/vec3.js';
import { oiledLane } from '../../src/motion/lane/oil.js';
import { flareOf, visibleTurns } from '../../src/motion/reaction/flare.js';
import { ringFrom } from '../../src/motion/reaction/rings.js';
import { rollShot } from '../../src/motion/shot/shot.js';
import { expectWithin, last, openLane, unevenBall, usualRelease } from '../support/bodies.js';
import { uniformLane } from '../support/dry-lanes.js';
import { demoPattern } from '../support/patterns.js';

const SOURCE = 'torque-free precession of a symmetric top: S = πR (dI/I) sin 2θ a turn';
const ball = unevenBall([2.55, 2.55, 2.5]); // the pin on z
const SPIN = 40;

/** One whole turn, or more, of a ball whose axis starts at an angle from the pin; nothing disturbs it. */
const turnsFree = (turns: number, pinToAxis: number) => {
  const pap_B: Vec3 = [Math.sin(pinToAxis), 0, Math.cos(pinToAxis)];
  const release = { speed: 8, spin: SPIN, axisTilt: 0, axisRotation: 0, pap_B };
  const seconds = (2 * Math.PI * turns) / SPIN;
  return rollShot(ball, release, { x: 0, angle: 0 }, uniformLane(0), openLane(seconds, 0.0005));
};

test.each([
  { pinToAxisDeg: 15, wantIn: 0.2621 },
  { pinToAxisDeg: 45, wantIn: 0.5241991 },
  { pinToAxisDeg: 75, wantIn: 0.2621 },
])(
  `the axis wanders $wantIn in a turn, pin $pinToAxisDeg° from it (${SOURCE})`,
  ({ pinToAxisDeg, wantIn }) => {
    const shot = turnsFree(1, pinToAxisDeg * DEGREE);
    const n = shot.axis_B.length - 3;
    expectWithin(last(shot.phase), 2 * Math.PI, 1e-11);
    expectWithin(shot.axis_B[n + 2], Math.cos(pinToAxisDeg * DEGREE), 1e-10); // it circles the pin
    const azimuth = Math.atan2(shot.axis_B[n + 1], shot.axis_B[n]);
    const walked = Math.abs(azimuth) * Math.sin(pinToAxisDeg * DEGREE) * ball.radius;
    expectWithin(to(walked, INCH), wantIn, pinToAxisDeg === 45 ? 5e-8 : 2e-6); // the digits given
  },
);

test('with a level axis, rings lie as far apart at the widest as their poles', () => {
  // Each ring is the great circle of an axis that has gone round the pin by 2π (dI/I) cos θ a turn.
  const pinToAxis = 45 * DEGREE;
  const around = 3 * 2 * Math.PI * 0.0388312 * Math.cos(pinToAxis);
  const poles = 2 * Math.asin(Math.sin(pinToAxis) * Math.sin(around / 2)) * ball.radius;
  // A ring is not closed: it bends as its pole goes on, which moves the widest place a little.
  expectWithin(flareOf(turnsFree(4, pinToAxis), ball.radius), poles, 0.03 * poles);
});

test('of a ball that hardly flares, flare is as small as the distance of its rings, wherever they open', () => {
  // friction turns the axis of any ball in the lane by some degrees, so a ring does not quite meet its beginning; the oil is
  // that of 35 ft. Compared with all distances between points of the two rings, 0.75° apart, the first drawn on for 45°
  for (const tilt of [2, 14, 25]) {
    const slight = unevenBall([2.53, 2.5305, 2.531]);
    const shot = rollShot(
      slight,
      { ...usualRelease, axisTilt: tilt * DEGREE },
      { x: -0.1, angle: 0.04 },
      oiledLane({ ...demoPattern, frictionOiled: 0.025, filmScale: 3.2 }),
      { step: 0.004, freshSurface: null },
    );
    const first = [...ringFrom(shot, 0, 481), ...ringFrom(shot, 2 * Math.PI, 481).slice(0, 60)];
    const last = ringFrom(shot, 2 * Math.PI * (visibleTurns(shot) - 1), 49);
    const widest = Math.max(
      ...last.map((point) => Math.min(...first.map((other) => arcAngle(point, other)))),
    );
    const flare = flareOf(shot, slight.radius);
    expect(flare).toBeLessThan(from(0.25, INCH));
    expectWithin(flare, slight.radius * widest, from(0.01, INCH));
  }
});

test('no flare on the pin and a quarter turn from it (common practice: least at 0 and 6 3/4 in, no source)', () => {
  for (const angle of [0, Math.PI / 2]) expectWithin(flareOf(turnsFree(5, angle), ball.radius), 0, 1e-6);
});

test('most flare near 3 3/8 in from the pin (common practice, no source)', () => {
  const flareAt = (inches: number): number =>
    flareOf(turnsFree(3, from(inches, INCH) / ball.radius), ball.radius);
  const best = flareAt(3.375);
  expect(best).toBeGreaterThan(flareAt(2.5));
  expect(best).toBeGreaterThan(flareAt(4.25));
});
