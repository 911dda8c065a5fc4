import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DEGREE, INCH } from '../../src/base/units.js';
import {
  type ArcsClash,
  type Layout,
  type LayoutDistances,
  markerToPap,
  pinBuffer,
  toAngles,
  toDistances,
  valAngleOf,
} from '../../src/layout/layout.js';
import { placeLayout } from '../../src/layout/placement.js';
import { ballPoint } from '../../src/math/ball-point.js';
import type { Vec3 } from '../../src/math/vec3.js';
import { d3Arc } from '../oracles/great-circle.js';
import { within } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const RADIUS = (27 * INCH) / (2 * Math.PI);
const arc = (inches: number): number => (inches * INCH) / RADIUS;
const inches = (angle: number): number => (angle * RADIUS) / INCH;

test.each([
  { pinToPapIn: 4.5, valDeg: 45, wantIn: 2.832, source: 'sin b = sin a sin A; the flat formula says 3.182' },
  { pinToPapIn: 4, valDeg: 30, wantIn: 1.773, source: 'the same' },
  { pinToPapIn: 5, valDeg: 60, wantIn: 3.951, source: 'the same' },
  { pinToPapIn: 6.75, valDeg: 30, wantIn: 2.25, source: 'at a quarter of the ball arcs are the angles' },
])('pinBuffer: $pinToPapIn in at $valDeg° on 27 in lies $wantIn in from the VAL ($source)', (row) => {
  const layout = { drillingAngle: 0, pinToPap: arc(row.pinToPapIn), valAngle: row.valDeg * DEGREE };
  expect(inches(pinBuffer(layout))).toBeCloseTo(row.wantIn, 3);
});

const layouts: fc.Arbitrary<Layout> = fc.record({
  drillingAngle: within(0, Math.PI),
  pinToPap: within(0.01, 3.1),
  valAngle: within(0, Math.PI),
});
const markerArc = within(0.3, 2.8);

test('pinBuffer: is the shortest arc to the VAL, measured by another program (d3-geo 3.1.2)', () => {
  const pap_B: Vec3 = [1, 0, 0]; // the VAL is then the circle z = 0
  fc.assert(
    fc.property(layouts, (layout) => {
      const { pin_B } = placeLayout(layout, pap_B);
      // to the VAL as far as the arc to its pole falls short of a quarter of the ball
      expectNear(pinBuffer(layout), Math.PI / 2 - d3Arc(pin_B, [0, 0, 1]), 3e-8);
    }),
  );
});

test('markerToPap: equals the arc between the two marks on the ball by another program (d3-geo 3.1.2)', () =>
  fc.assert(
    fc.property(layouts, markerArc, (layout, pinToMarker) => {
      const { pap_B, marker_B } = placeLayout(layout, ballPoint(1.16, 0.1), pinToMarker);
      expectNear(markerToPap(layout, pinToMarker), d3Arc(marker_B, pap_B), 3e-8);
    }),
  ));

test('markerToPap: a marker on the PAP is no arc away, to the last digits', () => {
  const layout = { drillingAngle: 0, pinToPap: arc(3), valAngle: 0.5 };
  expectNear(markerToPap(layout, arc(3) + 1e-10), 1e-10, 1e-16);
});

test.each([
  { deg: 0, side: 'above' },
  { deg: 90, side: 'above' },
  { deg: 91, side: 'below' },
  { deg: 180, side: 'below' },
])('toDistances: a pin at $deg° from the upper VAL lies $side the PAP', ({ deg, side }) => {
  // 90° is right across the ball, on neither side: it counts as above
  const layout = { drillingAngle: 1, pinToPap: arc(4), valAngle: deg * DEGREE };
  expect(toDistances(layout).pinSide).toBe(side);
});

test('valAngleOf: a buffer as long as pin-to-PAP, which rounding makes longer, is a right angle', () => {
  for (const inch of [0.5, 1.7, 3.375, 4.3, 5.6])
    for (const off of [-1, 0, 1]) {
      const pinToPap = arc(inch);
      const buffer = pinToPap * (1 + off * 2e-16);
      // the angle of a sine that is off by a rounding is off by its root
      for (const side of ['above', 'below'] as const)
        expectNear(valAngleOf(pinToPap, buffer, side) ?? Number.NaN, Math.PI / 2, 1e-7);
    }
});

test('angles to distances and back give the same layout', () =>
  fc.assert(
    fc.property(layouts, markerArc, (layout, pinToMarker) => {
      const back = toAngles(toDistances(layout, pinToMarker), pinToMarker);
      if (back.kind !== 'found') throw new Error(back.clash.why);
      // At 0°, 90° and 180° an angle is the root of a difference of nearly equal cosines: half the digits
      // stay, fewer where the pin is near the PAP (sin 0.01 divides). A tape tells 1e-2 rad at the pin.
      expectNear(back.value.valAngle, layout.valAngle, 1e-6);
      expectNear(back.value.drillingAngle, layout.drillingAngle, 1e-5);
      expect(back.value.pinToPap).toBe(layout.pinToPap);
    }),
  ));

test.each<{ name: string; distances: LayoutDistances; clash: ArcsClash }>([
  {
    name: 'a buffer longer than pin-to-PAP',
    distances: { pinToPap: 40 * DEGREE, markerToPap: 1, pinBuffer: 70 * DEGREE, pinSide: 'above' },
    clash: { why: 'buffer-too-long', pinBuffer: 70 * DEGREE, pinToPap: 40 * DEGREE },
  },
  {
    name: 'a marker nearer to the PAP than the pin allows',
    distances: { pinToPap: 40 * DEGREE, markerToPap: 30 * DEGREE, pinBuffer: 0.1, pinSide: 'above' },
    clash: { why: 'marker-out-of-reach', pinToMarker: Math.PI / 2, markerToPap: 30 * DEGREE },
  },
  {
    name: 'a pin on the PAP, where distances fix no angle',
    distances: { pinToPap: 0, markerToPap: Math.PI / 2, pinBuffer: 0, pinSide: 'above' },
    clash: { why: 'pin-on-pap' },
  },
])('toAngles: $name is impossible and said so', ({ distances, clash }) => {
  const result = toAngles(distances);
  expect(result.kind).toBe('impossible');
  expect(result.kind === 'impossible' && result.clash).toEqual(clash);
});

test('toAngles: whatever the distances, angles are found or it says why; NaN never comes out', () => {
  const any = fc.double({ min: 0, max: Math.PI });
  const side = fc.constantFrom<LayoutDistances['pinSide']>('above', 'below');
  fc.assert(
    fc.property(any, any, any, side, any, (pinToPap, marker, buffer, pinSide, pinToMarker) => {
      const result = toAngles({ pinToPap, markerToPap: marker, pinBuffer: buffer, pinSide }, pinToMarker);
      if (result.kind === 'found') expect(Object.values(result.value).every(Number.isFinite)).toBe(true);
      else {
        const { why, ...arcs } = result.clash;
        expect(why).toMatch(/^(pin-on-pap|buffer-too-long|marker-out-of-reach)$/);
        expect(Object.values(arcs).every(Number.isFinite)).toBe(true);
      }
    }),
  );
});
