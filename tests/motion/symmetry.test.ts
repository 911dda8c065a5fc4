import { describe, expect, test } from 'vitest';
import { type Mat3, mulMat } from '../../src/math/mat3.js';
import { unit } from '../../src/math/vec3.js';
import { type OilPattern, oiledLane } from '../../src/motion/lane/oil.js';
import type { RollingBody } from '../../src/motion/shot/body.js';
import type { Release } from '../../src/motion/shot/release.js';
import { rollShot } from '../../src/motion/shot/shot.js';
import { drilledBall, expectWithin, isotropicBall, seeded, usualRelease } from '../support/bodies.js';
import { demoPattern } from '../support/patterns.js';

const MIRROR: Mat3 = [
  [-1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const SETTINGS = { step: 0.002, freshSurface: { bandWidth: 0.00635, carriedShare: 0.15, wornPerPass: 0.3 } };

const mirroredBody = (body: RollingBody): RollingBody => ({
  ...body,
  p_BoBcm_B: [-body.p_BoBcm_B[0], body.p_BoBcm_B[1], body.p_BoBcm_B[2]],
  I_Bcm_B: mulMat(mulMat(MIRROR, body.I_Bcm_B), MIRROR),
});

/** In a mirror the axis points the other way across and the spin about it is reversed. */
const mirroredRelease = (release: Release): Release => ({
  ...release,
  spin: -release.spin,
  axisRotation: Math.PI - release.axisRotation,
  pap_B: [-release.pap_B[0], release.pap_B[1], release.pap_B[2]],
});

const mirroredPattern = (pattern: OilPattern): OilPattern => ({
  ...pattern,
  zones: pattern.zones.map((zone) => ({ ...zone, fromX: -zone.toX, toX: -zone.fromX })),
});

test('mirrored ball, release, lane and launch roll the mirrored path, with carried oil too', () => {
  const there = rollShot(
    drilledBall,
    usualRelease,
    { x: -0.1, angle: 0.03 },
    oiledLane(demoPattern),
    SETTINGS,
  );
  const back = rollShot(
    mirroredBody(drilledBall),
    mirroredRelease(usualRelease),
    { x: 0.1, angle: -0.03 },
    oiledLane(mirroredPattern(demoPattern)),
    SETTINGS,
  );
  expect(there.outcome).toBe('pins');
  expect(there.rollStart).toBeGreaterThan(0);
  expect(back.rollStart).toBe(there.rollStart);
  expect(Math.max(...there.carried)).toBeGreaterThan(1); // carried oil does take part
  expect(back.time.length).toBe(there.time.length);
  for (let i = 0; i < there.time.length; i += 11) {
    expectWithin(back.x[i], -there.x[i], 1e-9);
    expectWithin(back.y[i], there.y[i], 1e-9);
    expectWithin(back.carried[i], there.carried[i], 1e-5);
  }
});

describe('a ball with equal moments and its centre of mass in its centre', () => {
  test('takes the same path however it lies in the hand', () => {
    const random = seeded(3);
    const lane = oiledLane(demoPattern);
    const body = isotropicBall(0.0645);
    const roll = (pap_B: Release['pap_B'], spinPhase: number) =>
      rollShot(body, { ...usualRelease, pap_B, spinPhase }, { x: -0.1, angle: 0.03 }, lane, SETTINGS);
    const first = roll([1, 0, 0], 0);
    for (let n = 0; n < 5; n++) {
      const other = roll(unit([random() - 0.5, random() - 0.5, random() - 0.5]), 6 * random());
      expect(other.time.length).toBe(first.time.length);
      for (let i = 0; i < first.time.length; i += 11) {
        expectWithin(other.x[i], first.x[i], 1e-10);
        expectWithin(other.y[i], first.y[i], 1e-10);
      }
    }
  });

  test('hardly leaves its first ring: the axis does not wander, so its cover is never fresh again', () => {
    const shot = rollShot(
      isotropicBall(0.0645),
      usualRelease,
      { x: -0.1, angle: 0.03 },
      oiledLane(demoPattern),
      SETTINGS,
    );
    const second = shot.phase.findIndex((turned) => turned > 2 * Math.PI);
    expect(shot.fresh[second - 2]).toBe(1);
    const rest = shot.fresh.slice(second + 1);
    expect(rest.reduce((sum, f) => sum + f, 0) / rest.length).toBeLessThan(0.2);
  });
});
