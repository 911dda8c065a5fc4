import { FOOT, to } from '../base/units.js';
import { allAssumptions } from '../explain/assumptions.js';
import { beliefFindings } from '../explain/belief-findings.js';
import { cautionsFor } from '../explain/cautions.js';
import { explain } from '../explain/explain.js';
import { headline } from '../explain/headline.js';
import { limits } from '../explain/limits.js';
import { noLine } from '../explain/no-line.js';
import { oneMoreStep } from '../explain/one-more-step.js';
import { otherLevers } from '../explain/other-levers.js';
import { reasons } from '../explain/reasons.js';
import { surer } from '../explain/surer/surer.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import { undrilledAnswer } from '../prepare/undrilled.js';
import type { RankedLayout, RecommendAnswer, SimulatedLayout } from '../records/answers/answer.js';
import type { FirstLookAnswer } from '../records/answers/first-look.js';
import { Refusal } from '../records/refusals/refusal.js';
import { type Ball, ballRecord } from '../records/schemas/ball.js';
import { WISHED_IDS } from '../records/schemas/reaction-numbers.js';
import type { Want } from '../records/schemas/want.js';
import { VERSION } from '../records/shared/version.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { keyOf } from '../search/candidates/candidates.js';
import { firstLook } from '../search/first-look.js';
import { orderRules } from '../search/order-rules.js';
import type { SearchResult } from '../search/race.js';
import { type Ranking, rankInWorlds } from '../search/rank.js';
import { ARRIVES_ALIKE, pairedTwentieths, shareAbove } from '../search/scoring/world-statistics.js';
import { search, type VoicesResult } from '../search/search.js';
import { type LayoutOutcomes, simulateLayouts } from '../search/simulate-layouts.js';
import { ties } from '../search/ties.js';
import {
  type RecommendInputs,
  type Setting,
  type SettingOptions,
  SILENT,
  withSetting,
} from '../simulate/setting.js';
import { type ShotScatter, shotScatter } from '../simulate/shot-scatter.js';
import { saysLearned } from '../simulate/worlds/learned.js';
import { aheadByPhysics, differences } from './parts/difference-answer.js';
import { drilledFacts } from './parts/drilled-facts.js';
import { formatOn } from './parts/layout-answer.js';
import { regressionAnswer } from './parts/regression-answer.js';
import { answerer, targetAnswer } from './parts/simulated-answer.js';
import { voicesAnswer } from './parts/voices-answer.js';

interface RecommendOptions extends SettingOptions {
  /** How many layouts to answer with. */
  readonly top: number;
  /** The person's other balls, to try when layout is not enough. */
  readonly otherBalls?: readonly Ball[];
  /** Called once, before the search, if the regression alone can name a layout. */
  readonly onFirstLook?: ((look: FirstLookAnswer) => void) | undefined;
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
    const { ball, problem, line, rules, budget, seed } = setting;
    const { learned, ...given } = inputs;
    if (options.onFirstLook) await lookFirst(inputs, setting, options.onFirstLook);
    const scatter = shotScatter(problem, inputs.bowler, seed);
    const byPhysics = rankBeside(inputs.want, scatter, options.top, setting);
    const voices = await search(inputs.want, setting, { onPhysics: byPhysics.rank });
    const result = voices.weighed;
    if (result.found.length === 0) throw nothingAllowed(result);
    const order = orderRules(inputs.want, scatter, voices, setting);
    const { ranked, runnerUp, middle } = await rankInWorlds(result, options.top, setting, order);
    const [first] = ranked;
    const choices = await choicesOf(first, voices, await byPhysics.first(), setting);
    const difference = differences(voices, order.ids, scatter);
    const confidenceOf = confidences(voices, middle, difference, setting);
    const shots = result.shots();
    // rolled by the other threads while this one puts into words
    const rolling = Promise.all([
      explain(
        ranked.map(({ layout }) => layout),
        MIDDLE_LAYOUT,
        result.targets,
        setting,
      ),
      oneMoreStep(first, result.cache, setting),
      beliefFindings(first.layout, first.nominal.launch, setting),
    ]);
    const inWords = answerer(result.targets, setting);
    const drilled = drilledFacts(ball, rules);
    const said = (row: LayoutOutcomes) => {
      const facts = drilled(row.layout);
      return { row, facts, simulated: inWords(row, facts) };
    };
    const { simulated: middleAnswer, facts: middleFacts } = said(middle);
    const targets = result.targets.map(targetAnswer);
    const answers = ranked.map(said);
    const after = runnerUp && said(runnerUp).simulated;
    const levers = otherLevers(
      inputs,
      setting,
      first.layout,
      answers[0].simulated.line.laydownBoard,
      result.targets,
      {
        others: options.otherBalls ?? [],
        fitter: options.fitter,
      },
    );
    const [explained, stepped, beliefs] = await rolling;
    const layouts: RankedLayout[] = answers.map(({ row, facts, simulated }, i) => ({
      rank: i + 1,
      ...simulated,
      confidence: confidenceOf(row, ranked[i + 1] ?? runnerUp),
      psa: facts.psa,
      marks: [...facts.marks],
      legality: facts.legality,
      shares: explained[i].shares,
      causes: explained[i].causes,
      steps: i === 0 ? [...stepped] : [],
      reasons: reasons({
        families: ball.families,
        hasMark: ball.marker !== null,
        undrilled: undrilledAnswer(inputs.ball, ball),
        drilled: simulated.drilled,
        reaction: simulated.reaction,
        flareStart: facts.flareStart,
        middle: { ...middleAnswer, flareStart: middleFacts.flareStart },
        shares: explained[i].shares,
        causes: explained[i].causes,
        targets,
        pinToPapIn: simulated.pinToPapIn,
        next: answers[i + 1]?.simulated ?? after,
        score: simulated.score,
      }),
    }));
    const [best] = layouts;
    return {
      schema: 'flarewise/recommend/3',
      version: VERSION,
      seed: options.seed,
      inputs: { ...given, ball: ballRecord(inputs.ball) },
      ...saysLearned(learned),
      assumptions: allAssumptions(inputs, ball),
      noLine: line.reachesPocket
        ? null
        : noLine(inputs, ball, toLayout(MIDDLE_LAYOUT, ball.published.radius)),
      targets,
      search: {
        candidates: result.candidates,
        shots,
        rejected: result.rejected.map(({ why, count }) => ({ reason: why, count })),
        regression: await regressionAnswer(result, ranked, ball),
      },
      headline: headline(
        {
          layout: best.text,
          usual: middleAnswer.text,
          ahead: best.confidence.beatsMiddle,
          worlds: budget.worlds,
          readings: [...order.ids],
          difference: best.confidence.overMiddle,
          rival: rivalOf(layouts, middleAnswer),
          hasWish: order.hasWish,
          scatter,
          ties: ties(
            { layout: first.layout, outcome: first.nominal },
            result.attained,
            result.voice,
            order.ids,
            scatter,
          ),
          of: result.attained.length,
        },
        setting.practiceWeight,
      ),
      scatter,
      voices: choices && voicesAnswer(choices, voices, difference, setting),
      middle: middleAnswer,
      layouts,
      limits: limits(result, first.nominal, targets, answers[0].simulated.bands.reaction, levers),
      levers,
      beliefs,
      surer: surer(
        ranked.map(({ layout }) => layout),
        voices,
        inputs,
        setting,
      ),
      cautions: cautionsFor(ball),
    };
  });

/**
 * Prepares to say how sure it is that a layout is ahead of the usual middle one and of the next in order.
 *
 * @param difference  of a layout from another
 */
function confidences(
  voices: VoicesResult,
  middle: LayoutOutcomes,
  difference: ReturnType<typeof differences>,
  { budget }: Pick<Setting, 'budget'>,
): (row: LayoutOutcomes, next: LayoutOutcomes | null) => RankedLayout['confidence'] {
  return ({ layout, worlds }, next) => {
    const isMiddle = keyOf(layout) === keyOf(MIDDLE_LAYOUT);
    return {
      beatsRunnerUp: next ? shareAbove(worlds, next.worlds) : 1,
      beatsMiddle: shareAbove(worlds, middle.worlds),
      worlds: budget.worlds,
      byPhysics: {
        beatsRunnerUp: next ? aheadByPhysics(voices, layout, next.layout) : 1,
        beatsMiddle: aheadByPhysics(voices, layout, MIDDLE_LAYOUT),
      },
      overMiddle: isMiddle ? null : difference(layout, MIDDLE_LAYOUT),
      paired: isMiddle ? null : pairedTwentieths(WISHED_IDS, worlds, middle.worlds),
      overRunnerUp: next ? difference(layout, next.layout) : null,
    };
  };
}

/** The first of the layouts ranked that is ahead of the usual in most worlds, but comes after it since it finds the gutter more often. */
function rivalOf(
  layouts: readonly RankedLayout[],
  { gutterShare: usualGutterShare }: SimulatedLayout,
): Parameters<typeof headline>[0]['rival'] {
  const rival = layouts.find(
    ({ gutterShare, confidence }) =>
      confidence.beatsMiddle > 0.5 && gutterShare > usualGutterShare + ARRIVES_ALIKE,
  );
  if (!rival) return null;
  const { text: layout, gutterShare, confidence } = rival;
  return { layout, ahead: confidence.beatsMiddle, gutterShare, usualGutterShare };
}

/** Ranks what physics alone finds, while the search by both voices goes on. */
function rankBeside(want: Want, scatter: ShotScatter, top: number, setting: Setting) {
  const silent = { ...setting, practiceWeight: 0, progress: SILENT };
  let ranking: Promise<Ranking> | null = null;
  return {
    rank(physics: SearchResult): void {
      ranking = rankInWorlds(physics, top, silent, orderRules(want, scatter, null, silent));
      ranking.catch(() => undefined); // said when it is asked for
    },
    /** The first; null where physics was not asked alone. */
    first: async (): Promise<LayoutNumbers | null> => (await ranking)?.ranked[0].layout ?? null,
  };
}

/** What each voice would choose, each simulated in all worlds; null where practice has no weight. */
async function choicesOf(
  first: LayoutOutcomes,
  { weighed, practice }: VoicesResult,
  physics: LayoutNumbers | null,
  setting: Setting,
): Promise<Record<'weighed' | 'physics' | 'practice', LayoutNumbers> | null> {
  if (!physics || !practice) return null;
  await simulateLayouts([practice], weighed.cache, setting);
  return { weighed: first.layout, physics, practice: practice.layout };
}

async function lookFirst(
  { want }: RecommendInputs,
  setting: Setting,
  tell: (look: FirstLookAnswer) => void,
): Promise<void> {
  const regression = await setting.regression.glance();
  const look = regression.kind === 'ready' ? await firstLook(want, setting, regression) : null;
  if (look) tell({ text: formatOn(setting.ball, look.layout), hookStartFt: to(look.hookStart, FOOT) });
}

/** The refusal when no layout may be drilled, with the reasons. */
export const nothingAllowed = ({ rejected }: SearchResult): Refusal =>
  new Refusal([{ code: 'no-layout', params: { rejected: [...rejected].sort((a, b) => b.count - a.count) } }]);
