import { placeLayout } from '../layout/placement.js';
import type { PsaAnswer } from '../records/answer.js';
import type { Ball } from '../records/ball.js';
import type { Bowler } from '../records/bowler.js';
import type { LayoutNumbers } from '../records/layout-text.js';
import type { DrilledMap, DrilledPoint, PageFacts } from '../records/page-facts.js';
import { loadPractice } from '../records/shared-data.js';
import { type BallProblem, ballProblem } from './ball-problem.js';
import { steps } from './candidates.js';
import { coresDriller } from './drilled-cores.js';
import { faceAnswer } from './face-answer.js';
import type { CoreFitter } from './fit-cores.js';
import { numbersOf } from './mark-of.js';
import { inchesOf } from './median-numbers.js';
import { toLayout } from './to-layout.js';

/** How far apart the map's columns and rows lie. */
const ANGLE_STEP_DEG = 20;
const ARC_STEP_IN = 0.5;

/**
 * What a web page about a layout shows besides its answer: the drilled numbers around it, and the ball's face.
 *
 * @param layout  the answer's, with where its high-RG axis comes out
 * @throws {InputError} as `ballProblem` does
 */
export function pageFacts(
  { bowler, ball: record }: { readonly bowler: Bowler; readonly ball: Ball },
  layout: Parameters<typeof numbersOf>[0] & { readonly psa: PsaAnswer },
  fitter?: CoreFitter,
): PageFacts {
  const ball = ballProblem(record, bowler, 'moment', fitter);
  return {
    map: ball.marker === null ? null : drilledMap(layout.valAngleDeg, ball),
    face: faceAnswer(numbersOf(layout), layout.psa, bowler.hand, ball),
  };
}

/** Drilled numbers, medians of all cores, over the drilling angles and pin-to-PAP arcs that the trade drills. */
function drilledMap(valAngleDeg: number, ball: BallProblem): DrilledMap {
  const practice = loadPractice();
  const drillingAnglesDeg = steps(practice.drillingAngleDeg, ANGLE_STEP_DEG);
  const pinToPapsIn = steps(practice.pinToPapIn, ARC_STEP_IN);
  const { radius } = ball.published;
  const drill = coresDriller(ball);
  const pointOf = (numbers: LayoutNumbers): DrilledPoint => {
    const placement = placeLayout(toLayout(numbers, radius), ball.pap_B, ball.pinToMarker);
    return inchesOf(drill(placement.R_BC).median);
  };
  return {
    valAngleDeg,
    drillingAnglesDeg,
    pinToPapsIn,
    rows: pinToPapsIn.map((pinToPapIn) =>
      drillingAnglesDeg.map((drillingAngleDeg) => pointOf({ drillingAngleDeg, pinToPapIn, valAngleDeg })),
    ),
  };
}
