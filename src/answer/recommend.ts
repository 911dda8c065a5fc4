import { allAssumptions } from '../explain/assumptions.js';
import { cautionsFor } from '../explain/cautions.js';
import { commonPractice } from '../explain/common-practice.js';
import { explain } from '../explain/explain.js';
import { limits } from '../explain/limits.js';
import { noLine } from '../explain/no-line.js';
import { otherLevers } from '../explain/other-levers.js';
import { reasons } from '../explain/reasons.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import { undrilledAnswer } from '../prepare/undrilled.js';
import type { RankedLayout, RecommendAnswer } from '../records/answers/answer.js';
import { Refusal } from '../records/refusals/refusal.js';
import { type Ball, ballRecord } from '../records/schemas/ball.js';
import { VERSION } from '../records/shared/version.js';
import { rankInWorlds } from '../search/rank.js';
import { type SearchResult, search } from '../search/search.js';
import type { LayoutOutcomes } from '../search/simulate-layouts.js';
import { type RecommendInputs, type SettingOptions, withSetting } from '../simulate/setting.js';
import { drilledFacts } from './parts/drilled-facts.js';
import { regressionAnswer } from './parts/regression-answer.js';
import { answerer, targetAnswer } from './parts/simulated-answer.js';

export interface RecommendOptions extends SettingOptions {
  /** How many layouts to answer with. */
  readonly top: number;
  /** Balls the person has besides this one, to try when layout is not enough. */
  readonly otherBalls?: readonly Ball[];
}

/**
 * The main job: ranked, explained layouts for one bowler, ball, lane and wanted reaction.
 *
 * Every layout in the answer was simulated by the physics engine, in the nominal world and in all worlds of the
 * budget.
 *
 * @throws {Refusal} when the ball's numbers fit no core, the grip cannot be placed, or every layout
 *   breaks a rule
 */
export const recommend = (inputs: RecommendInputs, options: RecommendOptions): Promise<RecommendAnswer> =>
  withSetting(inputs, options, async (setting): Promise<RecommendAnswer> => {
    const { ball, line, rules, budget } = setting;
    const result = await search(inputs.want, setting);
    if (result.found.length === 0) throw nothingAllowed(result);
    const { ranked, runnerUp, middle } = await rankInWorlds(result, options.top, setting);

    // rolled by the other threads while this one puts into words
    const rolling = Promise.all([
      explain(
        ranked.map(({ layout }) => layout),
        MIDDLE_LAYOUT,
        result.targets,
        setting,
      ),
      commonPractice(ranked[0].layout, setting),
    ]);
    const inWords = answerer(result.targets, setting);
    const drilled = drilledFacts(ball, rules);
    const factsOf = ({ layout }: LayoutOutcomes) => drilled(layout);
    const middleAnswer = inWords(middle, factsOf(middle));
    const targets = result.targets.map(targetAnswer);
    const answers = ranked.map((row) => {
      const facts = factsOf(row);
      return { row, facts, simulated: inWords(row, facts) };
    });
    const after = runnerUp && inWords(runnerUp, factsOf(runnerUp));
    const levers = otherLevers(
      inputs,
      ball,
      ranked[0].layout,
      answers[0].simulated.line.laydownBoard,
      result.targets,
      {
        others: options.otherBalls ?? [],
        fitter: options.fitter,
        budget,
      },
    );
    const [explained, practice] = await rolling;
    const layouts: RankedLayout[] = answers.map(({ row, facts, simulated }, i) => ({
      rank: i + 1,
      ...simulated,
      confidence: { beatsRunnerUp: row.beatsNext, beatsMiddle: row.beatsMiddle, worlds: budget.worlds },
      psa: facts.psa,
      marks: [...facts.marks],
      legality: facts.legality,
      shares: explained[i].shares,
      steps: explained[i].steps,
      reasons: reasons({
        families: ball.families,
        hasMark: ball.marker !== null,
        undrilled: undrilledAnswer(inputs.ball, ball),
        drilled: simulated.drilled,
        reaction: simulated.reaction,
        middle: middleAnswer,
        shares: explained[i].shares,
        centre: explained[i].centre,
        targets,
        pinToPapIn: simulated.pinToPapIn,
        next: answers[i + 1]?.simulated ?? after,
        score: simulated.score,
      }),
    }));
    return {
      schema: 'flarewise/recommend/2',
      version: VERSION,
      seed: options.seed,
      inputs: { ...inputs, ball: ballRecord(inputs.ball) },
      assumptions: allAssumptions(inputs, ball),
      noLine: line.reachesPocket
        ? null
        : noLine(inputs, ball, toLayout(MIDDLE_LAYOUT, ball.published.radius)),
      targets,
      search: {
        candidates: result.candidates,
        shots: result.shots(),
        rejected: result.rejected.map(({ why, count }) => ({ reason: why, count })),
        regression: regressionAnswer(result, ranked, ball),
      },
      middle: middleAnswer,
      layouts,
      limits: limits(result, ranked[0].nominal, targets, answers[0].simulated.bands.reaction),
      levers,
      practice,
      cautions: cautionsFor(ball),
    };
  });

/** The refusal when no layout at all may be drilled, with what stood in the way. */
export const nothingAllowed = ({ rejected }: SearchResult): Refusal =>
  new Refusal([{ code: 'no-layout', params: { rejected: [...rejected].sort((a, b) => b.count - a.count) } }]);
