import { InputError } from '../errors.js';
import type { RankedLayout, RecommendAnswer } from '../records/answer.js';
import type { Ball } from '../records/ball.js';
import type { Bowler } from '../records/bowler.js';
import type { Lane } from '../records/lane.js';
import { loadRuleSet } from '../records/rules.js';
import { loadCautions, loadPractice } from '../records/shared-data.js';
import { VERSION } from '../records/version.js';
import type { Want } from '../records/want.js';
import { FOOT, from } from '../units.js';
import { HIGH_SURFACE, LOW_SURFACE } from './assumed-surface.js';
import {
  drillingAssumptions,
  LINE_ASSUMPTION,
  NO_WISH_ASSUMPTION,
  shotAssumptions,
  worldAssumptions,
} from './assumptions.js';
import { ballProblem } from './ball-problem.js';
import type { PinSide } from './candidates.js';
import { objections } from './constraints.js';
import { type DrilledFacts, drilledFacts } from './drilled-facts.js';
import { type Evaluator, localEvaluator } from './evaluator.js';
import { explain } from './explain.js';
import { limits } from './limits.js';
import { findLine, lineAnswer } from './line.js';
import { MIDDLE_LAYOUT } from './middle-layout.js';
import { type InAllWorlds, rankInWorlds } from './rank.js';
import { reasons } from './reasons.js';
import { type SearchResult, search } from './search.js';
import { unaimedProblem } from './shot-problem.js';
import { simulatedAnswer, targetAnswer, wishBands } from './simulated-answer.js';
import { type Outcome, simulator } from './simulator.js';
import { toLayout } from './to-layout.js';
import { pooledEvaluator } from './worker-pool.js';
import { drawWorlds, luckOf, NOMINAL_WORLD } from './world.js';

export interface RecommendInputs {
  readonly bowler: Bowler;
  readonly ball: Ball;
  readonly lane: Lane;
  readonly want: Want;
}

export interface RecommendOptions {
  /** The same seed gives the same answer, byte for byte. */
  readonly seed: number;
  /** How many layouts to answer with. */
  readonly top: number;
  /** Worker threads; 1 stays in this thread. The answer does not depend on it. */
  readonly workers: number;
  readonly pinSide: PinSide | 'both';
  readonly ruleSet?: string;
  readonly onProgress?: (progress: { stage: string; done: number; total: number }) => void;
}

/** Plausible worlds each finalist is simulated in. */
export const WORLD_COUNT = 200;

/**
 * The main job: ranked, explained layouts for one bowler, ball, lane and wanted reaction.
 *
 * Every layout in the answer was simulated by the physics engine, in the nominal world and in
 * `WORLD_COUNT` others.
 *
 * @throws {InputError} when the ball's numbers fit no core, the grip cannot be placed, or every layout
 *   breaks a rule
 */
export async function recommend(
  inputs: RecommendInputs,
  options: RecommendOptions,
): Promise<RecommendAnswer> {
  const { bowler, ball: ballRecord, lane, want } = inputs;
  const rules = loadRuleSet(options.ruleSet);
  const practice = loadPractice();
  const progress = (stage: string) => (done: number, total: number) =>
    options.onProgress?.({ stage, done, total });

  const ball = ballProblem(ballRecord, bowler, 'moment');
  const { radius } = ball.published;
  const middle = toLayout(MIDDLE_LAYOUT, radius);
  const unaimed = unaimedProblem(lane, bowler, ballRecord, ball);
  const line = findLine(unaimed, middle, from(lane.patternFt, FOOT), bowler.laydownBoard);
  const range = { low: LOW_SURFACE, high: HIGH_SURFACE };
  const worlds = drawWorlds(options.seed, WORLD_COUNT, bowler, radius, ball.bodies.length, range);
  const problem = {
    ...unaimed,
    launch: line.launch,
    worlds: [NOMINAL_WORLD, ...worlds],
    luck: worlds.map(luckOf),
  };

  const evaluator: Evaluator =
    options.workers > 1 ? pooledEvaluator(problem, options.workers) : localEvaluator(problem);
  try {
    const result = await search(problem, want, evaluator, {
      sides: options.pinSide === 'both' ? ['above', 'below'] : [options.pinSide],
      rules,
      practice,
      onProgress: progress('layouts'),
    });
    if (result.found.length === 0) throw nothingAllowed(result);
    const isAllowed = (outcome: Outcome): boolean =>
      objections(MIDDLE_LAYOUT, outcome, ball, rules, practice).length === 0;
    const {
      ranked,
      runnerUp,
      middle: middleInWorlds,
    } = await rankInWorlds(problem, result, evaluator, options.top, isAllowed, progress('worlds'));

    const engine = simulator(problem);
    const inWords = (row: InAllWorlds, facts: DrilledFacts) =>
      simulatedAnswer(row, facts, ball, engine, result.targets, { rules, practice });
    const factsOf = ({ layout }: InAllWorlds) => drilledFacts(layout, ball, rules);
    const middleAnswer = inWords(middleInWorlds, factsOf(middleInWorlds));
    const targets = result.targets.map(targetAnswer);
    const answers = ranked.map((row) => {
      const facts = factsOf(row);
      return { row, facts, simulated: inWords(row, facts) };
    });
    const explained = await explain(
      ranked.map(({ layout }) => layout),
      problem,
      result.targets,
      evaluator,
    );
    const after = runnerUp && inWords(runnerUp, factsOf(runnerUp));
    const layouts: RankedLayout[] = answers.map(({ row, facts, simulated }, i) => ({
      rank: i + 1,
      ...simulated,
      confidence: { beatsRunnerUp: row.beatsNext, beatsMiddle: row.beatsMiddle, worlds: WORLD_COUNT },
      psa: facts.psa,
      marks: [...facts.marks],
      legality: facts.legality,
      shares: explained[i].shares,
      steps: explained[i].steps,
      reasons: reasons({
        families: ball.families,
        undrilled: ballRecord,
        drilled: simulated.drilled,
        reaction: simulated.reaction,
        middle: middleAnswer,
        shares: explained[i].shares,
        targets,
        pinToPapIn: simulated.pinToPapIn,
        next: answers[i + 1]?.simulated ?? after,
        score: simulated.score,
      }),
    }));
    return {
      schema: 'flarewise/recommend/1',
      version: VERSION,
      seed: options.seed,
      inputs,
      assumptions: [
        ...drillingAssumptions(ballRecord, bowler, 'moment'),
        ...shotAssumptions(ballRecord),
        ...worldAssumptions(bowler),
        LINE_ASSUMPTION,
        ...(targets.length === 0 ? [NO_WISH_ASSUMPTION] : []),
      ],
      line: lineAnswer(line),
      targets,
      search: {
        candidates: result.candidates,
        shots: result.shots,
        rejected: [...result.rejected].map(([reason, count]) => ({ reason, count })),
      },
      middle: middleAnswer,
      layouts,
      limits: limits(result, ranked[0].nominal, targets, wishBands(ranked[0].worlds), line),
      cautions: loadCautions(),
    };
  } finally {
    await evaluator.close();
  }
}

const nothingAllowed = ({ rejected }: SearchResult): InputError => {
  const reasons = [...rejected].sort((a, b) => b[1] - a[1]);
  return new InputError('no-layout', {
    field: 'layouts',
    rule: 'must include one that may be drilled',
    got:
      reasons.map(([why, count]) => `${count} where ${why}`).join('; ') ||
      'none in the angles the trade drills',
    hint: 'Check the PAP, the spans and the hole sizes; a laydown board of the bowler’s own changes the line.',
  });
};
