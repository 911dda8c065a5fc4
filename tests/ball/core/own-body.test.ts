import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { type OwnCore, ownBody } from '../../../src/ball/core/own-body.js';
import { sharedMatter } from '../../../src/ball/core/shared-matter.js';
import { bodyMoments, shellMoments } from '../../../src/ball/drill/ball-body.js';
import { driller } from '../../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { excavate } from '../../../src/ball/drill/excavation.js';
import { addMoments, fromMoments, type MassProperties } from '../../../src/ball/mass/mass-properties.js';
import { partMoments } from '../../../src/ball/solid/part.js';
import { from, INCH, to } from '../../../src/base/units.js';
import { placeLayout } from '../../../src/layout/placement.js';
import { diagonal } from '../../../src/math/mat3.js';
import { layoutOf, PAP_B, RADIUS, usualHoles } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';
import { coreOf, dense, MASS, solid } from '../../support/own-cores.js';
import { Solids } from '../../support/solids.js';

/** RG, differential and intermediate differential, in. */
const inInches = (ball: MassProperties): [number, number, number] => {
  const { lowRg, differential, intermediateDifferential } = inertiaNumbers(ball);
  return [to(lowRg, INCH), to(differential, INCH), to(intermediateDifferential, INCH)];
};

const undrilled = (core: OwnCore): MassProperties =>
  fromMoments(bodyMoments(ownBody(core, RADIUS, MASS).body));

const ellipsoid = dense({ kind: 'ball' }, diagonal([0.044, 0.05, 0.06]), [0.002, 0, 0.003], 2500);
const insert = dense({ kind: 'ball' }, diagonal([0.015, 0.012, 0.02]), [0.005, 0.002, 0.015], 3300);

describe('ownBody', () => {
  test('the filler makes the weight come out', () =>
    fc.assert(
      fc.property(fc.array(solid, { minLength: 1, maxLength: 4 }), (solids) => {
        // shared volume is summed by lines: hence not to the last digit
        expectNear(undrilled(coreOf(...solids)).mass / MASS, 1, 1e-5);
      }),
      { numRuns: 20 },
    ));

  test('a solid inside another replaces it there: the closed form is the difference of their densities', () => {
    const { body } = ownBody(coreOf(ellipsoid, insert), RADIUS, MASS);
    const filler = body.fillerDensity;
    const outer = partMoments({ ...ellipsoid, excess: ellipsoid.density - filler });
    const inner = partMoments({ ...insert, excess: insert.density - ellipsoid.density });
    const shell = shellMoments(body);
    const exact = fromMoments(addMoments(addMoments(shell, outer), inner));
    // a millionth of an inch: far below what anyone can measure, yet enough to catch any error of reasoning
    expectNear(inInches(fromMoments(bodyMoments(body))), inInches(exact), 1e-6);
  });

  test('the earlier of two nested solids vanishes when the later one holds it', () => {
    const alone = undrilled(coreOf(ellipsoid));
    expectNear(inInches(undrilled(coreOf(insert, ellipsoid))), inInches(alone), 1e-6);
  });

  test('solids that only touch keep their closed form, and take the fast way', () => {
    const low = dense({ kind: 'cylinder' }, diagonal([0.04, 0.04, 0.02]), [0, 0, -0.02], 2000);
    const high = dense({ kind: 'cone', top: 0.5 }, diagonal([0.04, 0.04, 0.02]), [0, 0, 0.02], 2400);
    const { body } = ownBody(coreOf(low, high), RADIUS, MASS);
    expect(body.core).toHaveLength(2);
    expect(body.layers).toBeUndefined();
  });

  test('a box drawn as two boxes that overlap is the box', () => {
    const box = (half: number, z: number) =>
      dense({ kind: 'box' }, diagonal([0.03, 0.035, half]), [0, 0, z], 2300);
    const one = undrilled(coreOf(box(0.05, 0)));
    const two = undrilled(coreOf(box(0.03, -0.02), box(0.035, 0.015)));
    expectNear(inInches(two), inInches(one), 1e-6);
  });
});

describe('sharedMatter', () => {
  test('is within a millionth of an inch of RG by its own measure, on random cores of three parts', () =>
    fc.assert(
      fc.property(fc.tuple(solid, solid, solid), (solids) => {
        const densest = Math.max(...solids.map(({ density }) => density));
        const moment = sharedMatter(solids).unsure * densest;
        expect(to(moment / (2 * MASS * from(2.5, INCH)), INCH)).toBeLessThan(1e-6); // dk = dI / (2 m k)
      }),
      { numRuns: 30 },
    ));

  test('solids far apart share nothing', () => {
    const { hidden, unsure } = sharedMatter([
      { ...insert, c: [0, 0, 0.03] },
      { ...insert, c: [0, 0, -0.03] },
    ]);
    expect(unsure).toBe(0);
    for (const { mass } of hidden) expect(mass).toBe(0);
  });
});

/*
 * Drilled balls with overlapping parts against meshes that another program (manifold-3d 3.5.4) cuts by the same
 * precedence. With this many sides its facets leave up to 5e-6 in; with twice as many a quarter of that.
 */
describe('drilled balls with overlapping parts equal CSG meshes', () => {
  let solids: Solids;
  beforeAll(async () => {
    solids = await Solids.load(96);
  });
  const holes = usualHoles();
  const rays = excavate(holes, RADIUS, { radii: 24, angles: 64 });

  test.each([
    {
      name: 'an ellipsoid with a flange',
      parts: [ellipsoid, dense({ kind: 'cylinder' }, diagonal([0.056, 0.056, 0.01]), [0, 0, -0.01], 1900)],
    },
    {
      name: 'a flange below an ellipsoid',
      parts: [dense({ kind: 'cylinder' }, diagonal([0.056, 0.056, 0.01]), [0, 0, -0.01], 1900), ellipsoid],
    },
    {
      name: 'an ellipsoid, a bar and a dense block',
      parts: [
        ellipsoid,
        dense({ kind: 'box' }, diagonal([0.02, 0.055, 0.02]), [0, 0, 0], 1500),
        dense({ kind: 'capsule', half: 1 }, diagonal([0.015, 0.015, 0.015]), [0, 0, 0.01], 3400),
      ],
    },
  ])('$name', ({ parts }) => {
    const { body } = ownBody(coreOf(...parts), RADIUS, MASS);
    const { R_BC } = placeLayout(layoutOf(50, 4, 35), PAP_B);
    const drilled = driller(body, rays)(R_BC);
    const mesh = solids.driller(body, holes)(R_BC);
    expectNear(inInches(drilled), inInches(mesh), 1e-5);
    expectNear(drilled.p_BoBcm_B, mesh.p_BoBcm_B, 1e-6);
  });
});
