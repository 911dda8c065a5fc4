import {
  drillingAssumptions,
  LAUNCH_ASSUMPTION,
  NOMINAL_SHOT,
  shotAssumptions,
} from '../explain/assumptions.js';
import { cautionsFor } from '../explain/cautions.js';
import { missRoom } from '../explain/miss-room.js';
import { noLine } from '../explain/no-line.js';
import { ballProblem } from '../prepare/ball-problem.js';
import type { Budget } from '../prepare/budget.js';
import { toLayout } from '../prepare/to-layout.js';
import type { RollAnswer } from '../records/answers/answer.js';
import type { Objection } from '../records/answers/statements/objections.js';
import { loadRuleSet } from '../records/shared/rules.js';
import { loadPractice } from '../records/shared/shared-data.js';
import { VERSION } from '../records/shared/version.js';
import { objections } from '../search/candidates/constraints.js';
import { aimedShot, type ShotRecords } from '../simulate/aimed-shot.js';
import { pathAnswer, reactionAnswer } from '../simulate/reaction-answer.js';
import type { RolledShot } from '../simulate/simulator.js';
import { saysLearned } from '../simulate/worlds/learned.js';
import { bowTieAnswer } from './parts/bow-tie-answer.js';
import { drilledFacts } from './parts/drilled-facts.js';
import { faceAnswer } from './parts/face-answer.js';
import { withNearestHole } from './parts/hole-clearances.js';
import { layoutAnswer } from './parts/layout-answer.js';
import { lineAnswer } from './parts/line-answer.js';
import { ringsAnswer, ringsInOil } from './parts/rings-answer.js';

/** One shot of one layout, on its own line to the pocket, as `recommend` would roll it: path, phases, rings. */
export function rollAnswer(inputs: ShotRecords, budget?: Budget): RollAnswer {
  const { bowler, ball: record, lane, layout, learned } = inputs;
  const ball = ballProblem(record, bowler, 'moment', undefined, budget);
  const { radius } = ball.published;
  const marked = toLayout(layout, radius);
  const { line: usual, problem, engine, rolled, outcome } = aimedShot(inputs, ball);
  const { launch } = rolled;
  const shot = rolled.full();
  const path = pathAnswer(shot);
  const line = lineAnswer(outcome, path);
  const rules = loadRuleSet();
  const facts = drilledFacts(ball, rules)(layout);
  return {
    schema: 'flarewise/roll/2',
    version: VERSION,
    ball: record.name,
    bowler: bowler.name,
    lane: lane.name,
    ...saysLearned(learned),
    layout: layoutAnswer(layout, ball),
    line,
    noLine: line.reachesPocket ? null : noLine(inputs, ball, marked),
    missRoom: missRoom(launch, (from) => engine.shot(marked, problem.worlds[0], from).shot),
    reaction: reactionAnswer(outcome),
    objections: [
      ...withNearestHole(
        objections(layout, outcome, { ball, rules, practice: loadPractice(), line: usual }),
        shot,
        ball,
      ),
      ...atEdge(rolled),
    ],
    drilled: facts.drilled,
    face: faceAnswer(layout, facts.psa, bowler.hand, ball),
    path,
    rings: ringsAnswer(shot, radius),
    ringsInOil: ringsInOil(shot),
    bowTie: bowTieAnswer(shot, ball),
    assumptions: [
      ...drillingAssumptions(record, bowler, ball),
      ...shotAssumptions(record, lane),
      LAUNCH_ASSUMPTION,
      NOMINAL_SHOT,
    ],
    cautions: cautionsFor(ball),
  };
}

/** Whether the shot reaches the pins only as the ball happens to be turned when it leaves the hand. */
const atEdge = ({ shot, opposite }: RolledShot): readonly Objection[] =>
  shot.outcome === 'pins' && opposite?.().outcome === 'gutter'
    ? [{ code: 'gutter-half-a-turn-on', params: {} }]
    : [];
