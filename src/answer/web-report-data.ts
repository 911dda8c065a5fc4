import { type BallProblem, ballProblem } from '../prepare/ball-problem.js';
import { type Budget, type GridStep, USUAL_BUDGET } from '../prepare/budget.js';
import { coresDriller } from '../prepare/drilled-cores.js';
import type { CoreFitter } from '../prepare/fit-cores.js';
import { numbersOf } from '../prepare/mark-of.js';
import { inchesOf } from '../prepare/median-numbers.js';
import type { PsaAnswer } from '../records/answers/answer.js';
import type { DrilledMap, DrilledPoint, WebReportData } from '../records/answers/web-report-data.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { loadPractice } from '../records/shared/shared-data.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { steps } from '../search/candidates/candidates.js';
import { faceAnswer } from './parts/face-answer.js';
import { placedOn } from './parts/mark-answer.js';

/**
 * What a web page about a layout shows in addition to its answer: the drilled numbers of layouts around it, and the ball's face.
 *
 * @param layout  the answer's, with where its high-RG axis comes out
 * @throws {Refusal} as `ballProblem` does
 */
export function webReportData(
  { bowler, ball: record }: { readonly bowler: Bowler; readonly ball: Ball },
  layout: Parameters<typeof numbersOf>[0] & { readonly psa: PsaAnswer },
  fitter?: CoreFitter,
  budget: Budget = USUAL_BUDGET,
): WebReportData {
  const ball = ballProblem(record, bowler, 'moment', fitter, budget);
  return {
    map: ball.marker === null ? null : drilledMap(layout.valAngleDeg, ball, budget.pageMap),
    face: faceAnswer(numbersOf(layout), layout.psa, bowler.hand, ball),
  };
}

/** Drilled numbers, medians of all cores, over the drilling angles and pin-to-PAP arcs that the trade drills. */
function drilledMap(valAngleDeg: number, ball: BallProblem, { angleDeg, arcIn }: GridStep): DrilledMap {
  const practice = loadPractice();
  const drillingAnglesDeg = steps(practice.drillingAngleDeg, angleDeg);
  const pinToPapsIn = steps(practice.pinToPapIn, arcIn);
  const drill = coresDriller(ball);
  const pointOf = (numbers: LayoutNumbers): DrilledPoint =>
    inchesOf(drill(placedOn(ball, numbers).R_BC).median);
  return {
    valAngleDeg,
    drillingAnglesDeg,
    pinToPapsIn,
    rows: pinToPapsIn.map((pinToPapIn) =>
      drillingAnglesDeg.map((drillingAngleDeg) => pointOf({ drillingAngleDeg, pinToPapIn, valAngleDeg })),
    ),
  };
}
