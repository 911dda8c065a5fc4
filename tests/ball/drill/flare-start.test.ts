import { describe, expect, test } from 'vitest';
import { flareStart } from '../../../src/ball/drill/flare-start.js';
import { diagonal } from '../../../src/math/mat3.js';
import { unit, type Vec3 } from '../../../src/math/vec3.js';

const body = (moments: Vec3) => ({ mass: 1, p_BoBcm_B: [0, 0, 0] as Vec3, I_Bcm_B: diagonal(moments) });
const INERTIA = { low: 2.5 ** 2, high: 2.55 ** 2 }; // RG 2.50 in, differential 0.050 in

describe('flareStart', () => {
  test.each([
    { deg: 45, inches: 0.5241991, share: 1 },
    { deg: 15, inches: 0.2621, share: 0.5 },
    { deg: 75, inches: 0.2621, share: 0.5 },
    { deg: 0, inches: 0, share: 0 },
    { deg: 90, inches: 0, share: 0 },
  ])('a body of revolution, the axis $deg° from its pin (πR (dI/I) sin 2θ)', ({ deg, inches, share }) => {
    const angle = (deg * Math.PI) / 180;
    const found = flareStart(body([INERTIA.high, INERTIA.high, INERTIA.low]), [
      Math.sin(angle),
      0,
      Math.cos(angle),
    ]);
    expect(4.297 * found.perTurn).toBeCloseTo(inches, 4);
    expect(found.share).toBeCloseTo(share, 12);
  });

  test('three moments: free rotation from (1, 0, 1), by Jacobi’s functions (Landau & Lifshitz, §37)', () => {
    // (cn t, sn t, dn t) leaves (1, 0, 1) at right angles with unit speed; a turn takes 2π/√2
    expect(flareStart(body([1, 2, 3]), unit([1, 0, 1])).perTurn).toBeCloseTo(Math.PI, 12);
  });

  test('a ball of equal moments does not flare, nor could it', () => {
    expect(flareStart(body([6, 6, 6]), unit([1, 2, 3]))).toEqual({ perTurn: 0, share: 0 });
  });

  test('no axis flares more than one halfway between low-RG and high-RG axis', () => {
    const ball = body([2.5 ** 2, 2.53 ** 2, 2.55 ** 2]);
    for (let i = 0; i < 400; i += 1) {
      const [turn, rise] = [2.399963 * i, 1 - (2 * i + 1) / 400];
      const around = Math.sqrt(1 - rise ** 2);
      const { share } = flareStart(ball, [around * Math.cos(turn), around * Math.sin(turn), rise]);
      expect(share).toBeLessThanOrEqual(1 + 1e-12);
    }
    expect(flareStart(ball, unit([1, 0, -1])).share).toBeCloseTo(1, 12);
  });
});
