import fc from 'fast-check';
import { DEGREE } from '../../src/base/units.js';
import { type Layout, toAngles, toDistances } from '../../src/layout/layout.js';
import { placeLayout, upTheVal } from '../../src/layout/placement.js';
import { readBack } from '../../src/layout/read-back.js';
import { ballPoint } from '../../src/math/ball-point.js';
import { mulVec } from '../../src/math/mat3.js';
import { tangentToward, walk } from '../../src/math/sphere.js';
import { rotateAbout, type Vec3 } from '../../src/math/vec3.js';
import { d3Arc } from '../oracles/great-circle.js';
import { direction, rotation, turn, within } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

/*
 * What holds of the marks of every layout: some are tried with each run of the tests, a hundred thousand in `npm run check:slow`.
 */

const GRIP: Vec3 = [0, 0, 1];

const layouts: fc.Arbitrary<Layout> = fc.record({
  drillingAngle: within(10 * DEGREE, 170 * DEGREE),
  pinToPap: within(0.3, 1.5),
  valAngle: within(10 * DEGREE, 170 * DEGREE),
});
const paps = fc.record({ over: within(0.5, 1.5), up: within(-0.5, 0.5) });

/** A layout is read back off the ball as it was put on, however the ball lies in the hand. */
export const readsBack = fc.property(layouts, paps, rotation, (layout, { over, up }, R) => {
  const { pin_B, marker_B, pap_B } = placeLayout(layout, ballPoint(over, up));
  const turned = (u: Vec3): Vec3 => mulVec(R, u);
  const found = readBack(
    { pin: turned(pin_B), marker: turned(marker_B), pap: turned(pap_B), gripCentre: turned(GRIP) },
    up,
  );
  expectNear(
    [found.drillingAngle, found.pinToPap, found.valAngle],
    [layout.drillingAngle, layout.pinToPap, layout.valAngle],
    1e-9, // acos of the grip's turn loses half the digits when the PAP lies near the centre line
  );
});

/**
 * The order of marks changes nothing: whoever has pin and marker, and looks for PAP and grip, comes to the ball of whoever has the grip
 * and looks for the others. All arcs between marks by d3-geo 3.1.2.
 */
export const orderOfMarksIsFree = fc.property(
  ...([layouts, paps, direction, turn] as const),
  (layout, { over, up }, pin, way) => {
    const { pin_B, marker_B, pap_B } = placeLayout(layout, ballPoint(over, up));
    const fromGrip = [pin_B, marker_B, pap_B, walk(pap_B, upTheVal(pap_B), 0.4), GRIP];
    const across = tangentToward(pin, Math.abs(pin[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0]);
    const towardMarker = rotateAbout(across, pin, way);
    // the marker lies clockwise of the PAP, so the PAP counter-clockwise of the marker
    const pap = walk(pin, rotateAbout(towardMarker, pin, layout.drillingAngle), layout.pinToPap);
    const upVal = rotateAbout(tangentToward(pap, pin), pap, -layout.valAngle);
    // down the VAL by `up`, then across toward the grip: the corner is square
    const corner = walk(pap, upVal, -up);
    const grip = walk(corner, rotateAbout(walk(upVal, pap, up), corner, Math.PI / 2), over);
    const fromPin = [pin, walk(pin, towardMarker, Math.PI / 2), pap, walk(pap, upVal, 0.4), grip];
    const arcs = (marks: readonly Vec3[]): number[] =>
      marks.flatMap((u, i) => marks.slice(i + 1).map((v) => d3Arc(u, v)));
    expectNear(arcs(fromPin), arcs(fromGrip), 1e-7); // haversines near half a circle
  },
);

/** Angles to distances and back give the same layout. */
export const bothNotationsAgree = fc.property(layouts, within(0.3, 2.8), (layout, pinToMarker) => {
  const back = toAngles(toDistances(layout, pinToMarker), pinToMarker);
  if (back.kind !== 'found') throw new Error(back.clash.why);
  // at 0°, 90° and 180° an angle is the root of a difference of nearly equal cosines: half the digits stay
  expectNear(back.value.valAngle, layout.valAngle, 1e-6);
  expectNear(back.value.drillingAngle, layout.drillingAngle, 1e-6);
});
