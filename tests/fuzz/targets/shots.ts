import fc from 'fast-check';
import { driller } from '../../../src/ball/drill/drill.js';
import { excavate } from '../../../src/ball/drill/excavation.js';
import { RANKING_RAYS } from '../../../src/ball/drill/ray-rule.js';
import { BOARD } from '../../../src/base/constants.js';
import { DEGREE, FOOT, from, INCH, MPH, RPM } from '../../../src/base/units.js';
import { placeLayout } from '../../../src/layout/placement.js';
import { ballPoint } from '../../../src/math/ball-point.js';
import { oiledLane } from '../../../src/motion/lane/oil.js';
import type { Surface } from '../../../src/motion/lane/surface.js';
import { reactionNumbers } from '../../../src/motion/reaction/reaction.js';
import { ANSWER_STEP } from '../../../src/motion/shot/answer-step.js';
import { rollLeanShot } from '../../../src/motion/shot/shot.js';
import { staysOnLane } from '../../../src/simulate/stays-on-lane.js';
import { within } from '../../support/arbitraries.js';
import { arc, fittedBodies, layoutOf, RADIUS, usualHoles } from '../../support/balls.js';
import { target } from '../target.js';

/* Shots by any bowler that a record may hold, with any layout of a drilled ball, on any oil. */

const rays = excavate(usualHoles(), RADIUS, RANKING_RAYS);
const drillers = (['plain', 'lobed', 'asymmetric'] as const).flatMap((family) =>
  fittedBodies(family, 3).map((body) => driller(body, rays)),
);

/** A number of a range, at its ends now and then. */
const legal = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof({ weight: 8, arbitrary: within(min, max) }, { weight: 1, arbitrary: fc.constantFrom(min, max) });

const oil = fc.record({
  lengthFt: legal(20, 55),
  film: legal(0, 150),
  filmEnd: legal(0, 150),
  halfBoards: legal(0.5, 19.5),
  frictionOiled: legal(0.005, 0.05),
  frictionDry: legal(0.05, 0.4),
});

/** Lanes that shots are drawn from; making one takes as long as several shots. */
const LANES = 1000;
const oils = fc.sample(oil, { numRuns: LANES, seed: 1 });
const lanes: Surface[] = [];

function laneAt(i: number): Surface {
  const { lengthFt, halfBoards, film, filmEnd, ...friction } = oils[i];
  const [half, toY] = [halfBoards * BOARD, from(lengthFt, FOOT)];
  lanes[i] ??= oiledLane({
    zones: [{ fromY: 0, toY, fromX: -half, toX: half, film, filmEnd }],
    ...friction,
    filmScale: 8,
    edgeLength: from(1.5, FOOT),
    edgeWidth: 0.75 * BOARD,
  });
  return lanes[i];
}

/** The ranges of bowler, lane and layout in the schemas of records. */
const shot = fc.record({
  ball: fc.nat(drillers.length - 1),
  layout: fc.tuple(legal(0, 180), legal(0, 6.75), legal(0, 180)),
  speedMph: legal(8, 26),
  revRateRpm: legal(30, 700),
  axisTiltDeg: legal(0, 75),
  axisRotationDeg: legal(0, 110),
  spinPhase: legal(0, 2 * Math.PI),
  pap: fc.tuple(legal(2, 7.5), legal(-3, 3)),
  laydownBoards: legal(-19, 19),
  aimDeg: legal(-4, 4),
  lane: fc.nat(LANES - 1),
  carriedShare: legal(0, 0.5),
  wornPerPass: legal(0, 1),
});

export const SHOTS = [
  target({
    name: 'shots',
    what: 'legal shots, from one end of every range to the other',
    inputs: 100_000,
    chunk: 2000,
    arbitrary: shot,
    take: ({ ball, layout, pap, lane, ...at }) => {
      const pap_B = ballPoint(arc(pap[0]), arc(pap[1]));
      const rolled = rollLeanShot(
        { ...drillers[ball](placeLayout(layoutOf(...layout), pap_B).R_BC), radius: RADIUS },
        {
          speed: from(at.speedMph, MPH),
          spin: from(at.revRateRpm, RPM),
          axisTilt: at.axisTiltDeg * DEGREE,
          axisRotation: at.axisRotationDeg * DEGREE,
          spinPhase: at.spinPhase,
          pap_B,
        },
        { x: at.laydownBoards * BOARD, angle: at.aimDeg * DEGREE },
        laneAt(lane),
        {
          step: ANSWER_STEP,
          freshSurface: {
            bandWidth: from(0.25, INCH),
            carriedShare: at.carriedShare,
            wornPerPass: at.wornPerPass,
          },
        },
      );
      if (rolled.outcome === 'invalid') throw new Error('a legal shot that cannot be computed');
      return { outcome: staysOnLane(rolled.outcome), ...reactionNumbers(rolled, RADIUS) };
    },
  }),
];
