import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BoreSolid, boreSolid, depthAt } from '../../../src/ball/drill/bore-solid.js';
import { boreWalls, wallBelow, wallBetween } from '../../../src/ball/drill/bore-walls.js';
import type { Hole, HoleTip } from '../../../src/layout/hole.js';
import { ballPoint } from '../../../src/math/ball-point.js';
import { addScaled, norm, scale, sub, unit, type Vec3 } from '../../../src/math/vec3.js';
import { within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';
import { insideBore } from './inside-bore.js';

/* Lengths in inches here: the geometry has no unit. */
const R = 4.297;

function hole(
  name: Hole['name'],
  [over, up]: readonly [number, number],
  aim: Vec3,
  { radius = 0.45, depth = 2, tip = 'cone' as HoleTip } = {},
): Hole {
  const mouth_B = ballPoint(over / R, up / R);
  return {
    name,
    mouth_B,
    axis_B: unit(sub(aim, scale(R, mouth_B))),
    open: { radius, depth },
    sleeve: null,
    tip,
  };
}

/** Points on a bore's wall, tip and bottom rim, close enough to one another for what is asked of them. */
function skinOf(bore: BoreSolid): Vec3[] {
  const points: Vec3[] = [];
  for (let k = 0; k < 48; k++) {
    const a = (2 * Math.PI * k) / 48;
    const ring = (r: number, depth: number): Vec3 =>
      addScaled(
        addScaled(addScaled(bore.mouth, depth, bore.d), r * Math.cos(a), bore.u),
        r * Math.sin(a),
        bore.v,
      );
    for (let i = 0; i <= 40; i++) points.push(ring(bore.radius, (bore.depth * i) / 40));
    for (let i = 0; i <= 12; i++)
      points.push(ring((bore.radius * i) / 12, depthAt(bore, (bore.radius * i) / 12)));
  }
  return points;
}

const leastApart = (one: readonly Vec3[], other: readonly Vec3[]): number => {
  let least = Number.POSITIVE_INFINITY;
  for (const u of one)
    for (const v of other) {
      const square = (u[0] - v[0]) ** 2 + (u[1] - v[1]) ** 2 + (u[2] - v[2]) ** 2;
      if (square < least) least = square;
    }
  return Math.sqrt(least);
};

/** How far a point lies inside a bore, as far as the two ways along and across its axis tell; negative outside. */
const insideBy = (bore: BoreSolid, p: Vec3): number => {
  const { enter, leave } = insideBore(bore, p, bore.d);
  const rel = sub(p, bore.mouth);
  const along = rel[0] * bore.d[0] + rel[1] * bore.d[1] + rel[2] * bore.d[2];
  const across = norm(addScaled(rel, -along, bore.d));
  return leave > enter ? Math.min(leave, bore.radius - across) : -1;
};

const solid = (h: Hole): BoreSolid => boreSolid(h, h.open, R);

describe('wallBetween', () => {
  test('two parallel bores: distance of the axes less both radii, the whole way down (elementary geometry)', () => {
    const axis: Vec3 = [0, 0, -1];
    const one = { ...hole('middle', [-0.6, 0], [0, 0, 0]), axis_B: axis };
    const other = { ...hole('ring', [0.6, 0], [0, 0, 0]), axis_B: axis };
    const { least, meetsAt, overlap } = wallBetween(one, other, R);
    expectNear(least, 2 * R * Math.sin(0.6 / R) - 0.9, 1e-12);
    expect([meetsAt, overlap]).toEqual([null, 0]);
  });

  test('two bores to the centre: their axes run together as their distance from it, and meet where that says', () => {
    // at depth s both axes are 2 (R - s) sin(a/2) apart, level with one another; one’s distance from the other’s axis is (R - s) sin a
    const arc = 1.2 / R;
    const [one, other] = [
      hole('middle', [-0.6, 0], [0, 0, 0], { tip: 'round' }),
      hole('ring', [0.6, 0], [0, 0, 0], { tip: 'round' }),
    ];
    const { atMouth, least, meetsAt } = wallBetween(one, other, R);
    expectNear(atMouth, 1.2 - 2 * R * Math.asin(0.45 / R), 1e-12);
    expectNear(least, 2 * (R - 2) * Math.sin(arc / 2) - 0.9, 1e-12);
    expectNear(meetsAt!, R - 0.9 / Math.sin(arc), 2e-6);
  });

  test('of several bores the walls meet where the first two of them do', () => {
    const bore = (over: number, radius: number): BoreSolid =>
      solid(hole('middle', [over, 0], [0, 0, 0], { radius, tip: 'round' }));
    const { meetsAt } = wallBelow([bore(-0.6, 0.45), bore(-0.6, 0.5)], [bore(0.6, 0.45), bore(0.6, 0.4)]);
    expectNear(meetsAt!, R - 0.95 / Math.sin(1.2 / R), 2e-6);
  });

  test('mouths that overlap: the arc between them less both half widths', () => {
    const { atMouth, meetsAt, overlap } = wallBetween(
      hole('middle', [-0.4, 0], [0, 0, 0]),
      hole('ring', [0.4, 0], [0, 0, 0]),
      R,
    );
    expectNear(atMouth, 0.8 - 2 * R * Math.asin(0.45 / R), 1e-12);
    expect(meetsAt).toBe(0);
    expect(overlap).toBeGreaterThan(-atMouth);
  });

  test('a vent may meet the hole it vents, and no other', () => {
    const [thumb, middle] = [hole('thumb', [0, -2], [0, 0, 0]), hole('middle', [-0.6, 2], [0, 0, 0])];
    const vent: Hole = { ...hole('vent', [1.5, -2], [0, -0.7, 0.7], { radius: 0.1 }), into: 'thumb' };
    expect(boreWalls([thumb, middle, vent], R).map(({ one, other }) => `${one.name} ${other.name}`)).toEqual([
      'thumb middle',
      'middle vent',
    ]);
  });

  test('two vents into one hole: the wall between them as far as that hole, whose own bore is not counted', () => {
    // both come level, in the plane of the midline, to a hole straight down; 2 a apart at its axis, 2 b at the surface
    const thumb = hole('thumb', [0, 0], [0, 0, 0], { radius: 0.5, depth: 3, tip: 'flat' });
    const vent = (up: number, aim: number): Hole => {
      const [mouth, end]: [Vec3, Vec3] = [ballPoint(1 / R, up / R), [0, aim, R - 2]];
      const way = sub(end, scale(R, mouth));
      return {
        ...hole('vent', [1, up], end, { radius: 0.1, depth: norm(way), tip: 'flat' }),
        into: 'thumb',
      };
    };
    const wallOf = (up: number, aim: number) =>
      boreWalls([thumb, vent(up, aim), vent(-up, -aim)], R).map(({ least, meetsAt, atMouth }) => ({
        least,
        meetsAt,
        atMouth,
      }));
    // mirror images: nearest where they come to the hole, or at their mouths; elsewhere twice the height above the midline
    const [apart] = wallOf(0.6, 0);
    const [x, y] = [R * Math.sin(1 / R) * Math.cos(0.6 / R), R * Math.sin(0.6 / R)];
    // along the vent height and distance from the hole's axis fall together to 0, so at the wall, 0.5 from the axis, the height is
    const share = 0.5 / Math.hypot(x, y);
    expect(apart!.meetsAt).toBeNull();
    expect(Math.abs(apart!.least - (2 * share * y - 0.2))).toBeLessThan(0.05);
    expect(apart!.least).toBeLessThan(2 * share * y - 0.2 + 1e-9);
    // both to one point from mouths so near that they are one space before they are there
    const [met] = wallOf(0.15, 0);
    expect(met!.atMouth).toBeGreaterThan(0);
    expect(met!.meetsAt).toBeGreaterThan(0);
    // from mouths that overlap
    expect(wallOf(0.08, 0)[0]!.atMouth).toBeLessThan(0);
    // side by side the whole way: twice the height less both radii
    const [beside] = wallOf(0.4, R * Math.sin(0.4 / R));
    expect(beside!.least).toBeCloseTo(2 * R * Math.sin(0.4 / R) - 0.2, 9);
  });

  test('beside bores sampled over their skins: never more wall than there is, exact where ends are round, and none said to meet that do not', () => {
    let [apart, met] = [0, 0];
    const aim = fc.tuple(within(-1, 1), within(-1, 1), within(-0.5, 0.5)).map(([x, y, z]): Vec3 => [x, y, z]);
    const sized = fc.record({
      radius: within(0.25, 0.65),
      depth: within(0.75, 3.5),
      tip: fc.constantFrom<HoleTip>('flat', 'cone', 'round'),
    });
    fc.assert(
      fc.property(within(0.6, 3), within(-1, 1), aim, aim, sized, sized, (over, up, a, b, one, other) => {
        const [first, second] = [
          hole('thumb', [-over / 2, 0], a, one),
          hole('ring', [over / 2, up], b, other),
        ];
        const { least, meetsAt } = wallBetween(first, second, R);
        const [skin, skin2] = [skinOf(solid(first)), skinOf(solid(second))];
        const deepest = Math.max(
          ...skin.map((p) => insideBy(solid(second), p)),
          ...skin2.map((p) => insideBy(solid(first), p)),
        );
        if (deepest > 0.05) {
          expect(least).toBeLessThan(0);
          met += 1;
        }
        if (deepest < 0) {
          const between = leastApart(skin, skin2);
          // points on the skins stand up to 0.09 in apart: two of them see the wall too wide by 0.05 in at most
          expect(least).toBeLessThanOrEqual(between + 1e-9);
          const rounded = one.tip === 'round' && other.tip === 'round';
          // the round mouths above the ball are no part of what was sampled
          if (rounded && least > 0.05) expect(least).toBeGreaterThan(between - 0.05);
          if (between > 0.06) expect(meetsAt).toBeNull();
          apart += 1;
        }
      }),
      { numRuns: 60 },
    );
    expect(apart).toBeGreaterThan(10);
    expect(met).toBeGreaterThan(10);
  });
});
