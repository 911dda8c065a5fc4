import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf, keepsClear } from '../../../src/ball/drill/bore-bounds.js';
import {
  type BoreSolid,
  boreSolid,
  depthAt,
  entryOf,
  lowestBallDepth,
} from '../../../src/ball/drill/bore-solid.js';
import { without } from '../../../src/ball/drill/bore-stretches.js';
import { shareInside } from '../../../src/ball/drill/share-inside.js';
import type { HoleTip } from '../../../src/layout/hole.js';
import { addScaled, cross, dot, norm, scale, sub, type Vec3 } from '../../../src/math/vec3.js';
import { direction, pointWithin, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';
import { insideBore } from './inside-bore.js';

/* Lengths in units of the ball's radius. */
const bores: fc.Arbitrary<BoreSolid> = fc
  .record({
    mouth_B: direction,
    axis_B: direction,
    tip: fc.constantFrom<HoleTip>('flat', 'cone', 'round'),
    open: fc.record({ radius: within(0.05, 0.4), depth: within(0.1, 1.2) }),
  })
  .map(({ open, ...hole }) => boreSolid(hole, open, 1));
const rays = fc.record({ a: pointWithin(1), d: direction });

/** Whether a point lies in a bore, by its distance from the axis and how deep it lies, from the names alone. */
function isInBore(bore: BoreSolid, p: Vec3): boolean {
  const rel = sub(p, bore.mouth);
  const depth = dot(rel, bore.d);
  const off = norm(cross(rel, bore.d));
  const tip = {
    flat: 0,
    cone: (bore.radius - off) / Math.tan((59 * Math.PI) / 180),
    round: Math.sqrt(Math.max(0, bore.radius ** 2 - off ** 2)),
  };
  return off <= bore.radius && depth >= -2 * bore.radius && depth <= bore.depth + tip[bore.tip];
}

test('boreSolid: has two directions across its axis and each other, whichever way it runs', () =>
  fc.assert(
    fc.property(fc.oneof(direction, fc.constantFrom<Vec3>([1, 0, 0], [0, -1, 0], [0, 0, 1])), (axis_B) => {
      const { d, u, v } = boreSolid({ mouth_B: axis_B, axis_B, tip: 'flat' }, { radius: 0.1, depth: 0.2 }, 1);
      for (const each of [u, v]) expectNear(norm(each), 1, 1e-14);
      for (const [a, b] of [
        [d, u],
        [d, v],
        [u, v],
      ])
        expectNear(dot(a, b), 0, 1e-14);
    }),
  ));

const STEPS = Array.from({ length: 161 }, (_, i) => -2 + i / 40);

test('crossBore: along any ray just the points of wall and tip', () =>
  fc.assert(
    fc.property(bores, rays, (bore, { a, d }) => {
      const { enter, leave } = insideBore(bore, a, d);
      for (const t of STEPS) {
        if (Math.min(Math.abs(t - enter), Math.abs(t - leave)) < 1e-9) continue;
        expect(isInBore(bore, addScaled(a, t, d)), `at ${t} of ${enter} to ${leave}`).toBe(
          t > enter && t < leave,
        );
      }
    }),
    { numRuns: 300 },
  ));

test('crossBore: a line far from the axis is inside nowhere: it leaves no later than it enters', () =>
  fc.assert(
    fc.property(bores, rays, (bore, { d }) => {
      const across = cross(bore.d, d);
      fc.pre(norm(across) > 0.1);
      const far = addScaled(bore.mouth, (1.01 * bore.radius) / norm(across), across);
      const { enter, leave } = insideBore(bore, far, d);
      expect(leave).toBeLessThanOrEqual(enter);
    }),
  ));

test('entryOf: how far a line runs until it comes to a bore; infinitely far where it passes by', () => {
  const bore = boreSolid(
    { mouth_B: [0, 0, 1], axis_B: [0, 0, -1], tip: 'flat' },
    { radius: 0.2, depth: 0.5 },
    1,
  );
  expectNear(entryOf(bore, [-1, 0.12, 0.7], [1, 0, 0]), 1 - 0.16, 1e-15);
  expectNear(entryOf(bore, [0.1, 0, -1], [0, 0, 1]), 1.5, 1e-15);
  expect(entryOf(bore, [-1, 0.201, 0.7], [1, 0, 0])).toBe(Number.POSITIVE_INFINITY);
  expect(entryOf(bore, [-1, 0, 0.499], [1, 0, 0])).toBe(Number.POSITIVE_INFINITY);
});

test('boundsOf: hold all of a bore; keepsClear: says so only of stretches that come no nearer than the bounds', () =>
  fc.assert(
    fc.property(bores, rays, within(-1, 1), within(0, 1.5), (bore, { a, d }, s, length) => {
      const bounds = boundsOf(bore);
      const e = s + length;
      const points = Array.from({ length: 61 }, (_, i) => addScaled(a, s + (length * i) / 60, d));
      for (const p of points.filter((each) => isInBore(bore, each)))
        expect(norm(sub(p, bounds.centre))).toBeLessThanOrEqual(bounds.radius + 1e-12);
      const nearest = Math.min(...points.map((p) => norm(sub(p, bounds.centre))));
      const isClear = keepsClear(bounds, a, d, { a, d, area: 1, s, e });
      if (isClear) expect(nearest).toBeGreaterThan(bounds.radius);
      else expect(nearest).toBeLessThan(bounds.radius + length / 60);
    }),
    { numRuns: 500 },
  ));

test('depthAt, lowestBallDepth: of a flat end, a 118° point and a round one (elementary geometry)', () => {
  const of = (tip: HoleTip): BoreSolid =>
    boreSolid({ mouth_B: [0, 0, 1], axis_B: [0, 0, -1], tip }, { radius: 0.2, depth: 0.5 }, 1);
  const half = (59 * Math.PI) / 180;
  expectNear(
    [depthAt(of('flat'), 0.1), depthAt(of('cone'), 0), depthAt(of('cone'), 0.2)],
    [0.5, 0.5 + 0.2 / Math.tan(half), 0.5],
    1e-15,
  );
  expectNear(
    [depthAt(of('round'), 0), depthAt(of('round'), 0.12), depthAt(of('round'), 0.3)],
    [0.7, 0.66, 0.5],
    1e-15,
  );
  // a ball of the bore's radius touches the point's flank along its normal: radius / sin above the tip
  expectNear(lowestBallDepth(of('cone')), 0.5 + 0.2 / Math.tan(half) - 0.2 / Math.sin(half), 1e-15);
  expectNear([lowestBallDepth(of('flat')), lowestBallDepth(of('round'))], [0.3, 0.5], 1e-15);
});

describe('without', () => {
  const kept = [
    { enter: 0, leave: 2 },
    { enter: 3, leave: 4 },
  ];
  test.each([
    { gone: { enter: 1, leave: 1 }, left: kept },
    { gone: { enter: 2, leave: 3 }, left: kept },
    { gone: { enter: -1, leave: 5 }, left: [] },
    { gone: { enter: 0.5, leave: 1 }, left: [{ enter: 0, leave: 0.5 }, { enter: 1, leave: 2 }, kept[1]] },
    {
      gone: { enter: 1, leave: 3.5 },
      left: [
        { enter: 0, leave: 1 },
        { enter: 3.5, leave: 4 },
      ],
    },
    { gone: { enter: 0, leave: 1 }, left: [{ enter: 1, leave: 2 }, kept[1]] },
  ])('0 to 2 and 3 to 4 less $gone.enter to $gone.leave', ({ gone, left }) =>
    expect(without(kept, gone)).toEqual(left),
  );
});

test('shareInside: of the volume along stretches, each point once however many bores hold it', () => {
  const down = (depth: number): BoreSolid =>
    boreSolid({ mouth_B: [0, 0, 1], axis_B: [0, 0, -1], tip: 'flat' }, { radius: 0.2, depth }, 1);
  const along = (x: number, area: number) => ({
    a: [x, 0, 1] as Vec3,
    d: [0, 0, -1] as Vec3,
    area,
    s: 0,
    e: 2,
  });
  expectNear(shareInside([along(0.1, 1)], [down(0.5)]), 0.25, 1e-15);
  expectNear(shareInside([along(0.1, 1)], [down(0.5), down(0.8)]), 0.4, 1e-15);
  expectNear(shareInside([along(0.1, 1), along(0.3, 3)], [down(1)]), 1 / 8, 1e-15); // the second runs beside the bore
  expect(shareInside([along(0.3, 3)], [down(1)])).toBe(0);
  expectNear(shareInside([{ ...along(0, 1), e: 0.5, a: scale(1, [0, 0, 1]) }], [down(0.5)]), 1, 1e-15);
});
