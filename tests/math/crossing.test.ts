import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DEGREE } from '../../src/base/units.js';
import { crossingAngle, crossingOf, sideOf } from '../../src/math/crossing.js';
import { walk } from '../../src/math/sphere.js';
import { rotateAbout, type Vec3 } from '../../src/math/vec3.js';
import { angleOfArcs, d3Arc } from '../oracles/great-circle.js';
import { direction } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const GRIP: Vec3 = [0, 0, 1];
const PAP_SIDE: Vec3 = [1, 0, 0];
const FINGERS: Vec3 = [0, 1, 0];

/** Three points that no great circle nearly holds. */
const apart = fc
  .tuple(direction, direction, direction)
  .filter(([a, b, p]) => [d3Arc(a, b), d3Arc(a, p), d3Arc(b, p)].every((arc) => arc > 0.1 && arc < 3))
  .filter(([a, b, p]) => Math.sin(angleOfArcs(d3Arc(a, b), d3Arc(a, p), d3Arc(b, p))) > 0.05);

test('crossingOf: arcs measured to a point lead back to it, on its own side (arcs by d3-geo 3.1.2)', () =>
  fc.assert(
    fc.property(apart, ([a, b, p]) => {
      const found = crossingOf(
        { centre_B: a, arc: d3Arc(a, p) },
        { centre_B: b, arc: d3Arc(b, p) },
        sideOf(a, b, p),
      );
      // d3's arcs are good to about 1e-14 rad and a crossing of 0.05 rad makes that twentyfold
      expectNear(found, p, 1e-11);
    }),
  ));

test('crossingOf: the other side is the mirror image in the great circle through both marks', () => {
  const swings = [
    { centre_B: GRIP, arc: 0.7 },
    { centre_B: PAP_SIDE, arc: 1.2 },
  ] as const;
  const [x, y, z] = crossingOf(...swings, 'left');
  expectNear(crossingOf(...swings, 'right'), [x, -y, z], 1e-15);
});

test('sideOf: from the grip centre toward the PAP, the fingers are on the left hand', () => {
  expect(sideOf(GRIP, PAP_SIDE, FINGERS)).toBe('left');
  expect(sideOf(PAP_SIDE, GRIP, FINGERS)).toBe('right');
});

test('crossingOf: arcs that fall short of each other meet between the two marks, in proportion for small arcs', () => {
  const b = walk(GRIP, PAP_SIDE, 0.02);
  const found = crossingOf({ centre_B: GRIP, arc: 0.009 }, { centre_B: b, arc: 0.009 }, 'left');
  expectNear(found, walk(GRIP, PAP_SIDE, 0.01), 1e-12); // symmetric, so exactly in the middle
});

test('crossingAngle: the spherical triangle’s angle, folded to a quarter turn (Todhunter, art. 45)', () =>
  fc.assert(
    fc.property(apart, ([a, b, p]) => {
      const angle = angleOfArcs(d3Arc(a, b), d3Arc(a, p), d3Arc(b, p));
      expectNear(crossingAngle(a, b, p), Math.min(angle, Math.PI - angle), 1e-10);
    }),
  ));

test('crossingAngle: an error of one arc moves the crossing by the error over its sine', () => {
  const angle = 30 * DEGREE;
  const a = walk(GRIP, PAP_SIDE, 0.8);
  const b = walk(GRIP, rotateAbout(PAP_SIDE, GRIP, angle), 1.1);
  const side = sideOf(a, b, GRIP);
  const error = 1e-6;
  const moved = crossingOf({ centre_B: a, arc: 0.8 + error }, { centre_B: b, arc: 1.1 }, side);
  expectNear(crossingAngle(a, b, GRIP), angle, 1e-14);
  expectNear(d3Arc(moved, GRIP) / error, 1 / Math.sin(angle), 1e-4); // first order in the error
});
