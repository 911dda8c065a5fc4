import fc from 'fast-check';
import { test } from 'vitest';
import { INCH } from '../../src/base/units.js';
import { ballPoint, overAndUp } from '../../src/math/ball-point.js';
import type { Vec3 } from '../../src/math/vec3.js';
import { d3Arc } from '../oracles/great-circle.js';
import { within } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const RADIUS = (27 * INCH) / (2 * Math.PI);
const arc = (inches: number): number => (inches * INCH) / RADIUS;
const GRIP: Vec3 = [0, 0, 1];

test('ballPoint: over lies along the midline, up along the VAL', () => {
  expectNear(ballPoint(arc(6.75), 0), [1, 0, 0], 1e-15);
  const pap_B = ballPoint(arc(5), arc(0.5));
  const foot = ballPoint(arc(5), 0);
  expectNear([d3Arc(GRIP, foot), d3Arc(foot, pap_B)], [arc(5), arc(0.5)], 1e-14);
});

test('overAndUp undoes ballPoint', () =>
  fc.assert(
    fc.property(within(-3.1, 3.1), within(-1.5, 1.5), (over, up) => {
      const back = overAndUp(ballPoint(over, up));
      expectNear([back.over, back.up], [over, up], 1e-13);
    }),
  ));
