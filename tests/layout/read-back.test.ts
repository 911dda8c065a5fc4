import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeLayout } from '../../src/layout/placement.js';
import { readBack } from '../../src/layout/read-back.js';
import { ballPoint } from '../../src/math/ball-point.js';
import { orderOfMarksIsFree, readsBack } from './marks-hold.js';

test('readBack undoes placeLayout, however the ball lies in the hand', () => fc.assert(readsBack));

test('the order of marks changes nothing: from pin and marker to the grip, or from the grip to them (arcs by d3-geo 3.1.2)', () =>
  fc.assert(orderOfMarksIsFree));

test('readBack: marks in one place have no angle to read', () => {
  const pap = ballPoint(1.1, 0.1);
  const { marker_B } = placeLayout({ drillingAngle: 1, pinToPap: 0, valAngle: 0.7 }, pap);
  const found = readBack({ pin: pap, marker: marker_B, pap, gripCentre: [0, 0, 1] }, 0.1);
  expect(found.pinToPap).toBe(0);
  expect(found.drillingAngle).toBeNaN();
});
