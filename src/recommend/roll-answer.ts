import type { RollAnswer } from '../records/answer.js';
import { loadRuleSet } from '../records/rules.js';
import { loadPractice } from '../records/shared-data.js';
import { VERSION } from '../records/version.js';
import { aimedShot, type ShotInputs } from './aimed-shot.js';
import { drillingAssumptions, LAUNCH_ASSUMPTION, shotAssumptions } from './assumptions.js';
import { ballProblem } from './ball-problem.js';
import { bowTieAnswer } from './bow-tie-answer.js';
import { cautionsFor } from './cautions.js';
import { objections } from './constraints.js';
import { drilledFacts } from './drilled-facts.js';
import { faceAnswer } from './face-answer.js';
import type { CoreFitter } from './fit-cores.js';
import { layoutAnswer } from './layout-answer.js';
import { lineAnswer } from './line-answer.js';
import { missRoom } from './miss-room.js';
import { noLine } from './no-line.js';
import { pathAnswer, reactionAnswer } from './reaction-answer.js';
import { ringsAnswer, ringsInOil } from './rings-answer.js';
import { toLayout } from './to-layout.js';
import { NOMINAL_WORLD } from './world.js';

/** One shot of one layout, on its own line to the pocket, as `recommend` would roll it: path, phases, rings. */
export function rollAnswer(inputs: ShotInputs, fitter?: CoreFitter): RollAnswer {
  const { bowler, ball: record, lane, layout } = inputs;
  const ball = ballProblem(record, bowler, 'moment', fitter);
  const { radius } = ball.published;
  const marked = toLayout(layout, radius);
  const { line: usual, engine, rolled, outcome } = aimedShot(inputs, ball);
  const { shot, launch } = rolled;
  const path = pathAnswer(shot);
  const line = lineAnswer(outcome, path);
  const rules = loadRuleSet();
  const facts = drilledFacts(ball, rules)(layout);
  return {
    schema: 'flarewise/roll/1',
    version: VERSION,
    ball: record.name,
    bowler: bowler.name,
    lane: lane.name,
    layout: layoutAnswer(layout, ball),
    line,
    noLine: line.reachesPocket ? null : noLine(inputs, ball, marked),
    missRoom: missRoom(launch, (from) => engine.shot(marked, NOMINAL_WORLD, from).shot),
    reaction: reactionAnswer(outcome),
    objections: objections(layout, outcome, { ball, rules, practice: loadPractice(), line: usual }),
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
      'The shot is the nominal one, on the line that brings this layout to board 17.5.',
    ],
    cautions: cautionsFor(ball),
  };
}
