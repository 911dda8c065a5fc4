import { describe, expect, test } from 'vitest';
import { type Plug, pluggedStretches, plugsOf } from '../../../src/ball/drill/plug.js';
import { type Stretch, uniformMoments } from '../../../src/ball/solid/stretch.js';
import type { Hole } from '../../../src/layout/hole.js';
import { IDENTITY, type Mat3 } from '../../../src/math/mat3.js';
import { scale, type Vec3 } from '../../../src/math/vec3.js';
import { expectNear } from '../../support/expect-near.js';

const R = 0.108;
const RULE = { radii: 8, angles: 12 };

const hole = (mouth_B: Vec3, radius: number, depth: number): Hole => ({
  name: 'thumb',
  mouth_B,
  axis_B: scale(-1, mouth_B),
  open: { radius, depth },
  sleeve: null,
  tip: 'flat',
});
const drilling = (holes: readonly Hole[], R_CB: Mat3 = IDENTITY) => ({ holes, R_CB, density: 1100 });
const TOP: Vec3 = [0, 0, 1];
const ASIDE: Vec3 = [1, 0, 0];

/** Quarter turn about y: the top goes to +x. */
const OVER: Mat3 = [
  [0, 0, 1],
  [0, 1, 0],
  [-1, 0, 0],
];

/** A line across the ball at height z, through the axis of a bore from the top. */
const across = (z: number, s = 0, e = 2 * R) => ({ a: [-R, 0, z], d: [1, 0, 0], area: 1e-4, s, e }) as const;

const lengthOf = (stretches: readonly { readonly s: number; readonly e: number }[]): number =>
  stretches.reduce((sum, { s, e }) => sum + e - s, 0);

describe('plugsOf', () => {
  test('each point of the filling counts once: bores of one drilling that meet, and what a later one took', () => {
    const two = plugsOf([drilling([hole(TOP, 0.01, 0.05), hole(TOP, 0.01, 0.05)])], R, RULE)[0]!;
    const one = plugsOf([drilling([hole(TOP, 0.01, 0.05)])], R, RULE)[0]!;
    expect(two.bores).toHaveLength(2);
    expect(uniformMoments(two.stretches, 1).mass).toBe(uniformMoments(one.stretches, 1).mass);
    const [earlier, later] = plugsOf(
      [drilling([hole(TOP, 0.01, 0.06)]), drilling([hole(TOP, 0.01, 0.04)])],
      R,
      RULE,
    );
    expectNear(uniformMoments(earlier!.stretches, 1).mass, Math.PI * 1e-4 * 0.02, 1e-18);
    expect(later!.stretches).toEqual(plugsOf([drilling([hole(TOP, 0.01, 0.04)])], R, RULE)[0]!.stretches);
  });

  test('the filling lies where the drilling lay on the core then', () => {
    const [plug] = plugsOf([drilling([hole(TOP, 0.01, 0.05)], OVER)], R, RULE);
    expectNear(plug!.bores[0]!.mouth, [R, 0, 0], 1e-17);
    expectNear(plug!.bores[0]!.d, [-1, 0, 0], 1e-17);
    expect(plug!.density).toBe(1100);
  });
});

describe('pluggedStretches', () => {
  const plugs = plugsOf([drilling([hole(TOP, 0.01, 0.05)])], R, RULE);
  const filled = (all: readonly Plug[], which: number, stretches: readonly Stretch[], R_BC: Mat3) =>
    pluggedStretches(all, stretches)(R_BC)[which]!;

  test('a line through the axis of a filled bore meets its diameter, below its bottom nothing', () => {
    const [found, ...others] = filled(plugs, 0, [across(R - 0.03)], IDENTITY);
    expect(others).toEqual([]);
    expectNear([found!.s, found!.e], [R - 0.01, R + 0.01], 1e-15);
    expect(found).toMatchObject({ area: 1e-4, d: [1, 0, 0] });
    expect(filled(plugs, 0, [across(R - 0.0501)], IDENTITY)).toEqual([]);
  });

  test('a chord off the axis: twice √(r² − d²)', () => {
    const line = { ...across(R - 0.03), a: [-R, 0.006, R - 0.03] as const };
    expectNear(lengthOf(filled(plugs, 0, [line], IDENTITY)), 0.016, 1e-15);
    const wide = { ...across(R - 0.03), a: [-R, 0.0101, R - 0.03] as const };
    expect(filled(plugs, 0, [wide], IDENTITY)).toEqual([]);
  });

  test('of a stretch that begins or ends in the filling, its part; of one that ends before, nothing', () => {
    expectNear(lengthOf(filled(plugs, 0, [across(R - 0.03, R, 2 * R)], IDENTITY)), 0.01, 1e-15);
    expectNear(lengthOf(filled(plugs, 0, [across(R - 0.03, 0, R)], IDENTITY)), 0.01, 1e-15);
    expect(filled(plugs, 0, [across(R - 0.03, 0, R - 0.011)], IDENTITY)).toEqual([]);
    expect(filled(plugs, 0, [across(R - 0.03, R + 0.011)], IDENTITY)).toEqual([]);
  });

  test('two bores of one drilling that meet: what both hold counts once', () => {
    const both = plugsOf([drilling([hole(TOP, 0.01, 0.05), hole(ASIDE, 0.02, 0.107)])], R, RULE);
    // along x at a height of 0.015 the bore from +x holds x > 0.001; the one from the top ends above
    expectNear(lengthOf(filled(both, 0, [across(0.015)], IDENTITY)), 2 * R - (R + 0.001), 1e-15);
    const same = plugsOf([drilling([hole(TOP, 0.01, 0.05), hole(TOP, 0.008, 0.05)])], R, RULE);
    expectNear(lengthOf(filled(same, 0, [across(R - 0.03)], IDENTITY)), 0.02, 1e-15);
  });

  test('what a later drilling took is left out of an earlier one, not the other way around', () => {
    const both = plugsOf([drilling([hole(TOP, 0.01, 0.05)]), drilling([hole(TOP, 0.004, 0.05)])], R, RULE);
    const line = [across(R - 0.03)];
    expectNear(lengthOf(filled(both, 0, line, IDENTITY)), 0.012, 1e-15);
    expectNear(lengthOf(filled(both, 1, line, IDENTITY)), 0.008, 1e-15);
  });

  test('the filling turns with the core: its bore comes from +x where the core is turned over', () => {
    const along = { a: [0.09, 0, -R], d: [0, 0, 1], area: 1e-4, s: 0, e: 2 * R } as const;
    expect(filled(plugs, 0, [along], IDENTITY)).toEqual([]);
    const [found] = filled(plugs, 0, [along], OVER);
    expectNear([found!.s, found!.e], [R - 0.01, R + 0.01], 1e-15);
    expect(found!.a).toEqual(along.a); // still in B
  });

  test('asked for one turn after another it answers for each, and for the same again the same', () => {
    const inPlugs = pluggedStretches(plugs, [across(R - 0.03)]);
    const upright = inPlugs(IDENTITY);
    expect(upright[0]).toHaveLength(1);
    expect(inPlugs(OVER)[0]).toEqual([]);
    expect(inPlugs(IDENTITY)).toEqual(upright);
  });
});
