import { overAndUp } from '../layout/placement.js';
import { ringsOnBall } from '../motion/rings.js';
import type { RollAnswer } from '../records/answer.js';
import type { Ball } from '../records/ball.js';
import type { Bowler } from '../records/bowler.js';
import type { Lane } from '../records/lane.js';
import type { LayoutNumbers } from '../records/layout-text.js';
import { loadRuleSet } from '../records/rules.js';
import { loadCautions, loadPractice } from '../records/shared-data.js';
import { VERSION } from '../records/version.js';
import { FOOT, from, INCH, to } from '../units.js';
import { drillingAssumptions, shotAssumptions } from './assumptions.js';
import { ballProblem } from './ball-problem.js';
import { objections } from './constraints.js';
import { drilledFacts } from './drilled-facts.js';
import { layoutAnswer } from './layout-answer.js';
import { findLine, lineAnswer } from './line.js';
import { pathAnswer, reactionAnswer } from './reaction-answer.js';
import { unaimedProblem } from './shot-problem.js';
import { simulator } from './simulator.js';
import { toLayout } from './to-layout.js';
import { NOMINAL_WORLD } from './world.js';

/** One shot of one layout, on the line that brings it to the pocket: path, phases, rings. */
export function rollAnswer({
  bowler,
  ball: record,
  lane,
  layout,
}: {
  bowler: Bowler;
  ball: Ball;
  lane: Lane;
  layout: LayoutNumbers;
}): RollAnswer {
  const ball = ballProblem(record, bowler, 'moment');
  const { radius } = ball.published;
  const drilled = toLayout(layout, radius);
  const unaimed = unaimedProblem(lane, bowler, record, ball);
  const line = findLine(unaimed, drilled, from(lane.patternFt, FOOT), bowler.laydownBoard);
  const engine = simulator({ ...unaimed, launch: line.launch });
  const rolled = engine.shot(drilled, NOMINAL_WORLD);
  const outcome = engine.read(rolled);
  const { shot } = rolled;
  const rules = loadRuleSet();
  const arcs = (u: readonly [number, number, number]) => {
    const { over, up } = overAndUp(u);
    return { overIn: to(over * radius, INCH), upIn: to(up * radius, INCH) };
  };
  return {
    schema: 'flarewise/roll/1',
    version: VERSION,
    ball: record.name,
    bowler: bowler.name,
    lane: lane.name,
    layout: layoutAnswer(layout, ball),
    line: lineAnswer(line),
    reaction: reactionAnswer(outcome),
    objections: objections(layout, outcome, { ball, rules, practice: loadPractice() }),
    drilled: drilledFacts(ball, rules)(layout).drilled,
    path: pathAnswer(shot),
    rings: ringsOnBall(shot).map((ring, i) => ({
      turn: i + 1,
      fromFt: to(ring.fromY, FOOT),
      points: ring.points_B.map(arcs),
    })),
    assumptions: [
      ...drillingAssumptions(record, bowler, 'moment'),
      ...shotAssumptions(record),
      'The shot is the nominal one, on the line that brings this layout to board 17.5.',
    ],
    cautions: loadCautions(),
  };
}
