import fc from 'fast-check';
import { expect, test } from 'vitest';
import { SHAPE_DIMENSIONS, startingShape } from '../../../src/ball/core/core-families.js';
import { type BallBody, bodyMoments } from '../../../src/ball/drill/ball-body.js';
import { driller } from '../../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { excavate } from '../../../src/ball/drill/excavation.js';
import { RANKING_RAYS, REPORT_RAYS } from '../../../src/ball/drill/ray-rule.js';
import { fromMoments, type MassProperties } from '../../../src/ball/mass/mass-properties.js';
import { INCH, to } from '../../../src/base/units.js';
import type { Hole } from '../../../src/layout/hole.js';
import { placeLayout } from '../../../src/layout/placement.js';
import { IDENTITY, mulMat, mulVec, rotateTensor } from '../../../src/math/mat3.js';
import { direction, rotation, within } from '../../support/arbitraries.js';
import { fittedBodies, layoutOf, PAP_B, RADIUS, usualHoles } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';

const HOLES = usualHoles();
const REPORT = excavate(HOLES, RADIUS, REPORT_RAYS);

const share = within(0, 0.999);
/** Balls of every family, with any core that fits inside the cover. */
const bodies: fc.Arbitrary<BallBody> = fc
  .tuple(
    fc.constantFrom('plain' as const, 'lobed' as const, 'asymmetric' as const),
    fc.array(share, { minLength: SHAPE_DIMENSIONS, maxLength: SHAPE_DIMENSIONS }),
    within(600, 1400),
  )
  .map(([family, u, fillerDensity]) => ({
    radius: RADIUS,
    fillerDensity,
    coverThickness: 0.02,
    coverDensity: 1180,
    core: startingShape(family, u),
  }));

const rgIn = (ball: MassProperties): number => to(inertiaNumbers(ball).lowRg, INCH);

test('driller: no holes leave the ball as it was, turned', () =>
  fc.assert(
    fc.property(bodies, rotation, (body, R_BC) => {
      const whole = fromMoments(bodyMoments(body));
      const same = driller(body, excavate([], RADIUS, RANKING_RAYS))(R_BC);
      expectNear(same.mass, whole.mass, 1e-14);
      expectNear(same.p_BoBcm_B, mulVec(R_BC, whole.p_BoBcm_B), 1e-16);
      expectNear(same.I_Bcm_B, rotateTensor(R_BC, whole.I_Bcm_B), 1e-16);
    }),
  ));

test('driller: what the ball lost and what is put back make up the undrilled ball (mass balance)', () => {
  const bare = HOLES.map((hole) => ({ ...hole, sleeve: null }));
  fc.assert(
    fc.property(bodies, rotation, (body, R_BC) => {
      // the same holes in a ball of the core alone, of the filler alone and of the cover alone
      const rays = excavate(bare, RADIUS, RANKING_RAYS);
      const lost = (b: BallBody): number => fromMoments(bodyMoments(b)).mass - driller(b, rays)(R_BC).mass;
      const uniform = (density: number): BallBody => ({
        ...body,
        core: [],
        coverDensity: density,
        fillerDensity: density,
      });
      const volume = lost(uniform(1));
      const plain = { ...body, core: [] };
      const ofCore = lost(body) - lost(plain);
      expect(lost(plain)).toBeGreaterThanOrEqual(
        volume * Math.min(body.coverDensity, body.fillerDensity) - 1e-12,
      );
      expect(lost(plain)).toBeLessThanOrEqual(
        volume * Math.max(body.coverDensity, body.fillerDensity) + 1e-12,
      );
      // every part is denser than the filler, so a core only adds to what a drill takes
      expect(ofCore).toBeGreaterThanOrEqual(-1e-14);
      expectNear(lost(uniform(1180)), 1180 * volume, 1e-12);
    }),
  );
});

test('driller: turning core and holes together turns the drilled ball (within what report rays are off)', () =>
  fc.assert(
    fc.property(bodies, rotation, rotation, (body, R_BC, Q) => {
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

test('driller: holes in a uniform ball take their own moments, by parallel axes', () =>
  fc.assert(
    fc.property(direction, within(0.005, 0.02), (mouth_B, radius) => {
      const body: BallBody = {
        radius: RADIUS,
        coverThickness: 0.02,
        coverDensity: 1200,
        fillerDensity: 1200,
        core: [],
      };
      const axis_B = mulVec(
        [
          [-1, 0, 0],
          [0, -1, 0],
          [0, 0, -1],
        ],
        mouth_B,
      );
      const depth = 0.07;
      const hole: Hole = {
        name: 'thumb',
        mouth_B,
        axis_B,
        open: { radius, depth },
        sleeve: null,
        tip: 'flat',
      };
      const ball = driller(body, excavate([hole], RADIUS, { radii: 12, angles: 12 }))(IDENTITY);
      // a cylinder from the plane at R − depth up to the sphere: by slices of the wall below the rim's plane
      // and by the cap above it
      const rim = Math.sqrt(RADIUS ** 2 - radius ** 2);
      const column = Math.PI * radius ** 2 * (rim - (RADIUS - depth));
      const h = RADIUS - rim;
      const cap = Math.PI * h ** 2 * (RADIUS - h / 3);
      const mass = 1200 * ((4 / 3) * Math.PI * RADIUS ** 3 - column - cap);
      expectNear(ball.mass, mass, 1e-12);
      const capCentre = (3 * (2 * RADIUS - h) ** 2) / (4 * (3 * RADIUS - h));
      const moment = 1200 * (column * ((rim + RADIUS - depth) / 2) + cap * capCentre);
      expectNear(
        ball.p_BoBcm_B,
        mouth_B.map((x) => (-moment / mass) * x),
        1e-14,
      );
    }),
  ));

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
