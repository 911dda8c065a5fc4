import { expect, test } from 'vitest';
import { tangentToward } from '../../../src/math/sphere.js';
import { addScaled, cross, dot, norm, rotateAbout, scale, type Vec3 } from '../../../src/math/vec3.js';
import { oiledLane } from '../../../src/motion/lane/oil.js';
import { bowTie } from '../../../src/motion/reaction/bow-tie.js';
import { ringsOnBall } from '../../../src/motion/reaction/rings.js';
import { distanceToTrack } from '../../../src/motion/reaction/track.js';
import { emptySamples } from '../../../src/motion/shot/samples.js';
import { rollShot, type Shot } from '../../../src/motion/shot/shot.js';
import {
  drilledBall,
  expectVector,
  expectWithin,
  isotropicBall,
  usualRelease,
} from '../../support/bodies.js';
import { uniformLane } from '../../support/dry-lanes.js';
import { demoPattern } from '../../support/patterns.js';

const STEPS = 60; // a turn

/**
 * A shot whose axis wanders evenly along an arc of the great circle z = 0, each contact `tilt` past its equator, and sways
 * to either side of it from sample to sample, rad.
 */
function wanderingShot(turns: number, arc: number, tilt: number, sway = 0): Shot {
  const samples = emptySamples(turns * STEPS + 1);
  for (let i = 0; i <= turns * STEPS; i++) {
    const along = (arc * i) / (turns * STEPS);
    const aside = i % 2 === 0 ? sway : -sway;
    const axis: Vec3 = [
      Math.cos(along) * Math.cos(aside),
      Math.sin(along) * Math.cos(aside),
      Math.sin(aside),
    ];
    const toZ = tangentToward(axis, [0, 0, 1]);
    const start = addScaled(scale(Math.cos(tilt), toZ), -Math.sin(tilt), axis);
    samples.phase[i] = (2 * Math.PI * i) / STEPS;
    samples.axis_B.set(axis, 3 * i);
    samples.contact_B.set(rotateAbout(start, axis, samples.phase[i]), 3 * i);
  }
  const launch = { x: 0, angle: 0 };
  return {
    ...samples,
    outcome: 'pins',
    launch,
    steps: 0,
    rollStart: -1,
    endAxis_W: [0, 0, 0],
    rollHeading: 0,
  };
}

test('great circles about axes of one arc cross at its two poles (exact)', () => {
  const [upper, lower] = bowTie(wanderingShot(10, 0.6, 0))!;
  for (const { point_B, spread } of [upper, lower]) {
    expectWithin(Math.abs(point_B[2]), 1, 1e-12);
    expectWithin(spread, 0, 1e-8); // from acos of numbers near 0, fed with rounding
  }
  expectWithin(upper.point_B[2] + lower.point_B[2], 0, 1e-12);
});

test('with a tilt the crossings move toward the track by about tilt, where the circles’ chord lies', () => {
  const tilt = 0.15;
  const arc = 0.6;
  const [a, b] = bowTie(wanderingShot(40, arc, tilt))!;
  // In the plane z = 0, least squares of a·p = −sin tilt over an even arc of axes: by symmetry p lies toward its middle,
  // at −sin tilt · mean(cos)/mean(cos²) (exact for the continuous arc; 40 turns sample it evenly)
  const half = arc / 2;
  const distance = (Math.sin(tilt) * (Math.sin(half) / half)) / (0.5 + Math.sin(2 * half) / (4 * half));
  const want: Vec3 = [
    -distance * Math.cos(half),
    -distance * Math.sin(half),
    Math.sqrt(1 - distance * distance),
  ];
  for (const { point_B } of [a, b]) expectVector([point_B[0], point_B[1], Math.abs(point_B[2])], want, 1e-6);
  expect(a.spread).toBeGreaterThan(0);
  expect(a.spread).toBeLessThan(0.01); // rings of one tilt do not meet in a point
});

test('of a real shot: every ring passes near both points, none of them as near to points between', () => {
  const shot = rollShot(drilledBall, usualRelease, { x: -0.1, angle: 0.03 }, oiledLane(demoPattern), {
    step: 0.002,
    freshSurface: null,
  });
  const points = bowTie(shot)!;
  const rings = ringsOnBall(shot).slice(0, 8);
  const missed = (p: Vec3): number => {
    const arcs = rings.map(({ points_B }) => distanceToTrack(Float64Array.from(points_B.flat()), p));
    return Math.sqrt(arcs.reduce((sum, arc) => sum + arc * arc, 0) / arcs.length);
  };
  for (const { point_B, spread } of points) {
    expectWithin(norm(point_B), 1, 1e-12);
    expect(missed(point_B)).toBeLessThan(2 * spread + 0.01);
    const aside = rotateAbout(point_B, cross(point_B, [1, 0, 0]), 0.3);
    expect(missed(aside)).toBeGreaterThan(2 * missed(point_B));
  }
  expect(points[0].point_B[1]).toBeGreaterThanOrEqual(points[1].point_B[1]);
});

test('a ball that does not flare has none, nor has one that never turned round', () => {
  const lane = uniformLane(0.1);
  const settings = { step: 0.004, freshSurface: null };
  expect(bowTie(rollShot(isotropicBall(0.064), usualRelease, { x: 0, angle: 0 }, lane, settings))).toBeNull();
  const short = { ...settings, length: 0.5 };
  expect(bowTie(rollShot(drilledBall, usualRelease, { x: 0, angle: 0 }, lane, short))).toBeNull();
});

test('rings far off their equators cross at places near one another: within an arc of cosine 0.9 they are one', () => {
  // the places lie at a distance d of the plane's middle (as above), d ∓ √(1 − d²) seen square to it: their cosine is 2 d² − 1
  const factor = Math.sin(ARC / 2) / (ARC / 2) / (0.5 + Math.sin(ARC) / (2 * ARC));
  const tiltFor = (cosine: number): number => Math.asin(Math.sqrt((1 + cosine) / 2) / factor);
  expect(bowTie(wanderingShot(40, ARC, tiltFor(0.91)))).toBeNull();
  const [a, b] = bowTie(wanderingShot(40, ARC, tiltFor(0.89)))!;
  expectWithin(dot(a.point_B, b.point_B), 0.89, 1e-4);
});

test('crossings are found on whichever axis of the ball they lie', () => {
  const shot = wanderingShot(10, ARC, 0);
  for (const shift of [1, 2]) {
    // x, y, z of the ball become y, z, x, and z, x, y
    const turned = (column: Float64Array): Float64Array =>
      column.map((_, i) => column[i - (i % 3) + ((i + 3 - shift) % 3)]);
    const [a, b] = bowTie({ ...shot, axis_B: turned(shot.axis_B), contact_B: turned(shot.contact_B) })!;
    for (const { point_B } of [a, b]) expectWithin(Math.abs(point_B[(2 + shift) % 3]), 1, 1e-12);
  }
});

test('less than a turn has none, however far the axis wandered', () => {
  expect(bowTie(wanderingShot(0.9, ARC, 0))).toBeNull();
  expect(bowTie(wanderingShot(1.5, ARC, 0))).not.toBeNull();
});

test.each([0.5, 1.5, 1.95])('an axis that wanders %s times as far as it sways has none', (stretch) => {
  expect(bowTie(wanderingShot(10, ARC, 0, swayFor(stretch)))).toBeNull();
});

test.each([2.05, 3, 20])('an axis that wanders %s times as far as it sways has two', (stretch) => {
  const [upper, lower] = bowTie(wanderingShot(10, ARC, 0, swayFor(stretch)))!;
  for (const { point_B } of [upper, lower]) expectWithin(Math.abs(point_B[2]), 1, 1e-3);
});

const ARC = 0.6;

/**
 * The sway s beside which the axis wanders so many times as far, root mean square: of axes even over an arc A that sway by ±s,
 * the mean of a aᵀ has the values (½ − sin A / 2A) cos² s along the arc and sin² s across it (exact for the continuous arc).
 */
const swayFor = (stretch: number): number => Math.atan(Math.sqrt(0.5 - Math.sin(ARC) / (2 * ARC)) / stretch);
