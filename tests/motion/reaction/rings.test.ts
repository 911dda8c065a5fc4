import { describe, expect, test } from 'vitest';
import { norm, type Vec3 } from '../../../src/math/vec3.js';
import { oiledLane } from '../../../src/motion/lane/oil.js';
import { uniformLane } from '../../../src/motion/lane/surface.js';
import { leastClearance, ringsOnBall } from '../../../src/motion/reaction/rings.js';
import { distanceToTrack } from '../../../src/motion/reaction/track.js';
import { rollShot } from '../../../src/motion/shot/shot.js';
import {
  drilledBall,
  expectWithin,
  isotropicBall,
  last,
  openLane,
  spinning,
  usualRelease,
} from '../../support/bodies.js';
import { demoPattern } from '../../support/patterns.js';

describe('distance from a point to a track on the sphere (exact)', () => {
  const equator = Float64Array.from({ length: 3 * 73 }, (_, n) => {
    const angle = (2 * Math.PI * Math.floor(n / 3)) / 72;
    return [Math.cos(angle), Math.sin(angle), 0][n % 3];
  });

  test('is the latitude of the point when the track is the equator', () => {
    for (const latitude of [0, 1e-9, 0.01, 0.5, 1.2])
      for (const longitude of [0.01, 0.043, 2]) {
        const point: Vec3 = [
          Math.cos(latitude) * Math.cos(longitude),
          Math.cos(latitude) * Math.sin(longitude),
          Math.sin(latitude),
        ];
        expectWithin(distanceToTrack(equator, point), latitude, 1e-12);
      }
  });

  test('is a right angle from the pole, and infinite to a track without points', () => {
    expectWithin(distanceToTrack(equator, [0, 0, 1]), Math.PI / 2, 1e-12);
    expect(distanceToTrack(new Float64Array(0), [0, 0, 1])).toBe(Number.POSITIVE_INFINITY);
  });

  test('runs to the end of a track that ends', () => {
    const piece = Float64Array.from([1, 0, 0, Math.cos(0.1), Math.sin(0.1), 0]);
    expectWithin(distanceToTrack(piece, [Math.cos(0.5), Math.sin(0.5), 0]), 0.4, 1e-12);
  });
});

describe('oil rings', () => {
  const shot = rollShot(drilledBall, usualRelease, { x: -0.1, angle: 0.03 }, oiledLane(demoPattern), {
    step: 0.002,
    freshSurface: null,
  });

  test('come one to each full turn, each beginning where the one before ends', () => {
    const rings = ringsOnBall(shot);
    expect(rings.length).toBe(Math.floor(last(shot.phase) / (2 * Math.PI)));
    rings.forEach((ring, i) => {
      expect(ring.turn).toBe(i + 1);
      for (const point of ring.points_B) expectWithin(norm(point), 1, 1e-12);
      if (i === 0) return;
      expect(ring.fromY).toBeGreaterThan(rings[i - 1].fromY);
      ring.points_B[0].forEach((c, k) => {
        expectWithin(c, rings[i - 1].points_B[rings[i - 1].points_B.length - 1][k], 1e-12);
      });
    });
  });

  test('the clearance of a hole is the distance of the ring less the hole’s radius', () => {
    // Level axis, no flare: the ring is the great circle a right angle from the PAP.
    const straight = rollShot(
      isotropicBall(0.064),
      spinning([-30, 0, 0]),
      { x: 0, angle: 0 },
      uniformLane(0),
      openLane(1, 0.002),
    );
    expectWithin(leastClearance(straight, [Math.sin(0.4), 0, Math.cos(0.4)], 0.1), 0.3, 1e-5);
    expectWithin(leastClearance(straight, [Math.sin(0.04), 0, Math.cos(0.04)], 0.1), -0.06, 1e-6); // runs over it
  });
});
