import fc from 'fast-check';
import { expect, test } from 'vitest';
import { INCH } from '../../src/base/units.js';
import type { HoleOrder } from '../../src/layout/grip.js';
import { placeGrip } from '../../src/layout/grip.js';
import type { Hole } from '../../src/layout/hole.js';
import { placeVent, type VentOrder } from '../../src/layout/vent.js';
import { overAndUp } from '../../src/math/ball-point.js';
import { addScaled, cross, norm, scale, sub, type Vec3 } from '../../src/math/vec3.js';
import { within } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const RADIUS = (27 * INCH) / (2 * Math.PI);
const straight: HoleOrder = {
  open: { radius: 0.5 * INCH, depth: 2.5 * INCH },
  sleeve: null,
  tip: 'flat',
  forwardPitch: 0,
  lateralPitch: 0,
};
const GRIP = placeGrip(
  {
    spanMiddle: 4.375 * INCH,
    spanRing: 4.5 * INCH,
    bridge: 0.25 * INCH,
    thumb: { ...straight, forwardPitch: 0.25 * INCH },
    middle: straight,
    ring: straight,
  },
  RADIUS,
) as readonly Hole[];
const [THUMB] = GRIP;

/** A vent into the thumb hole whose mouth lies `beside` (m) to the PAP's side of the thumb's centre. */
const besideThumb = (beside: number, meetsAt: number | null = null): VentOrder => ({
  into: 'thumb',
  radius: 0.125 * INCH,
  over: beside,
  up: overAndUp(THUMB.mouth_B).up * RADIUS,
  meetsAt,
});
const placed = (order: VentOrder): Hole => {
  const vent = placeVent(order, GRIP, RADIUS);
  if (vent.kind !== 'placed') throw new Error(vent.why);
  return vent.hole;
};
const endOf = (hole: Hole): Vec3 => addScaled(scale(RADIUS, hole.mouth_B), hole.open.depth, hole.axis_B);

test('placeVent: it ends on the axis of the hole it vents, as deep as asked', () =>
  fc.assert(
    fc.property(within(0.8 * INCH, 1.3 * INCH), within(INCH, 2.5 * INCH), (beside, meetsAt) => {
      const fromMouth = sub(endOf(placed(besideThumb(beside, meetsAt))), scale(RADIUS, THUMB.mouth_B));
      expectNear(norm(cross(fromMouth, THUMB.axis_B)), 0, 1e-15);
      expectNear(norm(fromMouth), meetsAt, 1e-15);
    }),
  ));

test('placeVent: it is a flat bore without a sleeve, named as what it is and by the hole it vents', () => {
  const { name, into, open, sleeve, tip } = placed(besideThumb(INCH));
  expect({ name, into, radius: open.radius, sleeve, tip }).toEqual({
    name: 'vent',
    into: 'thumb',
    radius: 0.125 * INCH,
    sleeve: null,
    tip: 'flat',
  });
});

test('placeVent: left out, the depth is that of the hole’s straight wall', () =>
  expectNear(endOf(placed(besideThumb(INCH))), endOf(THUMB), 1e-16));

test('placeVent: its mouth lies where the arcs from the grip centre put it', () => {
  const { mouth_B } = placed(besideThumb(1.1 * INCH));
  const { over, up } = overAndUp(mouth_B);
  expectNear([over * RADIUS, up], [1.1 * INCH, overAndUp(THUMB.mouth_B).up], 1e-15);
});

test.each([
  { why: 'no-such-hole', order: besideThumb(INCH), grip: GRIP.slice(1) },
  { why: 'mouth-in-hole', order: besideThumb(0.6 * INCH), grip: GRIP },
  { why: 'below-the-hole', order: besideThumb(INCH, 2.6 * INCH), grip: GRIP },
  { why: 'too-slanted', order: besideThumb(1.8 * INCH, 0.5 * INCH), grip: GRIP },
])('placeVent: what cannot be drilled is told, not drawn ($why)', ({ why, order, grip }) =>
  expect(placeVent(order, grip, RADIUS)).toEqual({ kind: 'impossible', why }),
);
