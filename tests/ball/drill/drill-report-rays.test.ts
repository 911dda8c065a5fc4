import fc from 'fast-check';
import { test } from 'vitest';
import { driller } from '../../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { excavate } from '../../../src/ball/drill/excavation.js';
import { REPORT_RAYS } from '../../../src/ball/drill/ray-rule.js';
import type { MassProperties } from '../../../src/ball/mass/mass-properties.js';
import { INCH, to } from '../../../src/base/units.js';
import type { Hole } from '../../../src/layout/hole.js';
import { placeLayout } from '../../../src/layout/placement.js';
import { mulMat, mulVec, rotateTensor } from '../../../src/math/mat3.js';
import { anyBody } from '../../support/any-body.js';
import { rotation, within } from '../../support/arbitraries.js';
import { fittedBodies, layoutOf, PAP_B, RADIUS, usualHoles } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';

const HOLES = usualHoles();
const REPORT = excavate(HOLES, RADIUS, REPORT_RAYS);

const rgIn = (ball: MassProperties): number => to(inertiaNumbers(ball).lowRg, INCH);

test('driller: turning core and holes together turns the drilled ball (within what report rays are off)', () =>
  fc.assert(
    fc.property(anyBody, rotation, rotation, (body, R_BC, Q) => {
      const turned: Hole[] = HOLES.map((hole) => ({
        ...hole,
        mouth_B: mulVec(Q, hole.mouth_B),
        axis_B: mulVec(Q, hole.axis_B),
      }));
      const a = driller(body, REPORT)(R_BC);
      const b = driller(body, excavate(turned, RADIUS, REPORT_RAYS))(mulMat(Q, R_BC));
      expectNear(rgIn(a), rgIn(b), 2e-4);
      expectNear(mulVec(Q, a.p_BoBcm_B), b.p_BoBcm_B, 1e-6);
      expectNear(rotateTensor(Q, a.I_Bcm_B), b.I_Bcm_B, 4e-6);
    }),
    { numRuns: 60 },
  ));

test('driller: a core that is a body of revolution drills alike however it is turned about its axis', () =>
  fc.assert(
    fc.property(rotation, within(-3, 3), fc.nat(5), (R_BC, a, i) => {
      const { radius, ...rest } = fittedBodies('plain', 6)[i];
      const body = { radius, ...rest, core: rest.core.map((part) => ({ ...part, c: onAxis(part.c) })) };
      const spun = mulMat(R_BC, [
        [Math.cos(a), -Math.sin(a), 0],
        [Math.sin(a), Math.cos(a), 0],
        [0, 0, 1],
      ]);
      const [x, y] = [R_BC, spun].map(driller(body, REPORT));
      expectNear(x.I_Bcm_B, y.I_Bcm_B, 1e-15);
      expectNear(x.p_BoBcm_B, y.p_BoBcm_B, 1e-15);
    }),
    { numRuns: 40 },
  ));

const onAxis = ([, , z]: readonly [number, number, number]): [number, number, number] => [0, 0, z];

test('driller: mirrored in the midplane of the grip, layout and holes give the mirror image', () => {
  const [body] = fittedBodies('asymmetric', 1);
  const { R_BC } = placeLayout(layoutOf(50, 4, 40), PAP_B);
  const flip = (m: readonly (readonly number[])[]) =>
    m.map((row, i) => row.map((x, j) => ((i === 0) !== (j === 0) ? -x : x)));
  const mirrored = HOLES.map((hole) => ({
    ...hole,
    mouth_B: [-hole.mouth_B[0], hole.mouth_B[1], hole.mouth_B[2]] as const,
    axis_B: [-hole.axis_B[0], hole.axis_B[1], hole.axis_B[2]] as const,
  }));
  // the core is its own image in its xz plane, so a mirrored turn is M R_BC diag(1, −1, 1)
  const R: typeof R_BC = [
    [-R_BC[0][0], R_BC[0][1], -R_BC[0][2]],
    [R_BC[1][0], -R_BC[1][1], R_BC[1][2]],
    [R_BC[2][0], -R_BC[2][1], R_BC[2][2]],
  ];
  const a = driller(body, REPORT)(R_BC);
  const b = driller(body, excavate(mirrored, RADIUS, REPORT_RAYS))(R);
  expectNear(b.I_Bcm_B, flip(a.I_Bcm_B), 5e-7); // the rays themselves are not mirrored
  expectNear(rgIn(b), rgIn(a), 2e-5);
});
