import fc from 'fast-check';
import { expect, test } from 'vitest';
import { SHAPE_DIMENSIONS, startingShape } from '../../../src/ball/core/core-families.js';
import { coreShape, LEAST_PEAK_DENSITY_FACTOR, scalingTo } from '../../../src/ball/core/core-shape.js';
import type { WantedCore } from '../../../src/ball/core/wanted-core.js';
import { type Part, stretchPart } from '../../../src/ball/solid/part.js';
import { diagonal } from '../../../src/math/mat3.js';
import { scale, type Vec3 } from '../../../src/math/vec3.js';
import { within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';

const family = fc.constantFrom('plain' as const, 'lobed' as const, 'asymmetric' as const);
const point = fc.array(within(0, 0.999), { minLength: SHAPE_DIMENSIONS, maxLength: SHAPE_DIMENSIONS });
const cores = fc.tuple(family, point).map(([kind, u]) => startingShape(kind, u));
const factor = within(0.3, 3);
const stretch: fc.Arbitrary<Vec3> = fc.tuple(factor, factor, factor);

const alone = (shape: Part['shape'], axes: Vec3): readonly Part[] => [
  { shape, A: diagonal(axes), c: [0, 0, 0], excess: 1700 },
];

test.each<{ shape: Part['shape']; want: number; source: string }>([
  // k² along each axis and volume of the unit shape: ball 1/5, 4π/3; box 1/3, 8; cylinder 1/4, 1/4, 1/3, 2π
  { shape: { kind: 'ball' }, want: LEAST_PEAK_DENSITY_FACTOR, source: '3/(4π√125)' },
  { shape: { kind: 'box' }, want: 1 / (8 * Math.sqrt(27)), source: '1/(8√27)' },
  { shape: { kind: 'cylinder' }, want: 1 / (2 * Math.PI * Math.sqrt(48)), source: '1/(2π√48)' },
])('coreShape: a $shape.kind of any axes has the peak density factor $source', ({ shape, want }) =>
  fc.assert(
    fc.property(stretch, (axes) =>
      expectNear(coreShape(alone(shape, axes)).peakDensityFactor / want, 1, 1e-13),
    ),
  ),
);

test('coreShape: no core has a lower peak density factor than an ellipsoid, and a stretch does not change it', () =>
  fc.assert(
    fc.property(cores, stretch, within(0.2, 5), (core, s, densityScale) => {
      const { peakDensityFactor } = coreShape(core);
      expect(peakDensityFactor).toBeGreaterThan(LEAST_PEAK_DENSITY_FACTOR);
      const other = core.map((part) => ({
        ...stretchPart(part, s, [0, 0, 0]),
        excess: densityScale * part.excess,
      }));
      expectNear(coreShape(other).peakDensityFactor / peakDensityFactor, 1, 1e-11);
    }),
  ));

test('scalingTo: the scaled core has the wanted mass, centre and second moments', () =>
  fc.assert(
    fc.property(cores, stretch, within(0.5, 3), stretch, stretch, (middle, aside, mass, r, centre) => {
      const core = middle.map((part) => stretchPart(part, [1, 1, 1], scale(0.02, aside)));
      const second: Vec3 = [mass * r[0] ** 2, mass * r[1] ** 2, mass * r[2] ** 2];
      const wanted: WantedCore = { mass, centre, second, isAligned: true };
      const { stretch: s, shift, densityScale } = scalingTo(coreShape(core), wanted);
      const got = coreShape(
        core.map((part) => ({ ...stretchPart(part, s, shift), excess: densityScale * part.excess })),
      );
      expectNear(got.mass / mass, 1, 1e-12);
      expectNear(got.centre, centre, 1e-12);
      got.spread.forEach((k, i) => {
        expectNear(k / r[i] ** 2, 1, 1e-9); // what is left of moments about a point up to ten radii away
      });
    }),
  ));
