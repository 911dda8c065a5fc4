import { Solver } from 'odex';
import { expect, test } from 'vitest';
import { mulVec, transpose } from '../../src/math/mat3.js';
import { scale, unit, type Vec3 } from '../../src/math/vec3.js';
import { releaseAxis, releaseOrientation } from '../../src/motion/shot/release.js';
import { rollShot } from '../../src/motion/shot/shot.js';
import { sceneStart, slidingRates } from '../oracles/newton-euler.js';
import { expectVector, expectWithin, last, openLane, SKEW, seeded, unevenBall } from '../support/bodies.js';
import { uniformLane } from '../support/dry-lanes.js';

const SOURCE = 'odex on equations derived another way';
const FRICTION = 0.12;
const GRAVITY = 9.80665;
const SECONDS = 0.9; // all of it sliding

test(`random uneven balls off their centres slide as an adaptive integrator says they do (${SOURCE})`, () => {
  const random = seeded(5);
  const spread = (size: number): number => size * (2 * random() - 1);
  for (let n = 0; n < 4; n++) {
    const body = unevenBall(
      [2.5 + spread(0.03), 2.54 + spread(0.02), 2.56 + spread(0.02)],
      [spread(0.001), spread(0.001), spread(0.001)],
      SKEW,
    );
    const release = {
      speed: 8 + spread(1),
      spin: 35 + spread(10),
      axisTilt: 0.2 + spread(0.2),
      axisRotation: 0.9 + spread(0.4),
      pap_B: unit([1, spread(0.3), spread(0.5)]),
      spinPhase: spread(3),
    };
    const launch = { x: spread(0.3), angle: spread(0.05) };
    const shot = rollShot(body, release, launch, uniformLane(FRICTION), openLane(SECONDS, 0.0005));
    expect(shot.rollStart).toBe(-1);

    const solver = new Solver(16);
    solver.absoluteTolerance = solver.relativeTolerance = 1e-12;
    const w_W = scale(release.spin, releaseAxis(release));
    const start = sceneStart(body, release, launch, w_W, releaseOrientation(release));
    const { y: s } = solver.solve(slidingRates(body, FRICTION, GRAVITY), 0, start, SECONDS);

    expectWithin(last(shot.x), s[0], 1e-8);
    expectWithin(last(shot.y), s[1], 1e-8);
    expectWithin(last(shot.vx), s[2], 1e-8);
    expectWithin(last(shot.vy), s[3], 1e-8);
    const w: Vec3 = [s[4], s[5], s[6]];
    expectWithin(last(shot.spin), Math.hypot(...w), 1e-7); // ω is some 40 rad/s: the same digits
    expectVector(shot.endAxis_W, unit(w), 1e-8);
    const R_BW = transpose([
      [s[7], s[8], s[9]],
      [s[10], s[11], s[12]],
      [s[13], s[14], s[15]],
    ]);
    expectVector([...shot.contact_B.slice(-3)] as unknown as Vec3, mulVec(R_BW, [0, 0, -1]), 1e-7); // 36 rad turned
  }
});
