import { describe, expect, test } from 'vitest';
import { arcAngle, tangentToward, walk } from '../../../src/math/sphere.js';
import { norm, unit, type Vec3 } from '../../../src/math/vec3.js';
import { oiledLane } from '../../../src/motion/lane/oil.js';
import { leastClearance, ringsOnBall } from '../../../src/motion/reaction/rings.js';
import { distanceToTrack } from '../../../src/motion/reaction/track.js';
import { rollShot } from '../../../src/motion/shot/shot.js';
import {
  drilledBall,
  expectWithin,
  isotropicBall,
  last,
  openLane,
  seeded,
  spinning,
  usualRelease,
} from '../../support/bodies.js';
import { uniformLane } from '../../support/dry-lanes.js';
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

  test('a closed track goes on from its last point to its first, an open one does not', () => {
    // three quarters of the equator; the point lies over the middle of the gap
    const part = Float64Array.from([1, 0, 0, 0, 1, 0, -1, 0, 0, 0, -1, 0]);
    const over: Vec3 = [Math.cos(0.2) * Math.SQRT1_2, -Math.cos(0.2) * Math.SQRT1_2, Math.sin(0.2)];
    expectWithin(distanceToTrack(part, over, 'closed'), 0.2, 1e-12);
    expectWithin(distanceToTrack(part, over), Math.acos(over[0]), 1e-12); // to the nearer end
    const low: Vec3 = [over[1], over[0], over[2]]; // over the middle of the last piece, and of the same piece walked the other way
    expectWithin(distanceToTrack(part, low), 0.2, 1e-12);
    expectWithin(distanceToTrack(part, low, 'closed'), 0.2, 1e-12);
  });

  test('a point that comes twice makes a piece of no length, which is passed over', () => {
    const twice = Float64Array.from([1, 0, 0, 1, 0, 0, Math.cos(0.1), Math.sin(0.1), 0]);
    expectWithin(distanceToTrack(twice, [Math.cos(0.3), 0, Math.sin(0.3)]), 0.3, 1e-12);
    expectWithin(distanceToTrack(Float64Array.from([1, 0, 0, 1, 0, 0]), [0, 1, 0]), Math.PI / 2, 1e-12);
  });

  test('random great-circle pieces: the least over many points of all of them (to their gaps)', () => {
    const random = seeded(21);
    const any = (): Vec3 => unit([random() - 0.5, random() - 0.5, random() - 0.5]);
    for (let n = 0; n < 200; n++) {
      // pieces of 0.3 rad at most, bending by little: the nearest piece meets at the nearest point
      const start = any();
      const along = tangentToward(start, any());
      const ends = [0, 0.3, 0.6].map((arc) => walk(start, along, arc));
      const point = any();
      const fine = Array.from({ length: 601 }, (_, i) => arcAngle(walk(start, along, i / 1000), point));
      expectWithin(distanceToTrack(Float64Array.from(ends.flat()), point), Math.min(...fine), 1e-3);
    }
  });

  test('a pass that comes nearest between two points counts, though another pass has the nearest point', () => {
    const on = (longitude: number, latitude: number): Vec3 => [
      Math.cos(latitude) * Math.cos(longitude),
      Math.cos(latitude) * Math.sin(longitude),
      Math.sin(latitude),
    ];
    // along the equator, the point over the middle of a piece; then back along a parallel with a point right above it
    const equator = [-0.3, -0.1, 0.1, 0.3].map((longitude) => on(longitude, 0));
    const parallel = [0.2, 0, -0.2].map((longitude) => on(longitude, 0.06));
    const track = (points: readonly Vec3[]): Float64Array => Float64Array.from(points.flat());
    const point = on(0, 0.01);
    for (const ends of ['open', 'closed'] as const) {
      expectWithin(distanceToTrack(track([...equator, ...parallel]), point, ends), 0.01, 1e-12);
      expectWithin(distanceToTrack(track([...parallel, ...equator.toReversed()]), point, ends), 0.01, 1e-12);
    }
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

  test('of a ball that turns evenly begin where it has turned so often, and have points at equal angles', () => {
    const even = rollShot(
      isotropicBall(0.064),
      spinning([-30, 0, 0]),
      { x: 0, angle: 0 },
      uniformLane(0),
      openLane(1, 0.002),
    );
    const rings = ringsOnBall(even);
    expect(rings).toHaveLength(4); // 30 rad
    rings.forEach(({ fromY, points_B }, i) => {
      expectWithin(fromY, (8 * 2 * Math.PI * i) / 30, 1e-9);
      expect(points_B).toHaveLength(73);
      for (let n = 1; n < points_B.length; n++) {
        expectWithin(arcAngle(points_B[n - 1], points_B[n]), (2 * Math.PI) / 72, 2e-5); // chords between samples
        expectWithin(
          arcAngle(points_B[0], points_B[n]),
          Math.PI - Math.abs(Math.PI - (2 * Math.PI * n) / 72),
          2e-5,
        );
      }
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
