import { describe, expect, test } from 'vitest';
import { fromColumns, rotateTensor, transpose } from '../../src/math/mat3.js';
import { cross, norm, unit, type Vec3 } from '../../src/math/vec3.js';
import { rollShot } from '../../src/motion/shot/shot.js';
import { writeWander } from '../../src/regression/axis-wander.js';
import { angularVelocity_B, openLane, spinning, unevenBall } from '../support/bodies.js';
import { uniformLane } from '../support/dry-lanes.js';

/** A ball whose principal axes lie anyhow to its PAP, which is x; up is y. */
const ball = (x: Vec3, nearY: Vec3) => {
  const z = unit(cross(x, nearY));
  const body = unevenBall([2.49, 2.525, 2.54]);
  const R = fromColumns(unit(x), cross(z, unit(x)), z);
  return { ...body, I_Bcm_B: rotateTensor(transpose(R), body.I_Bcm_B) };
};

const CASES: readonly (readonly [string, ReturnType<typeof ball>])[] = [
  ['near the axis of low RG', ball([0.9, 0.3, 0.2], [0, 1, 0.2])],
  ['near the axis of high RG', ball([0.2, 0.3, 0.9], [1, 0, 0])],
  ['near the middle axis, where it runs away', ball([0.2, 0.95, 0.1], [0.1, 0, 1])],
];

/** Of the three moments, relative: the closed form takes one of them for all where it divides. */
const SPREAD = (2.54 / 2.49) ** 2 - 1;

/** Distance, parts up and toward the grip, and rate by the closed form. */
function closedForm({ I_Bcm_B: I }: ReturnType<typeof ball>, turned: number): readonly number[] {
  const out = Float32Array.of(I[0][0], I[1][1], I[2][2], I[0][1], I[0][2], I[1][2], 0, 0, 0, 0);
  writeWander(out, 6, 0, turned);
  return [...out.subarray(6)];
}

/** The axis in the ball after it has turned by so much, by the engine, whose free rotation is checked against Jacobi functions. */
function byEngine(body: ReturnType<typeof ball>, turned: number): Vec3 {
  const spin = 40;
  const shot = rollShot(
    body,
    spinning([spin, 0, 0]),
    { x: 0, angle: 0 },
    uniformLane(0),
    openLane(turned / spin, 0.0005),
  );
  return unit(angularVelocity_B(shot));
}

/** Angle over which the engine's rate is taken, rad. */
const STEP = 0.02;

describe('the wander of the axis', () => {
  test.each(CASES)(
    '%s: as the engine has it, to the square of how far it is and the spread of the moments',
    (_, body) => {
      for (const turned of [0.01, 3, 12]) {
        const [away, up, grip, rate] = closedForm(body, turned);
        const axis = byEngine(body, turned);
        const far = norm([0, axis[1], axis[2]]);
        const room = far * far + SPREAD * far + 1e-9;
        expect(Math.abs(up - axis[1])).toBeLessThan(room);
        expect(Math.abs(grip - axis[2])).toBeLessThan(room);
        expect(Math.abs(away - far)).toBeLessThan(room);
        const ahead = byEngine(body, turned + STEP);
        const engineRate = norm([ahead[0] - axis[0], ahead[1] - axis[1], ahead[2] - axis[2]]) / STEP;
        expect(Math.abs(rate - engineRate)).toBeLessThan((far + SPREAD + STEP) * engineRate);
      }
    },
  );

  test('is nothing when the PAP lies on a principal axis', () => {
    const body = unevenBall([2.49, 2.525, 2.54]);
    expect(closedForm(body, 60)).toEqual([0, 0, 0, 0]);
  });
});
