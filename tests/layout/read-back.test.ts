import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DEGREE } from '../../src/base/units.js';
import { placeLayout } from '../../src/layout/placement.js';
import { readBack } from '../../src/layout/read-back.js';
import { ballPoint } from '../../src/math/ball-point.js';
import { mulVec } from '../../src/math/mat3.js';
import type { Vec3 } from '../../src/math/vec3.js';
import { rotation, within } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const GRIP: Vec3 = [0, 0, 1];

test('readBack undoes placeLayout, however the ball lies in the hand', () =>
  fc.assert(
    fc.property(
      within(10 * DEGREE, 170 * DEGREE),
      within(0.3, 1.5),
      within(10 * DEGREE, 170 * DEGREE),
      within(0.5, 1.5),
      within(-0.5, 0.5),
      rotation,
      (drillingAngle, pinToPap, valAngle, over, up, R) => {
        const layout = { drillingAngle, pinToPap, valAngle };
        const { pin_B, marker_B, pap_B } = placeLayout(layout, ballPoint(over, up));
        const turned = (u: Vec3): Vec3 => mulVec(R, u);
        const found = readBack(
          { pin: turned(pin_B), marker: turned(marker_B), pap: turned(pap_B), gripCentre: turned(GRIP) },
          up,
        );
        expectNear(
          [found.drillingAngle, found.pinToPap, found.valAngle],
          [drillingAngle, pinToPap, valAngle],
          1e-10, // acos of the grip's turn loses half the digits when the PAP lies near the centre line
        );
      },
    ),
  ));

test('readBack: marks in one place have no angle to read', () => {
  const pap = ballPoint(1.1, 0.1);
  const { marker_B } = placeLayout({ drillingAngle: 1, pinToPap: 0, valAngle: 0.7 }, pap);
  const found = readBack({ pin: pap, marker: marker_B, pap, gripCentre: GRIP }, 0.1);
  expect(found.pinToPap).toBe(0);
  expect(found.drillingAngle).toBeNaN();
});
