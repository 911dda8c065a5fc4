import fc from 'fast-check';
import type { BallBody } from '../../src/ball/drill/ball-body.js';
import type { FilledDrilling } from '../../src/ball/drill/plug.js';
import type { Part, UnitShape } from '../../src/ball/solid/part.js';
import { DEGREE, INCH } from '../../src/base/units.js';
import { type HoleOrder, placeGrip } from '../../src/layout/grip.js';
import { type Hole, mouthRadius, type Sleeve } from '../../src/layout/hole.js';
import { placeLayout } from '../../src/layout/placement.js';
import { placeVent } from '../../src/layout/vent.js';
import { ballPoint, overAndUp } from '../../src/math/ball-point.js';
import { diagonal, type Mat3, mulMat, scaleMat, transpose } from '../../src/math/mat3.js';
import { tangentToward, walk } from '../../src/math/sphere.js';
import { norm, rotateAbout, scale, sub } from '../../src/math/vec3.js';
import { direction, rotation, turn, within } from './arbitraries.js';
import { arc, fittedBodies, RADIUS } from './balls.js';

/*
 * Any ball a shop could meet, and some it could not: random solids or a fitted core, a random grip with
 * slugs, inserts, pitches, tips and vents, plugged drillings before it, and any layout. Invented.
 */

/** A ball to drill, with all it was before. */
export interface RandomBall {
  readonly body: BallBody;
  readonly holes: readonly Hole[];
  readonly before: readonly FilledDrilling[];
  readonly R_BC: Mat3;
}

const inches = (min: number, max: number) => within(min * INCH, max * INCH);

const sleeve = (radius: number): fc.Arbitrary<Sleeve | null> =>
  fc.option(
    fc.record({
      bore: fc.record({ radius: inches(0.06, 0.15).map((wall) => radius + wall), depth: inches(1, 3) }),
      height: inches(0.5, 3.2),
      density: within(900, 1600),
    }),
    { freq: 3 },
  );

const order: fc.Arbitrary<HoleOrder> = inches(0.32, 0.5).chain((radius) =>
  fc.record({
    open: fc.record({ radius: fc.constant(radius), depth: inches(1.5, 3) }),
    sleeve: sleeve(radius),
    tip: fc.constantFrom('flat', 'cone', 'round'),
    forwardPitch: inches(-0.75, 0.75),
    lateralPitch: inches(-0.5, 0.5),
  }),
);

/** A vent 0.1 to 1 in off the edge of a hole, none where there is no room for it. */
const withVent = (grip: readonly Hole[]): fc.Arbitrary<readonly Hole[]> =>
  fc
    .record({ hole: fc.nat(grip.length - 1), way: turn, gap: inches(0.1, 1), radius: inches(0.06, 0.125) })
    .map(({ hole, way, gap, radius }) => {
      const { name, mouth_B } = grip[hole];
      const reach = (mouthRadius(grip[hole]) + radius + gap) / RADIUS;
      const side = ballPoint(0.3, 1.2); // any direction across the mouth to turn from
      const across = rotateAbout(tangentToward(mouth_B, side), mouth_B, way);
      const { over, up } = overAndUp(walk(mouth_B, across, reach));
      const into = name as 'thumb' | 'middle' | 'ring';
      const placed = placeVent(
        { into, radius, over: over * RADIUS, up: up * RADIUS, meetsAt: null },
        grip,
        RADIUS,
      );
      return placed.kind === 'placed' ? [...grip, placed.hole] : grip;
    });

/** Gripping holes and vents of any sizes. */
export const anyHoles: fc.Arbitrary<readonly Hole[]> = fc
  .record({
    spanMiddle: inches(3, 5),
    spanRing: inches(3, 5),
    bridge: inches(0.125, 0.5),
    thumb: fc.option(order, { freq: 4 }),
    middle: order,
    ring: order,
  })
  .map((grip) => placeGrip(grip, RADIUS) as readonly Hole[])
  .chain((grip) => fc.oneof(fc.constant(grip), withVent(grip)));

/** How a layout turns a core, for any PAP. */
export const anyTurn: fc.Arbitrary<Mat3> = fc
  .record({
    layout: fc.record({
      drillingAngle: within(0, 180 * DEGREE),
      pinToPap: within(0, arc(6.75)),
      valAngle: within(0, 180 * DEGREE),
    }),
    over: within(arc(4), arc(6)),
    up: within(arc(-1), arc(1)),
  })
  .map(({ layout, over, up }) => placeLayout(layout, ballPoint(over, up)).R_BC);

/** One earlier drilling for either hand. */
const anyDrilling: fc.Arbitrary<FilledDrilling> = fc
  .record({ holes: anyHoles, R_BC: anyTurn, isMirrored: fc.boolean(), density: within(900, 1500) })
  .map(({ holes, R_BC, isMirrored, density }) => ({
    holes,
    density,
    R_CB: mulMat(diagonal([1, isMirrored ? -1 : 1, 1]), transpose(R_BC)),
  }));

const shapes: fc.Arbitrary<UnitShape> = fc.oneof(
  fc.constantFrom<UnitShape>({ kind: 'ball' }, { kind: 'cylinder' }, { kind: 'box' }),
  within(0.1, 0.95).map((top): UnitShape => ({ kind: 'cone', top })),
  within(0.2, 1.5).map((half): UnitShape => ({ kind: 'capsule', half })),
);

/** Radius of the sphere around a unit shape. */
const around = (shape: UnitShape): number =>
  ({ ball: 1, cylinder: Math.SQRT2, box: Math.sqrt(3), cone: Math.SQRT2, capsule: 0 })[shape.kind] +
  (shape.kind === 'capsule' ? 1 + shape.half : 0);

/** Solids of any shape, turn and proportions, each in a sphere of its own inside the cover. */
const anyCore = (room: number): fc.Arbitrary<readonly Part[]> =>
  fc
    .array(
      fc.record({
        shape: shapes,
        Q: rotation,
        stretch: fc.tuple(within(0.4, 1), within(0.4, 1), within(0.4, 1)),
        size: within(0.02, 0.055),
        toward: direction,
        far: within(0, 1),
        excess: within(100, 2200),
      }),
      { minLength: 1, maxLength: 5 },
    )
    .map((drawn) => {
      const kept: { part: Part; size: number }[] = [];
      for (const { shape, Q, stretch, size, toward, far, excess } of drawn) {
        const c = scale(far * (room - size), toward);
        if (kept.some((other) => norm(sub(other.part.c, c)) < other.size + size)) continue;
        const A = scaleMat(size / around(shape), mulMat(Q, diagonal(stretch)));
        kept.push({ part: { shape, A, c, excess }, size });
      }
      return kept.map(({ part }) => part);
    });

const solidBody: fc.Arbitrary<BallBody> = within(0.018, 0.026).chain((coverThickness) =>
  fc.record({
    radius: fc.constant(RADIUS),
    coverThickness: fc.constant(coverThickness),
    coverDensity: within(1100, 1250),
    fillerDensity: within(600, 1400),
    core: anyCore(RADIUS - coverThickness),
  }),
);

const fittedBody: fc.Arbitrary<BallBody> = fc.constantFrom(
  ...(['plain', 'lobed', 'asymmetric'] as const).flatMap((family) => fittedBodies(family, 12)),
);

/** Any body before it was ever drilled. */
export const anyBody: fc.Arbitrary<BallBody> = fc.oneof(solidBody, fittedBody);

/** Any ball, drilled up to twice before. */
export const anyBall: fc.Arbitrary<RandomBall> = fc.record({
  body: anyBody,
  holes: anyHoles,
  before: fc.array(anyDrilling, { maxLength: 2 }),
  R_BC: anyTurn,
});
