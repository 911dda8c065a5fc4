import { describe, expect, test } from 'vitest';
import { DEGREE, INCH } from '../../../src/base/units.js';
import { ballPoint } from '../../../src/math/ball-point.js';
import { mulVec, transpose } from '../../../src/math/mat3.js';
import { cross, dot, scale, type Vec3 } from '../../../src/math/vec3.js';
import { type Release, releaseAxis, releaseOrientation } from '../../../src/motion/shot/release.js';
import { expectVector, expectWithin } from '../../support/bodies.js';

const radius = (27 * INCH) / (2 * Math.PI);
const release: Release = {
  speed: 7.8,
  spin: 34,
  axisTilt: 13 * DEGREE,
  axisRotation: 45 * DEGREE,
  pap_B: ballPoint((5 * INCH) / radius, (0.5 * INCH) / radius),
};
const R_WB = releaseOrientation(release);
const inLane = (u_B: Vec3): Vec3 => mulVec(R_WB, u_B);

describe('a right-hander’s release', () => {
  test('puts the PAP on the release axis, and nothing but turns the ball', () => {
    expectVector(inLane(release.pap_B), releaseAxis(release), 1e-14);
    expectVector(mulVec(transpose(R_WB), mulVec(R_WB, [0.2, -0.5, 0.7])), [0.2, -0.5, 0.7], 1e-14);
  });

  test('has the hand behind the ball and the fingers down (how a ball is delivered)', () => {
    const gripCentre = inLane([0, 0, 1]);
    const fingers = inLane([0, 1, 0]);
    expect(gripCentre[1]).toBeLessThan(-0.8); // toward the bowler
    expect(fingers[2]).toBeLessThan(-0.8); // toward the floor
  });

  test('rolls the ball down the lane and, by the axis rotation, to the left', () => {
    const rolling = cross(scale(release.spin, releaseAxis(release)), [0, 0, 1]); // v = R ω×z
    expect(rolling[1]).toBeGreaterThan(0);
    expectWithin(Math.atan2(-rolling[0], rolling[1]), release.axisRotation, 1e-12);
  });

  test('runs on a ring 90° plus the tilt from the PAP, on the far side of the thumb', () => {
    const contact_B = mulVec(transpose(R_WB), [0, 0, -1]);
    expectWithin(Math.acos(dot(contact_B, release.pap_B)), Math.PI / 2 + release.axisTilt, 1e-12);
  });

  test('a PAP on the fingers’ own axis has no “up along the VAL”: the grip’s centre points down instead', () => {
    for (const pap_B of [
      [0, 1, 0],
      [0, -1, 0],
    ] as const) {
      const R = releaseOrientation({ ...release, pap_B });
      expectVector(mulVec(R, pap_B), releaseAxis(release), 1e-15);
      // as nearly down as can be: the axis leans up by the tilt, so what is square to it falls short by as much
      expectVector([mulVec(R, [0, 0, 1])[2], 0, 0], [-Math.cos(release.axisTilt), 0, 0], 1e-15);
    }
  });

  test('the spin phase turns the ball about its PAP', () => {
    const turned = releaseOrientation({ ...release, spinPhase: 1 });
    expectVector(mulVec(turned, release.pap_B), releaseAxis(release), 1e-14);
    expectWithin(dot(mulVec(turned, [0, 1, 0]), inLane([0, 1, 0])) < 0.9 ? 0 : 1, 0, 0);
  });
});
