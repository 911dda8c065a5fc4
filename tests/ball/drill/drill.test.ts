import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type BallBody, bodyMoments } from '../../../src/ball/drill/ball-body.js';
import { driller } from '../../../src/ball/drill/drill.js';
import { excavate } from '../../../src/ball/drill/excavation.js';
import { fillHoles } from '../../../src/ball/drill/fill-holes.js';
import { plugsOf } from '../../../src/ball/drill/plug.js';
import { RANKING_RAYS } from '../../../src/ball/drill/ray-rule.js';
import { fromMoments } from '../../../src/ball/mass/mass-properties.js';
import type { Hole } from '../../../src/layout/hole.js';
import { IDENTITY, mulVec, rotateTensor, turnAboutZ } from '../../../src/math/mat3.js';
import { anyBody } from '../../support/any-body.js';
import { direction, rotation, within } from '../../support/arbitraries.js';
import { fittedBodies, RADIUS, usualHoles } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';

const HOLES = usualHoles();

test('driller: no holes leave the ball as it was, turned', () =>
  fc.assert(
    fc.property(anyBody, rotation, (body, R_BC) => {
      const whole = fromMoments(bodyMoments(body));
      const same = driller(body, excavate([], RADIUS, RANKING_RAYS))(R_BC);
      expectNear(same.mass, whole.mass, 1e-14);
      expectNear(same.p_BoBcm_B, mulVec(R_BC, whole.p_BoBcm_B), 1e-16);
      expectNear(same.I_Bcm_B, rotateTensor(R_BC, whole.I_Bcm_B), 1e-16);
    }),
  ));

test('driller: cores of a ball that is plugged, which share where its plugs are drilled, come to what each does by itself', () => {
  const plugs = plugsOf([{ holes: HOLES.slice(0, 1), R_CB: IDENTITY, density: 1400 }], RADIUS, RANKING_RAYS);
  const cores = fittedBodies('plain', 2);
  const bodies = cores.map((body) => fillHoles(body, plugs));
  const rays = excavate(HOLES, RADIUS, RANKING_RAYS);
  const aside = turnAboutZ(2); // of the core and its plug under the new holes
  const alone = (body: BallBody) => driller(structuredClone(body), structuredClone(rays))(aside);
  expect(bodies.map((body) => driller(body, rays)(aside))).toEqual(bodies.map(alone));
  expect(driller(bodies[0], rays)(aside).mass).not.toBe(driller(cores[0], rays)(aside).mass);
});

test('driller: holes take their volume of cover and filler, and more where they meet a core (mass balance)', () => {
  const bare = HOLES.map((hole) => ({ ...hole, sleeve: null }));
  fc.assert(
    fc.property(anyBody, rotation, (body, R_BC) => {
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
