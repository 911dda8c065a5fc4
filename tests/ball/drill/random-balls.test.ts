import fc from 'fast-check';
import { test } from 'vitest';
import type { BallBody } from '../../../src/ball/drill/ball-body.js';
import { driller } from '../../../src/ball/drill/drill.js';
import { excavate } from '../../../src/ball/drill/excavation.js';
import { addMoments } from '../../../src/ball/mass/mass-properties.js';
import { rotateMoments } from '../../../src/ball/mass/rotate-moments.js';
import { uniformMoments } from '../../../src/ball/solid/stretch.js';
import type { Hole } from '../../../src/layout/hole.js';
import { IDENTITY, type Mat3, mulVec, rotateTensor, transpose } from '../../../src/math/mat3.js';
import { scale } from '../../../src/math/vec3.js';
import { direction, rotation, within } from '../../support/arbitraries.js';
import { RADIUS } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';
import { anyBall, anyBody, anyHoles, anyTurn } from '../../support/random-balls.js';
import {
  expectSame,
  KG,
  nothingIsLost,
  orderOfDrillingIsFree,
  plugged,
  RAYS,
  shellAndCoreMakeTheBall,
  turnsAsOne,
} from './balls-hold.js';

const MANY = { numRuns: 2000 };
const SOME = { numRuns: 300 };

const turnHole = (Q: Mat3, hole: Hole): Hole => ({
  ...hole,
  mouth_B: mulVec(Q, hole.mouth_B),
  axis_B: mulVec(Q, hole.axis_B),
});

test('rotation invariance: turning core, plugs and holes together turns the drilled ball', () =>
  fc.assert(turnsAsOne, MANY));

test('excavate: holes take the same of a uniform ball wherever they lie (to 5e-3 of it with 4 × 12 rays)', () =>
  fc.assert(
    fc.property(anyHoles, rotation, (holes, Q) => {
      const of = (all: readonly Hole[]) => {
        const { stretches, putBack } = excavate(all, RADIUS, { radii: 4, angles: 12 });
        return addMoments(uniformMoments(stretches, 1200), putBack, -1);
      };
      const here = rotateMoments(Q, of(holes));
      const there = of(holes.map((hole) => turnHole(Q, hole)));
      const size = uniformMoments(excavate(holes, RADIUS, RAYS).stretches, 1200).mass;
      expectNear(there.mass, here.mass, 5e-3 * size);
      expectNear(there.first, here.first, 5e-3 * size * RADIUS);
      expectNear(there.second, here.second, 5e-3 * size * RADIUS ** 2);
    }),
    SOME,
  ));

test('parallel axes: a drilled ball is its drilled shell and its drilled core, put together about their common centre', () =>
  fc.assert(shellAndCoreMakeTheBall, MANY));

test('mass, centre, inertia: what the holes took, what was put back and what is left make up the ball before', () =>
  fc.assert(nothingIsLost, MANY));

test('a flat hole of no depth changes nothing, wherever it lies', () =>
  fc.assert(
    fc.property(anyBall, direction, within(0.003, 0.015), (ball, mouth_B, radius) => {
      const none: Hole = {
        name: 'vent',
        mouth_B,
        axis_B: scale(-1, mouth_B),
        open: { radius, depth: 0 },
        sleeve: null,
        tip: 'flat',
      };
      const drill = (holes: readonly Hole[]) =>
        driller(plugged(ball), excavate(holes, RADIUS, RAYS))(ball.R_BC);
      expectSame(drill([...ball.holes, none]), drill(ball.holes));
    }),
    SOME,
  ));

test('a hole drilled twice is drilled once', () =>
  fc.assert(
    fc.property(anyBall, fc.nat(1), (ball, which) => {
      const bare = ball.holes.map((hole) => ({ ...hole, sleeve: null }));
      const drill = (holes: readonly Hole[]) =>
        driller(plugged(ball), excavate(holes, RADIUS, RAYS))(ball.R_BC);
      expectSame(drill([...bare, bare[which]]), drill(bare));
    }),
    SOME,
  ));

test('the order of drilling changes nothing where holes keep apart, and little elsewhere (5 % of the holes with 4 × 12 rays)', () =>
  fc.assert(orderOfDrillingIsFree, SOME));

test('plugs of the ball’s own density change nothing', () =>
  fc.assert(
    fc.property(anyBall, within(900, 1500), (ball, density) => {
      const body: BallBody = { ...ball.body, coverDensity: density, fillerDensity: density, core: [] };
      const before = ball.before.map((drilling) => ({ ...drilling, density }));
      const dug = excavate(ball.holes, RADIUS, RAYS);
      expectSame(driller(plugged({ body, before }), dug)(ball.R_BC), driller(body, dug)(ball.R_BC), 2);
    }),
    SOME,
  ));

test('the same holes drilled again after plugging leave the ball as if it had never been plugged', () =>
  fc.assert(
    fc.property(anyBody, anyHoles, anyTurn, within(900, 1500), (body, holes, R_BC, density) => {
      const before = [{ holes, R_CB: transpose(R_BC), density }];
      const dug = excavate(holes, RADIUS, RAYS);
      expectSame(driller(plugged({ body, before }), dug)(R_BC), driller(body, dug)(R_BC), 10);
    }),
    SOME,
  ));

test('plugs turn with the core: an empty grip leaves the plugged ball as it was, turned', () =>
  fc.assert(
    fc.property(anyBall, (ball) => {
      const drill = driller(plugged(ball), excavate([], RADIUS, RAYS));
      const [still, turned] = [drill(IDENTITY), drill(ball.R_BC)];
      expectSame(turned, {
        mass: still.mass,
        p_BoBcm_B: mulVec(ball.R_BC, still.p_BoBcm_B),
        I_Bcm_B: rotateTensor(ball.R_BC, still.I_Bcm_B),
      });
      // between what the lightest and the heaviest filling of the same holes would weigh
      const volume = plugged(ball).fillings?.plugs.reduce(
        (sum, { stretches }) => sum + uniformMoments(stretches, 1).mass,
        0,
      );
      const weigh = (density: number): number =>
        driller(
          plugged({ body: ball.body, before: ball.before.map((old) => ({ ...old, density })) }),
          excavate([], RADIUS, RAYS),
        )(IDENTITY).mass;
      expectNear(weigh(1400) - weigh(1000), 400 * (volume ?? 0), KG * 10);
    }),
    SOME,
  ));

test('plugs: of two drillings that meet, the later one’s filling is there', () =>
  fc.assert(
    fc.property(anyBall, anyHoles, anyTurn, (ball, holes, R_BC) => {
      // both drillings the same: nothing is left of the first
      const R_CB = transpose(R_BC);
      const filled = (densities: readonly number[]) => {
        const before = densities.map((density) => ({ holes, R_CB, density }));
        return driller(plugged({ body: ball.body, before }), excavate(ball.holes, RADIUS, RAYS))(ball.R_BC);
      };
      expectSame(filled([900, 1400]), filled([1400]), 10);
    }),
    SOME,
  ));
