import { expect, test } from 'vitest';
import { diagonal, mulMat, mulVec, transpose } from '../../../src/math/mat3.js';
import { cross, scale, unit } from '../../../src/math/vec3.js';
import { memory } from '../../../src/motion/kernel/memory.js';
import { writeRotation } from '../../../src/motion/kernel/rotation.js';
import { STATE } from '../../../src/motion/kernel/slots.js';
import { launchState } from '../../../src/motion/shot/launch-state.js';
import { principalBody } from '../../../src/motion/shot/principal-body.js';
import { type Release, releaseAxis, releaseOrientation } from '../../../src/motion/shot/release.js';
import { expectVector, expectWithin, SKEW, seeded, unevenBall } from '../../support/bodies.js';

const { X, Y, VX, VY, QW, WX, PHASE } = STATE;
const body = principalBody(unevenBall([2.5, 2.535, 2.55], [0.0008, -0.0005, 0.0006], SKEW));

test('the quaternion at release is the orientation, of length one, whichever of its parts is the largest', () => {
  const random = seeded(21);
  const { trial, R_WP } = memory;
  const largest = new Set<string>();
  for (let n = 0; n < 60; n++) {
    const release: Release = {
      ...{ speed: 8, spin: 30, spinPhase: 7 * random() },
      ...{ axisTilt: random() - 0.5, axisRotation: 6 * random() },
      pap_B: unit([random() - 0.5, random() - 0.5, random() - 0.5]),
    };
    trial.set(launchState(body, release, { x: 0.1, angle: 0.04 }));
    const quaternion = [...trial.slice(QW, QW + 4)];
    const by = Math.max(...quaternion.map(Math.abs));
    largest.add(`${quaternion.findIndex((part) => Math.abs(part) === by)}`);
    expectWithin(Math.hypot(...quaternion), 1, 1e-15);
    expect(by).toBeGreaterThanOrEqual(0.5);
    writeRotation();
    const want = mulMat(releaseOrientation(release), body.R_BP).flat();
    want.forEach((entry, i) => {
      expectWithin(R_WP[i], entry, 1e-14);
    });
  }
  expect([...largest].sort()).toEqual(['0', '1', '2', '3']);
});

test.each([
  { name: 'as the lane', turn: [1, 1, 1], quaternion: [1, 0, 0, 0] },
  { name: 'half a turn about x', turn: [1, -1, -1], quaternion: [0, 1, 0, 0] },
  { name: 'half a turn about y', turn: [-1, 1, -1], quaternion: [0, 0, 1, 0] },
  { name: 'half a turn about z', turn: [-1, -1, 1], quaternion: [0, 0, 0, 1] },
] as const)('the quaternion of a body that lies $name', ({ turn, quaternion }) => {
  const release: Release = { speed: 8, spin: 30, axisTilt: 0.3, axisRotation: 0.9, pap_B: [1, 0, 0] };
  const R_BP = mulMat(transpose(releaseOrientation(release)), diagonal(turn));
  const state = launchState({ ...body, R_BP }, release, { x: 0, angle: 0 });
  state.slice(QW, QW + 4).forEach((part, i) => {
    expectWithin(Math.abs(part), quaternion[i], 1e-15);
  });
});

test('the centre of mass is where it is sent from and goes where it is sent; the centre swings about it', () => {
  const release: Release = {
    speed: 8,
    spin: 30,
    axisTilt: 0.3,
    axisRotation: 0.9,
    pap_B: unit([1, 0.2, 0.3]),
  };
  const [x, angle] = [0.12, 0.05];
  const state = launchState(body, release, { x, angle });
  const w_W = scale(release.spin, releaseAxis(release));
  expectVector([...state.slice(WX, WX + 3)] as never, w_W, 1e-14);
  const offset_W = mulVec(mulMat(releaseOrientation(release), body.R_BP), body.p_BoBcm_P);
  expectWithin(state[X] + offset_W[0], x, 1e-16);
  expectWithin(state[Y] + offset_W[1], 0, 1e-16);
  const swing_W = cross(w_W, offset_W);
  expectWithin(state[VX] + swing_W[0], 8 * Math.sin(angle), 1e-15);
  expectWithin(state[VY] + swing_W[1], 8 * Math.cos(angle), 1e-14);
  expect(state[PHASE]).toBe(0);
});
