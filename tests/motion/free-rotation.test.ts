import { compiled, ellpj } from 'cephes';
import { beforeAll, describe, expect, test } from 'vitest';
import { INCH } from '../../src/base/units.js';
import type { Vec3 } from '../../src/math/vec3.js';
import type { RollingBody } from '../../src/motion/shot/body.js';
import { rollShot } from '../../src/motion/shot/shot.js';
import {
  angularVelocity_B,
  bodyOfMoments,
  expectVector,
  openLane,
  spinning,
  unevenBall,
} from '../support/bodies.js';
import { uniformLane } from '../support/dry-lanes.js';

/** ω in B after t seconds without friction, its centre of mass in its centre: free rotation. */
const afterFree = (body: RollingBody, w0_B: Vec3, t: number, step: number): Vec3 =>
  angularVelocity_B(rollShot(body, spinning(w0_B), { x: 0, angle: 0 }, uniformLane(0), openLane(t, step)));

// Tolerances: the step is chosen so that the method's own error stays below them (a tenth or less).

const SOURCE = 'Landau & Lifshitz, Mechanics, §37';

describe(`free rotation (${SOURCE})`, () => {
  beforeAll(() => compiled);

  test('moments 1, 2, 3: (cn t, sn t, dn t), and back after the period', () => {
    const body = bodyOfMoments([1, 2, 3]);
    expectVector(
      afterFree(body, [1, 0, 1], 1, 0.002),
      [0.57780247181208, 0.816176637479811, 0.882015815510536],
      1e-12,
    );
    expectVector(afterFree(body, [1, 0, 1], 6.93566754103174, 0.002), [1, 0, 1], 1e-11);
  });

  test('on the separatrix: (√3 sech t, √3 tanh t, sech t)', () => {
    const t = 2;
    const sech = 1 / Math.cosh(t);
    const want: Vec3 = [Math.sqrt(3) * sech, Math.sqrt(3) * Math.tanh(t), sech];
    expectVector(afterFree(bodyOfMoments([1, 2, 3]), [Math.sqrt(3), 0, 1], t, 0.002), want, 1e-10);
  });

  test('moments 1, 1, 2: the axis goes round at 3 rad/s', () => {
    const t = 0.7;
    const want: Vec3 = [Math.cos(3 * t), Math.sin(3 * t), 3];
    expectVector(afterFree(bodyOfMoments([1, 1, 2]), [1, 0, 3], t, 0.0005), want, 1e-11);
  });

  test('a ball of RG 2.500, 2.535, 2.550 in, at 2.5 s and after a whole round of its axis', () => {
    const body = unevenBall([2.5, 2.535, 2.55]);
    const want: Vec3 = [10.32957511, 29.04515178, 1.20317998];
    expectVector(afterFree(body, [18, 12, 22], 2.5, 0.0005), want, 1e-8); // the digits given
    expectVector(afterFree(body, [18, 12, 22], 13.3674388438, 0.0005), [18, 12, 22], 2e-8);
  });

  test('the same ball from another start agrees with Jacobi functions of another program (cephes)', () => {
    const mass = 6.8;
    const [I1, I2, I3] = [2.5, 2.535, 2.55].map((k) => mass * (k * INCH) ** 2);
    const [w1, w3] = [14, 26];
    const twiceEnergy = I1 * w1 ** 2 + I3 * w3 ** 2;
    const momentum2 = (I1 * w1) ** 2 + (I3 * w3) ** 2;
    expect(momentum2).toBeGreaterThan(twiceEnergy * I2); // the case that §37 writes out
    const rate = Math.sqrt(((I3 - I2) * (momentum2 - twiceEnergy * I1)) / (I1 * I2 * I3));
    const m = ((I2 - I1) * (twiceEnergy * I3 - momentum2)) / ((I3 - I2) * (momentum2 - twiceEnergy * I1));
    const w2 = Math.sqrt((twiceEnergy * I3 - momentum2) / (I2 * (I3 - I2)));
    for (const t of [0.3, 1.1, 2.9]) {
      const [, { sn, cn, dn }] = ellpj(rate * t, m);
      const got = afterFree(unevenBall([2.5, 2.535, 2.55]), [w1, 0, w3], t, 0.0005);
      expectVector(got, [w1 * cn, w2 * sn, w3 * dn], 1e-8);
    }
  });

  test('energy and angular momentum of free rotation hold', () => {
    const body = unevenBall([2.5, 2.535, 2.55]);
    const moments = [2.5, 2.535, 2.55].map((k) => 6.8 * (k * INCH) ** 2);
    const sum = (w: Vec3, power: 1 | 2): number =>
      w.reduce((s, wi, i) => s + moments[i] ** power * wi * wi, 0);
    const before: Vec3 = [18, 12, 22];
    const after = afterFree(body, before, 3, 0.0005);
    expect(Math.abs(sum(after, 1) / sum(before, 1) - 1)).toBeLessThan(1e-10);
    expect(Math.abs(sum(after, 2) / sum(before, 2) - 1)).toBeLessThan(1e-10);
  });
});
