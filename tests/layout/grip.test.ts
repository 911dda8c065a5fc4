import fc from 'fast-check';
import { expect, test } from 'vitest';
import { INCH } from '../../src/base/units.js';
import { type Grip, type HoleOrder, placeGrip } from '../../src/layout/grip.js';
import type { Hole } from '../../src/layout/hole.js';
import { addScaled, dot, scale, type Vec3 } from '../../src/math/vec3.js';
import { d3Arc } from '../oracles/great-circle.js';
import { within } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const RADIUS = (27 * INCH) / (2 * Math.PI);
const inches = (min: number, max: number) => within(min * INCH, max * INCH);

const order: fc.Arbitrary<HoleOrder> = fc.record({
  open: fc.record({ radius: inches(0.3, 0.6), depth: inches(2, 3) }),
  sleeve: fc.constant(null),
  tip: fc.constantFrom('flat', 'cone', 'round'),
  forwardPitch: inches(-0.75, 0.75),
  lateralPitch: inches(-0.5, 0.5),
});
const grips: fc.Arbitrary<Grip> = fc.record({
  spanMiddle: inches(3, 5),
  spanRing: inches(3, 5),
  bridge: inches(0.125, 0.5),
  thumb: order,
  middle: order,
  ring: order,
});

/** Arc (rad) from a hole's centre to its edge: the chord across a hole that points at the centre. */
const edge = (hole: Hole): number => Math.asin(hole.open.radius / RADIUS);

const placed = (grip: Grip): readonly [Hole, Hole, Hole] =>
  placeGrip(grip, RADIUS) as readonly [Hole, Hole, Hole];

test('placeGrip: a tape reads the spans off the ball (arcs by d3-geo 3.1.2)', () =>
  fc.assert(
    fc.property(grips, (grip) => {
      const [thumb, middle, ring] = placed(grip);
      const span = (finger: Hole): number =>
        RADIUS * (d3Arc(thumb.mouth_B, finger.mouth_B) - edge(thumb) - edge(finger));
      expectNear([span(middle), span(ring)], [grip.spanMiddle, grip.spanRing], 1e-14);
    }),
  ));

test('placeGrip: each finger keeps half a bridge from the centre line, the ring finger on the PAP side', () =>
  fc.assert(
    fc.property(grips, (grip) => {
      const [thumb, middle, ring] = placed(grip);
      expect(thumb.mouth_B[0]).toBe(0);
      // the arc to the circle x = 0 is the complement of the arc to its pole
      const across = (hole: Hole): number => Math.PI / 2 - d3Arc(hole.mouth_B, [1, 0, 0]);
      const half = grip.bridge / RADIUS / 2;
      expectNear([-across(middle) - edge(middle), across(ring) - edge(ring)], [half, half], 1e-13);
    }),
  ));

test('placeGrip: equal fingers at equal spans have exactly the bridge between their edges (d3-geo 3.1.2)', () =>
  fc.assert(
    fc.property(grips, (grip) => {
      const even = { ...grip, ring: grip.middle, spanRing: grip.spanMiddle };
      const [, middle, ring] = placed(even);
      // both lie level, so the arc between them runs over the centre line, a little less than along it
      const between = RADIUS * (d3Arc(middle.mouth_B, ring.mouth_B) - edge(middle) - edge(ring));
      expectNear(between, grip.bridge, 1e-13);
    }),
  ));

test('placeGrip: spans 1/8 in apart widen the bridge by less than 1/64 in', () => {
  const finger: HoleOrder = {
    open: { radius: 0.375 * INCH, depth: 2.25 * INCH },
    sleeve: null,
    tip: 'flat',
    forwardPitch: 0,
    lateralPitch: 0,
  };
  const [, middle, ring] = placed({
    spanMiddle: 4.375 * INCH,
    spanRing: 4.5 * INCH,
    bridge: 0.25 * INCH,
    thumb: finger,
    middle: finger,
    ring: finger,
  });
  const bridge = RADIUS * (d3Arc(middle.mouth_B, ring.mouth_B) - edge(middle) - edge(ring));
  // flat: √(1² + 0.125²) − 0.75 = 0.2578
  expectNear(bridge / INCH, 0.2578, 5e-4);
});

test('placeGrip: the grip centre is as far from the thumb edge as from the mean of the finger edges', () =>
  fc.assert(
    fc.property(grips, (grip) => {
      const [thumb, middle, ring] = placed(grip);
      const foot = ({ mouth_B: [, y, z] }: Hole): number => Math.atan2(y, z);
      const fingers = (foot(middle) - edge(middle) + foot(ring) - edge(ring)) / 2;
      expectNear(fingers, -(foot(thumb) + edge(thumb)), 1e-13);
    }),
  ));

test('placeGrip: a hole passes the centre by its pitches: thumb forward is up the ball, finger forward down', () =>
  fc.assert(
    fc.property(grips, (grip) => {
      const holes = placed(grip);
      const orders = [grip.thumb as HoleOrder, grip.middle, grip.ring];
      holes.forEach(({ mouth_B, axis_B, name }, i) => {
        // where the axis meets the plane through Bo square to the mouth
        const inward = -dot(axis_B, mouth_B);
        const foot = addScaled(scale(RADIUS, mouth_B), RADIUS / inward, axis_B);
        expectNear(Math.hypot(...foot), Math.hypot(orders[i].forwardPitch, orders[i].lateralPitch), 1e-14);
        const towardPalm: Vec3 = [0, name === 'thumb' ? 1 : -1, 0];
        const upTheLine = dot(towardPalm, mouth_B);
        const palm = dot(foot, towardPalm) / Math.sqrt(1 - upTheLine * upTheLine);
        expectNear(palm, orders[i].forwardPitch, 1e-14);
      });
    }),
  ));

test('placeGrip: lateral pitch is positive toward the PAP for every hole', () => {
  fc.assert(
    fc.property(grips, inches(0.125, 0.5), (grip, lateral) => {
      const tilted = (hole: HoleOrder): HoleOrder => ({ ...hole, forwardPitch: 0, lateralPitch: lateral });
      const holes = placed({
        ...grip,
        thumb: tilted(grip.thumb as HoleOrder),
        middle: tilted(grip.middle),
        ring: tilted(grip.ring),
      });
      for (const { mouth_B, axis_B } of holes) {
        const foot = addScaled(scale(RADIUS, mouth_B), -RADIUS / dot(axis_B, mouth_B), axis_B);
        expect(foot[0]).toBeGreaterThan(0);
      }
    }),
  );
});

test('placeGrip: without a thumb the fingers stay where a one-inch thumb would have put them', () =>
  fc.assert(
    fc.property(grips, (grip) => {
      const inch = { ...(grip.thumb as HoleOrder), open: { radius: 0.5 * INCH, depth: 0.05 } };
      const [, middle, ring] = placed({ ...grip, thumb: inch });
      expect(placeGrip({ ...grip, thumb: null }, RADIUS)).toEqual([middle, ring]);
    }),
  ));

test('placeGrip: spans too short for the bridge and the holes are reported, never NaN', () =>
  fc.assert(
    fc.property(grips, (grip) => {
      for (const short of [{ spanMiddle: -0.02 }, { spanRing: -0.02 }])
        expect(placeGrip({ ...grip, ...short, bridge: 0.06 }, RADIUS)).toBeNull();
      expect(placed(grip).every(({ axis_B }) => axis_B.every(Number.isFinite))).toBe(true);
    }),
  ));
