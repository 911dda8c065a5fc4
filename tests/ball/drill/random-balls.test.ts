import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { BallBody } from '../../../src/ball/drill/ball-body.js';
import { driller } from '../../../src/ball/drill/drill.js';
import { type Excavation, excavate } from '../../../src/ball/drill/excavation.js';
import { plugsOf } from '../../../src/ball/drill/plug.js';
import { addMoments, type MassProperties, pointMassInertia } from '../../../src/ball/mass/mass-properties.js';
import { rotateMoments } from '../../../src/ball/mass/rotate-moments.js';
import { uniformMoments } from '../../../src/ball/solid/stretch.js';
import type { Hole } from '../../../src/layout/hole.js';
import {
  addMat,
  IDENTITY,
  type Mat3,
  mulMat,
  mulVec,
  rotateTensor,
  transpose,
} from '../../../src/math/mat3.js';
import { add, scale, sub } from '../../../src/math/vec3.js';
import { direction, rotation, within } from '../../support/arbitraries.js';
import { RADIUS } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';
import { anyBall, anyBody, anyHoles, anyTurn, type RandomBall } from '../../support/random-balls.js';

/*
 * What holds of every drilled ball, whatever its core, holes and plugs, tried on thousands of them. Few rays
 * are enough: these claims hold for any rays, but for rounding, unless a test says otherwise.
 */
const RAYS = { radii: 2, angles: 5 };
const MANY = { numRuns: 2000 };
const SOME = { numRuns: 300 };

/** Rounding of sums over a ball of some 7 kg and 0.03 kg·m². */
const KG = 1e-13;
const KG_M2 = 1e-15;

const expectSame = (got: MassProperties, want: MassProperties, slack = 1): void => {
  expectNear(got.mass, want.mass, slack * KG);
  expectNear(got.p_BoBcm_B, want.p_BoBcm_B, slack * 1e-15);
  expectNear(got.I_Bcm_B, want.I_Bcm_B, slack * KG_M2);
};

const plugged = ({ body, before }: Pick<RandomBall, 'body' | 'before'>): BallBody => ({
  ...body,
  plugs: plugsOf(before, RADIUS, RAYS),
});

const turnHole = (Q: Mat3, hole: Hole): Hole => ({
  ...hole,
  mouth_B: mulVec(Q, hole.mouth_B),
  axis_B: mulVec(Q, hole.axis_B),
});

test('rotation invariance: turning core, plugs and holes together turns the drilled ball', () =>
  fc.assert(
    fc.property(anyBall, rotation, (ball, Q) => {
      const still = excavate(ball.holes, RADIUS, RAYS);
      const turned: Excavation = {
        stretches: still.stretches.map((x) => ({ ...x, a: mulVec(Q, x.a), d: mulVec(Q, x.d) })),
        putBack: rotateMoments(Q, still.putBack),
      };
      const body = plugged(ball);
      const here = driller(body, still)(ball.R_BC);
      const there = driller(body, turned)(mulMat(Q, ball.R_BC));
      expectSame(there, {
        mass: here.mass,
        p_BoBcm_B: mulVec(Q, here.p_BoBcm_B),
        I_Bcm_B: rotateTensor(Q, here.I_Bcm_B),
      });
    }),
    MANY,
  ));

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
  fc.assert(
    fc.property(anyBody, anyHoles, anyTurn, (body, holes, R_BC) => {
      const dug = excavate(holes, RADIUS, RAYS);
      const shell = driller({ ...body, core: [] }, dug)(R_BC);
      const core = driller(
        { ...body, coverDensity: 0, fillerDensity: 0 },
        { ...dug, putBack: addMoments(dug.putBack, dug.putBack, -1) },
      )(R_BC);
      const mass = shell.mass + core.mass;
      const centre = scale(
        1 / mass,
        add(scale(shell.mass, shell.p_BoBcm_B), scale(core.mass, core.p_BoBcm_B)),
      );
      // the parallel axis theorem (Huygens–Steiner, any mechanics textbook)
      const [a, b] = [shell, core].map((each) =>
        addMat(each.I_Bcm_B, pointMassInertia(each.mass, sub(each.p_BoBcm_B, centre))),
      );
      expectSame(driller(body, dug)(R_BC), { mass, p_BoBcm_B: centre, I_Bcm_B: addMat(a, b) }, 4);
    }),
    MANY,
  ));

test('mass balance: what the holes took, what was put back and what is left make up the ball before', () =>
  fc.assert(
    fc.property(anyBall, (ball) => {
      const body = plugged(ball);
      const { stretches, putBack } = excavate(ball.holes, RADIUS, RAYS);
      const mass = (dug: Excavation): number => driller(body, dug)(ball.R_BC).mass;
      const nothing = addMoments(putBack, putBack, -1);
      const before = mass({ stretches: [], putBack: nothing });
      // two shares of the rays, each alone: they share no matter
      const taken = [0, 1].reduce((sum, odd) => {
        const share = stretches.filter((_, i) => i % 2 === odd);
        return sum + before - mass({ stretches: share, putBack: nothing });
      }, 0);
      expectNear(mass({ stretches, putBack }), before - taken + putBack.mass, 100 * KG);
      const volume = uniformMoments(stretches, 1).mass;
      const densities = [
        body.coverDensity,
        body.fillerDensity,
        ...body.core.map(({ excess }) => body.fillerDensity + excess),
        ...ball.before.map(({ density }) => density),
      ];
      expect(taken).toBeGreaterThanOrEqual(volume * Math.min(...densities) - 100 * KG);
      expect(taken).toBeLessThanOrEqual(volume * Math.max(...densities) + 100 * KG);
    }),
    MANY,
  ));

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

test('the order of drilling changes nothing where holes keep apart, and hardly anything elsewhere (1 % of the holes with 4 × 12 rays)', () =>
  fc.assert(
    fc.property(anyBall, fc.nat(5), (ball, turn) => {
      const k = turn % ball.holes.length;
      const other = [...ball.holes.slice(k), ...ball.holes.slice(0, k)].reverse();
      const rays = { radii: 4, angles: 12 };
      const drill = (holes: readonly Hole[]) =>
        driller(plugged(ball), excavate(holes, RADIUS, rays))(ball.R_BC);
      const [a, b] = [drill(ball.holes), drill(other)];
      const volume = (holes: readonly Hole[]): number =>
        uniformMoments(excavate(holes, RADIUS, rays).stretches, 1).mass;
      const alone = ball.holes.reduce((sum, hole) => sum + volume([hole]), 0);
      const areApart = [ball.holes, other].every((all) => Math.abs(alone - volume(all)) < 1e-18);
      if (areApart) expectSame(a, b, 10);
      else expectNear(a.mass, b.mass, 0.01 * 1200 * volume(ball.holes));
    }),
    SOME,
  ));

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
      const volume = plugged(ball).plugs?.reduce(
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
