import { describe, expect, test } from 'vitest';
import { ownBody } from '../../../src/ball/core/own-body.js';
import { sharedMatter } from '../../../src/ball/core/shared-matter.js';
import { bodyMoments, sphereMoments } from '../../../src/ball/drill/ball-body.js';
import { solidMoments } from '../../../src/ball/solid/layered-core.js';
import { diagonal } from '../../../src/math/mat3.js';
import type { Vec3 } from '../../../src/math/vec3.js';
import { RADIUS } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';
import { box, moved } from '../../support/meshes/make-stl.js';
import { treeOf } from '../../support/meshes/meshes.js';

/* Cores whose shares are known in closed form: quick enough for every mutant, where `own-body.test.ts` asks random ones. */

const ball = (radius: number, c: Vec3, density: number) => ({
  shape: { kind: 'ball' } as const,
  A: diagonal([radius, radius, radius]),
  c,
  density,
});
const big = ball(0.05, [0, 0, 0.005], 2000);
const small = ball(0.02, [0.01, 0, 0.02], 3000);
const COVER = { coverThickness: 0.02, coverDensity: 1200 };
const MASS = 6.8;

describe('sharedMatter', () => {
  test('a solid within a later one is hidden whole; the later one is not (closed form)', () => {
    const { hidden, unsure } = sharedMatter([small, big]);
    const whole = solidMoments(small);
    expectNear(hidden[0]!.mass / whole.mass, 1, 1e-5);
    expectNear(hidden[0]!.first, whole.first, 1e-5 * whole.mass * 0.02);
    expectNear(hidden[0]!.second, whole.second, 1e-4 * whole.mass * 4e-4);
    expect(hidden[1]!.mass).toBe(0);
    expect(unsure).toBeGreaterThan(0);
    expect(unsure).toBeLessThan(6e-12);
  });

  test('of a solid around a later one what that one holds is hidden', () => {
    const { hidden } = sharedMatter([big, small]);
    const whole = solidMoments(small);
    expectNear(hidden[0]!.mass / whole.mass, 1, 1e-5);
    expectNear(hidden[0]!.second, whole.second, 1e-4 * whole.mass * 4e-4);
    expect(hidden[1]!.mass).toBe(0);
  });

  test('of three in one place the later ones are counted once', () => {
    const { hidden } = sharedMatter([big, small, small]);
    const { mass } = solidMoments(small);
    expectNear(
      hidden.map((m) => m.mass / mass),
      [1, 1, 0],
      1e-5,
    );
  });

  test('two boxes that overlap in a box share that box', () => {
    const boxAt = (z: number) => ({
      shape: { kind: 'box' } as const,
      A: diagonal([0.02, 0.02, 0.02]),
      c: [0, 0, z] as const,
    });
    const { hidden } = sharedMatter([boxAt(-0.01), boxAt(0.01)]);
    expectNear(hidden[0]!.mass / (0.04 * 0.04 * 0.02), 1, 1e-4);
    expectNear(hidden[0]!.first, [0, 0, 0], 1e-4 * hidden[0]!.mass * 0.02);
  });

  test('solids apart share nothing, exactly; one alone neither', () => {
    const apart = sharedMatter([ball(0.01, [0, 0, 0.03], 1), ball(0.01, [0, 0, -0.03], 1)]);
    expect(apart.unsure).toBe(0);
    expect(apart.hidden.map((m) => m.mass)).toEqual([0, 0]);
    expect(sharedMatter([big])).toMatchObject({ unsure: 0 });
  });
});

describe('ownBody', () => {
  test('apart: parts in closed form, and filler for what is left of the weight (by hand)', () => {
    const { body, volumes } = ownBody(
      { ...COVER, solids: [ball(0.02, [0, 0, 0.03], 3000), ball(0.02, [0, 0, -0.03], 2000)] },
      RADIUS,
      MASS,
    );
    const each = (4 / 3) * Math.PI * 0.02 ** 3;
    expectNear(volumes, [each, each], 1e-18);
    const inner = sphereMoments(RADIUS - 0.02, 1).mass;
    const cover = 1200 * (sphereMoments(RADIUS, 1).mass - inner);
    const filler = (MASS - cover - 5000 * each) / (inner - 2 * each);
    expectNear(body.fillerDensity, filler, 1e-9);
    expectNear(
      body.core.map(({ excess }) => excess),
      [3000 - filler, 2000 - filler],
      1e-9,
    );
    expect(body.layers).toBeUndefined();
    expectNear(bodyMoments(body).mass, MASS, 1e-12);
  });

  test('nested: layers in their order, with the moments of what is seen of each', () => {
    const { body, volumes } = ownBody({ ...COVER, solids: [big, small] }, RADIUS, MASS);
    expect(body.core).toEqual([]);
    expectNear(
      body.layers!.layers.map(({ excess }) => excess + body.fillerDensity),
      [2000, 3000],
      1e-9,
    );
    const [outer, inner] = [solidMoments(big).mass, solidMoments(small).mass];
    expectNear(
      volumes.map((volume) => volume / outer),
      [1 - inner / outer, inner / outer],
      1e-6,
    );
    expectNear(bodyMoments(body).mass, MASS, 1e-6);
    const first =
      (2000 - body.fillerDensity) * (outer * 0.005 - inner * 0.02) +
      (3000 - body.fillerDensity) * inner * 0.02;
    expectNear(bodyMoments(body).first[2], first, 1e-8);
  });

  test('meshes apart from parts stay layers, with their own moments', () => {
    const mesh = treeOf(moved(box([0.01, 0.01, 0.01]), [0, 0, -0.04]));
    const { body } = ownBody(
      { ...COVER, solids: [{ mesh, density: 2500 }, ball(0.02, [0, 0, 0.03], 3000)] },
      RADIUS,
      MASS,
    );
    expect(body.core).toHaveLength(1);
    expect(body.layers!.layers).toHaveLength(1);
    expectNear(body.layers!.moments.mass, 8e-6 * (2500 - body.fillerDensity), 1e-8);
    expectNear(bodyMoments(body).mass, MASS, 1e-9);
  });
});
