import { driller } from '../../src/ball/drill/drill.js';
import { excavate } from '../../src/ball/drill/excavation.js';
import { RANKING_RAYS } from '../../src/ball/drill/ray-rule.js';
import { BOARD, LANE_WIDTH } from '../../src/base/constants.js';
import { DEGREE, FOOT, from, INCH, MPH, RPM } from '../../src/base/units.js';
import { placeLayout } from '../../src/layout/placement.js';
import type { FreshSurface } from '../../src/motion/lane/fresh-surface.js';
import { type OilPattern, oiledLane } from '../../src/motion/lane/oil.js';
import type { Surface } from '../../src/motion/lane/surface.js';
import type { RollingBody } from '../../src/motion/shot/body.js';
import type { Launch, Release } from '../../src/motion/shot/release.js';
import { fittedBodies, layoutOf, PAP_B, RADIUS, usualHoles } from './balls.js';
import { seeded } from './bodies.js';

/** Everything that makes one shot but the way it is computed. */
export interface RandomShot {
  readonly body: RollingBody;
  readonly release: Release;
  readonly launch: Launch;
  readonly surface: Surface;
  readonly freshSurface: FreshSurface;
}

/** Lanes that shots are drawn from when nothing is said; making one takes as long as several shots. */
const LANES = 24;

/**
 * Shots of drilled balls by all sorts of bowlers on all sorts of lanes, the same ones every run: 10 to 24 mph,
 * 60 to 550 rpm, tilt to 30°, rotation to 90°, three families of cores under layouts from end to end, patterns
 * of 30 to 47 ft, carried oil in its assumed range. They aim more to the right the more they hook; some
 * end in the gutter all the same.
 */
export function randomShots(count: number, seed = 2027, differentLanes = LANES): readonly RandomShot[] {
  const random = seeded(seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const rays = excavate(usualHoles(), RADIUS, RANKING_RAYS);
  const drillers = (['plain', 'lobed', 'asymmetric'] as const).flatMap((family) =>
    fittedBodies(family, 3).map((body) => driller(body, rays)),
  );
  const lanes = Array.from({ length: differentLanes }, () => oiledLane(randomPattern(between)));
  const one = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)];
  return Array.from({ length: count }, () => {
    const layout = layoutOf(between(10, 90), between(0.5, 6.5), between(10, 80));
    const speed = between(10, 24);
    const revs = between(60, 550);
    const axisRotation = between(0, 90) * DEGREE;
    const sideward = (Math.sin(axisRotation) * revs) / speed / 20; // about 1 for a good hook
    return {
      body: { ...one(drillers)(placeLayout(layout, PAP_B).R_BC), radius: RADIUS },
      release: {
        speed: from(speed, MPH),
        spin: from(revs, RPM),
        axisTilt: between(0, 30) * DEGREE,
        axisRotation,
        spinPhase: between(0, 2 * Math.PI),
        pap_B: PAP_B,
      },
      launch: {
        x: between(-8, 8) * BOARD - 6 * BOARD * sideward,
        angle: (between(-0.3, 0.3) + 2 * sideward) * DEGREE,
      },
      surface: one(lanes),
      freshSurface: {
        bandWidth: from(between(0.15, 0.4), INCH),
        carriedShare: between(0.05, 0.3),
        wornPerPass: between(0, 0.7),
      },
    };
  });
}

/** Heavy oil over the middle, light oil outside, of random length, amount and friction. */
function randomPattern(between: (low: number, high: number) => number): OilPattern {
  const length = between(30, 47);
  const middle = between(20, 60);
  const outside = between(3, 40);
  const half = between(8, 14) * BOARD;
  return {
    zones: [
      {
        ...{ fromY: 0, toY: from(length, FOOT), fromX: -half, toX: half },
        ...{ film: middle, filmEnd: between(0.2, 0.6) * middle },
      },
      {
        ...{ fromY: 0, toY: from(length - between(0, 8), FOOT), fromX: -LANE_WIDTH / 2, toX: LANE_WIDTH / 2 },
        ...{ film: outside, filmEnd: between(0.1, 0.8) * outside },
      },
    ],
    frictionOiled: between(0.015, 0.04),
    frictionDry: between(0.15, 0.28),
    filmScale: between(2, 5),
    edgeLength: from(1.5, FOOT),
    edgeWidth: 0.75 * BOARD,
  };
}
