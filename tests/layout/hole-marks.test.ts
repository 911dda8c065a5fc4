import fc from 'fast-check';
import { expect, test } from 'vitest';
import { INCH } from '../../src/base/units.js';
import { type HoleOrder, placeGrip } from '../../src/layout/grip.js';
import { type Hole, type HoleTip, holeName, mouthRadius } from '../../src/layout/hole.js';
import { acrossAndAlong, type HoleMark, holeMarks, pointBeside } from '../../src/layout/hole-marks.js';
import { d3Arc } from '../oracles/great-circle.js';
import { within } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const RADIUS = (27 * INCH) / (2 * Math.PI);
const inches = (min: number, max: number) => within(min * INCH, max * INCH);
/** d3-geo's arcs by haversine, near half a circle. */
const D3 = 3e-8;

test('pointBeside: lies as far from the centre line as asked, its foot as far along (arcs by d3-geo 3.1.2)', () =>
  fc.assert(
    fc.property(within(-1.4, 1.4), within(-1.5, 1.5), (across, along) => {
      const u = pointBeside(across, along);
      const foot = pointBeside(0, along);
      expectNear(d3Arc(u, [1, 0, 0]), Math.PI / 2 - across, D3);
      expectNear([d3Arc(foot, u), d3Arc(foot, [0, 0, 1])], [Math.abs(across), Math.abs(along)], D3);
      expectNear(d3Arc(foot, [0, 1, 0]), Math.PI / 2 - along, D3);
      expectNear(Object.values(acrossAndAlong(u)), [across, along], 1e-15);
    }),
  ));

const order: fc.Arbitrary<HoleOrder> = fc.record({
  open: fc.record({ radius: inches(0.3, 0.6), depth: inches(2, 3) }),
  sleeve: fc.constant(null),
  tip: fc.constant<HoleTip>('flat'),
  forwardPitch: fc.constant(0),
  lateralPitch: fc.constant(0),
});
const vent = (over: number, up: number): Hole => ({
  ...{ name: 'vent', into: 'thumb', mouth_B: pointBeside(over, up), axis_B: [0, 0, -1] },
  ...{ open: { radius: 0.003, depth: 0.05 }, sleeve: null, tip: 'flat' },
});
/** Gripping holes with or without a thumb, and a vent after them. */
const grips: fc.Arbitrary<readonly Hole[]> = fc
  .record({
    grip: fc.record({
      ...{ spanMiddle: inches(3, 5), spanRing: inches(3, 5), bridge: inches(0.125, 0.5) },
      ...{ thumb: fc.option(order), middle: order, ring: order },
    }),
    vent: fc.tuple(within(-0.3, 0.3), within(-0.9, 0.9)),
  })
  .map(({ grip, vent: [over, up] }) => [...(placeGrip(grip, RADIUS) as readonly Hole[]), vent(over, up)]);
const steps = inches(1 / 64, 1 / 8).map((step) => step / RADIUS);

const named = (marks: readonly HoleMark[], name: Hole['name']): HoleMark | undefined =>
  marks.find(({ hole }) => hole.name === name);
const markOn = ({ across, along }: HoleMark) => pointBeside(across, along);

test('holeMarks: every mark stands at whole steps of the rule, within half a step of the hole across', () =>
  fc.assert(
    fc.property(grips, steps, (holes, step) => {
      const marks = holeMarks(holes, step);
      expect(marks.map(({ hole }) => hole)).toEqual(holes);
      for (const { hole, across, along } of marks) {
        for (const arc of [across, along]) expectNear(arc / step, Math.round(arc / step), 1e-9);
        const off = Math.abs(across - acrossAndAlong(hole.mouth_B).across);
        // the ring finger's makes up for the middle finger's besides
        expect(off).toBeLessThanOrEqual((hole.name === 'ring' ? 1 : 0.5) * step + 1e-12);
      }
    }),
  ));

test('holeMarks: the two fingers are as far apart across as they should be, to half a step', () =>
  fc.assert(
    fc.property(grips, steps, (holes, step) => {
      const marks = holeMarks(holes, step);
      const [middle, ring] = (['middle', 'ring'] as const).map((name) => named(marks, name) as HoleMark);
      const [a, b] = [middle, ring].map(({ hole }) => acrossAndAlong(hole.mouth_B).across);
      expect(Math.abs(ring.across - middle.across - (b - a))).toBeLessThanOrEqual(step / 2 + 1e-12);
    }),
  ));

test('holeMarks: each finger’s mark is as far from the thumb’s as the holes are, to half a step (arcs by d3-geo 3.1.2)', () =>
  fc.assert(
    fc.property(grips, steps, (holes, step) => {
      const marks = holeMarks(holes, step);
      const thumb = named(marks, 'thumb');
      for (const mark of marks.filter(({ hole }) => hole.name === 'middle' || hole.name === 'ring')) {
        if (thumb) {
          const arc = d3Arc(markOn(thumb), markOn(mark));
          const off = Math.abs(arc - d3Arc(thumb.hole.mouth_B, mark.hole.mouth_B));
          expect(off).toBeLessThanOrEqual(step / 2 + D3);
          expect(mark.along).toBeGreaterThan(thumb.along); // up the ball from the thumb
        } else {
          const off = Math.abs(mark.along - acrossAndAlong(mark.hole.mouth_B).along);
          expect(off).toBeLessThanOrEqual(step / 2 + 1e-12);
        }
      }
    }),
  ));

test('holeMarks: thumb and vents are marked by themselves, to the nearest step both ways', () =>
  fc.assert(
    fc.property(grips, steps, (holes, step) => {
      for (const { hole, across, along } of holeMarks(holes, step)) {
        if (hole.name !== 'thumb' && hole.name !== 'vent') continue;
        const exact = acrossAndAlong(hole.mouth_B);
        expect(Math.abs(across - exact.across)).toBeLessThanOrEqual(step / 2 + 1e-12);
        expect(Math.abs(along - exact.along)).toBeLessThanOrEqual(step / 2 + 1e-12);
      }
    }),
  ));

test('mouthRadius: that of the widest bore; holeName: a vent is named by the hole it leads into', () => {
  const hole = vent(0, 0);
  const sleeve = { bore: { radius: 0.02, depth: 0.04 }, height: 0.03, density: 1200 };
  expect(mouthRadius(hole)).toBe(0.003);
  expect(mouthRadius({ ...hole, sleeve })).toBe(0.02);
  expect(holeName(hole)).toBe('vent into thumb');
  expect(holeName({ name: 'ring' })).toBe('ring');
});
