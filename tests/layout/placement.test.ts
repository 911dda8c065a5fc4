import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DEGREE, INCH } from '../../src/base/units.js';
import type { Layout } from '../../src/layout/layout.js';
import { placeLayout, upTheVal } from '../../src/layout/placement.js';
import { ballPoint } from '../../src/math/ball-point.js';
import { determinant, IDENTITY, mulMat, mulVec, transpose } from '../../src/math/mat3.js';
import { clockwiseTurn } from '../../src/math/sphere.js';
import { dot, type Vec3 } from '../../src/math/vec3.js';
import { angleOfArcs, d3Arc } from '../oracles/great-circle.js';
import { within } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const RADIUS = (27 * INCH) / (2 * Math.PI);
const arc = (inches: number): number => (inches * INCH) / RADIUS;
const TOP: Vec3 = [0, 1, 0];
const GRIP: Vec3 = [0, 0, 1];

const paps = fc.tuple(within(0.5, 1.5), within(-0.5, 0.5)).map(([over, up]) => ballPoint(over, up));
const layouts: fc.Arbitrary<Layout> = fc.record({
  drillingAngle: within(10 * DEGREE, 90 * DEGREE),
  pinToPap: within(arc(1), arc(6.5)),
  valAngle: within(10 * DEGREE, 80 * DEGREE),
});

test('placeLayout: tape and protractor read the layout back off the ball (arcs by d3-geo 3.1.2)', () =>
  fc.assert(
    fc.property(layouts, paps, within(0.3, 2), (layout, pap_B, pinToMarker) => {
      const { pin_B, marker_B } = placeLayout(layout, pap_B, pinToMarker);
      const pinToPap = d3Arc(pin_B, pap_B);
      expectNear([pinToPap, d3Arc(pin_B, marker_B)], [layout.pinToPap, pinToMarker], 1e-13);
      const drilling = angleOfArcs(d3Arc(marker_B, pap_B), pinToPap, pinToMarker);
      const val = angleOfArcs(d3Arc(pin_B, TOP), pinToPap, d3Arc(pap_B, TOP));
      expectNear([drilling, val], [layout.drillingAngle, layout.valAngle], 1e-12);
    }),
  ));

test('placeLayout: the marker lies clockwise of the PAP as seen from outside, the pin toward the grip', () =>
  fc.assert(
    fc.property(layouts, paps, (layout, pap_B) => {
      const { pin_B, marker_B } = placeLayout(layout, pap_B);
      expectNear(clockwiseTurn(pin_B, pap_B, marker_B), layout.drillingAngle, 1e-12);
      expect(clockwiseTurn(pap_B, TOP, pin_B)).toBeLessThan(0);
      expectNear(clockwiseTurn(pap_B, TOP, GRIP), -d3AngleAt(pap_B, TOP, GRIP), 1e-11);
    }),
  ));

const d3AngleAt = (u: Vec3, v: Vec3, w: Vec3): number => angleOfArcs(d3Arc(v, w), d3Arc(u, v), d3Arc(u, w));

test('placeLayout: a small drilling angle puts the marker toward the VAL, a large one toward the thumb', () => {
  // the sense in which the trade uses the drilling angle (common practice, no source)
  const pap_B = ballPoint(arc(5), arc(0.5));
  const thumb: Vec3 = [0, -Math.sin(0.4), Math.cos(0.4)];
  const at = (deg: number): Vec3 =>
    placeLayout({ drillingAngle: deg * DEGREE, pinToPap: arc(4.5), valAngle: 30 * DEGREE }, pap_B).marker_B;
  const toVal = (u: Vec3): number => Math.abs(Math.asin(dot(u, valPole(pap_B))));
  expect(toVal(at(10))).toBeLessThan(toVal(at(50)));
  expect(d3Arc(at(90), thumb)).toBeLessThan(d3Arc(at(50), thumb));
  expect(d3Arc(at(50), thumb)).toBeLessThan(d3Arc(at(10), thumb));
});

const valPole = (pap_B: Vec3): Vec3 => {
  const up = upTheVal(pap_B);
  return [
    pap_B[1] * up[2] - pap_B[2] * up[1],
    pap_B[2] * up[0] - pap_B[0] * up[2],
    pap_B[0] * up[1] - pap_B[1] * up[0],
  ];
};

test('placeLayout: R_BC is a rotation that takes z to the pin and holds the marker in its xz half-plane', () =>
  fc.assert(
    fc.property(layouts, paps, within(0.3, 2), (layout, pap_B, pinToMarker) => {
      const { pin_B, marker_B, R_BC } = placeLayout(layout, pap_B, pinToMarker);
      expectNear(mulMat(R_BC, transpose(R_BC)), IDENTITY, 1e-14);
      expectNear(determinant(R_BC), 1, 1e-14);
      expectNear(mulVec(R_BC, [0, 0, 1]), pin_B, 1e-15);
      const marker_C = mulVec(transpose(R_BC), marker_B);
      expectNear(marker_C, [Math.sin(pinToMarker), 0, Math.cos(pinToMarker)], 1e-14);
    }),
  ));

test('placeLayout: a pin on the PAP is a limit, not a hole: the marks move on smoothly', () => {
  const pap_B = ballPoint(arc(5), arc(0.5));
  const layout = { drillingAngle: 1, pinToPap: 0, valAngle: 0.7 };
  const at = placeLayout(layout, pap_B);
  const near = placeLayout({ ...layout, pinToPap: 1e-9 }, pap_B);
  expectNear(at.pin_B, pap_B, 1e-15);
  expectNear(near.R_BC, at.R_BC, 2e-9);
});
