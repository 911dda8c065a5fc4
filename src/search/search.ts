import { counted } from '../base/counted.js';
import type { Budget } from '../prepare/budget.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import type { RegressionNotice } from '../records/answers/statements/regression-notices.js';
import type { Want } from '../records/schemas/want.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { Setting } from '../simulate/setting.js';
import type { Outcome } from '../simulate/simulator.js';
import { keyOf } from './candidates/candidates.js';
import { rejectByMarks } from './candidates/constraints.js';
import { drilledGrid } from './candidates/drilled-grid.js';
import {
  type NominalShot,
  type NominalShots,
  nominalShots,
  type Rejected,
} from './candidates/nominal-shots.js';
import { layoutsApart, pickDiffering } from './candidates/pick-differing.js';
import { cacheOutcomes, type ScoredCache } from './outcome-cache.js';
import { halveByPhysics, halvingShots } from './physics-halving.js';
import { score } from './scoring/score.js';
import { type Target, targetsOf } from './scoring/target.js';
import { ARRIVES_ALIKE } from './scoring/world-statistics.js';
import { problemScorer } from './surrogate/problem-scorer.js';
import { type Survey, type Surveyed, survey } from './surrogate/survey.js';
import { physicsVoice } from './voices/physics-voice.js';
import { type ProblemBeliefs, problemBeliefs } from './voices/problem-beliefs.js';
import { NOMINAL, type Voice } from './voices/voice.js';

/** A layout that was simulated in the nominal world and may be drilled. */
export interface Found {
  readonly layout: LayoutNumbers;
  readonly outcome: Outcome;
  /** In the nominal world. */
  readonly score: number;
  /** Mean score over worlds, as a voice expects it; −∞ for a layout that was not rolled in any. */
  readonly expected: number;
}

/** What one voice makes of a search. */
export interface SearchResult {
  /** Best first: layouts rolled in plausible worlds, by their expected scores, then the others. */
  readonly found: readonly Found[];
  /** Layouts rolled in plausible worlds for this voice. */
  readonly cache: ScoredCache;
  readonly voice: Voice;
  /** By physics, in the nominal world. */
  readonly targets: readonly Target[];
  /** What the allowed layouts of the first, even grid do: the range of this ball. */
  readonly attained: readonly NominalShot[];
  /** Layouts the trade drills at marking resolution, before any was set aside. */
  readonly candidates: number;
  readonly shots: () => number;
  readonly rejected: readonly Rejected[];
  readonly surveyed: Surveyed;
  /** Mean score over plausible worlds by the fitted regression; null where there is none. */
  byRegression(layout: LayoutNumbers): number | null;
}

/** What each voice makes of the same shots. */
export interface VoicesResult {
  /** Physics and practice weighed: what is recommended. */
  readonly weighed: SearchResult;
  /** The best layout by practice alone that may be drilled; null where it was not wanted, or no layout may be drilled. */
  readonly practice: NominalShot | null;
  readonly beliefs: ProblemBeliefs;
  /** All layouts rolled in worlds: as physics alone reads them, and as both combined do. */
  readonly byPhysics: ScoredCache;
  readonly byBoth: ScoredCache;
}

/**
 * Searches all layouts, coarse to fine.
 *
 * A coarse grid is simulated by physics in the nominal world; its quantiles turn the wishes into targets. Then the fitted
 * regression, tuned to this problem, scores every layout at marking resolution over plausible worlds. Physics rolls
 * the most promising layouts in some of those worlds (or, without a regression, the best of the grid), and tries layouts between
 * and beside the best. Each voice searches by its own scores and finds what it would find without the other, but
 * shots rolled for one are not rolled again for the other.
 *
 * @param also       layouts that are not surveyed, but may be looked up in the survey later
 * @param onPhysics  receives what physics alone finds, while the search by both voices goes on. If left out, physics does not search
 *   alone unless practice has no weight
 */
export async function search(
  want: Want,
  setting: Setting,
  {
    also = [],
    onPhysics,
  }: {
    readonly also?: readonly LayoutNumbers[];
    readonly onPhysics?: (physics: SearchResult) => void;
  } = {},
): Promise<VoicesResult> {
  const { ball, budget, problem, practiceWeight, chanceOf, seed } = setting;
  const grid = nominalShots(setting);
  const coarse = drilledGrid(budget.grid.coarse, setting);
  const finest = drilledGrid(budget.grid.finest, setting);
  await grid.roll(coarse, counted(setting.progress('layouts'), coarse.length));
  const even = grid.allowed();
  const targets =
    even.length > 0
      ? targetsOf(
          want,
          even.map(({ outcome }) => outcome),
        )
      : [];
  const outcomes = await cacheOutcomes(setting);
  const markable = finest.filter((layout) => rejectByMarks(layout, ball, setting.practice) === null);
  const beliefs = problemBeliefs(want, problem, markable, even, outcomes.middle, { seed, chanceOf });
  const surveyed = withAlso(markable, [MIDDLE_LAYOUT]);
  const layouts = withAlso(surveyed, also);

  return withRegression({ layouts, surveyed: surveyed.length }, even, setting, async (opened) => {
    /** The race of one voice, once it has surveyed. */
    const raceBy = async (
      voice: Voice,
      surveyed: Surveyed,
      progress: Setting['progress'],
    ): Promise<SearchResult> => {
      const cache = outcomes.alone(voice);
      const rolled = grid.apart();
      const bySurvey = 'why' in surveyed ? null : surveyed;
      const size = budget.race[bySurvey ? 'surveyed' : 'alone'];
      const report = counted(progress('shots in worlds'), halvingShots(size));
      const aimed = voice.targetsIn(NOMINAL);
      const nominalScore = ({ layout, outcome }: NominalShot): number =>
        score(voice.reached(voice.effectsOf(layout), NOMINAL, outcome), aimed);
      const nominally = (a: NominalShot, b: NominalShot): number =>
        nominalScore(b) - nominalScore(a) || byKey(a, b);
      const byGrid = [...rolled.allowed()].sort(nominally);
      const starters = bySurvey
        ? union(
            (await likeliest(bySurvey, rolled, budget.survey.looks)).slice(
              0,
              size.starters - size.leastOfGrid,
            ),
            byGrid,
          ).slice(0, size.starters)
        : byGrid.slice(0, size.starters);
      const expects =
        starters.length > 0
          ? await halveByPhysics(starters, markable, { rolled, cache }, bySurvey, size, report)
          : null;
      const expectedOf = (shot: NominalShot): number =>
        expects && cache.get(shot.layout) ? expects(shot.layout) : Number.NEGATIVE_INFINITY;
      const found = rolled
        .allowed()
        .map((shot): Found => ({ ...shot, score: score(shot.outcome, targets), expected: expectedOf(shot) }))
        .sort((a, b) => (a.expected === b.expected ? nominally(a, b) : b.expected - a.expected));
      return {
        found,
        cache,
        voice,
        targets,
        attained: even,
        candidates: finest.length,
        shots: () => rolled.shots() + outcomes.shots() + (bySurvey?.shots ?? 0),
        rejected: rolled.rejected(),
        surveyed,
        byRegression: (layout) => bySurvey?.expected(layout) ?? null,
      };
    };
    const surveyBy = async (voice: Voice): Promise<Surveyed> =>
      'why' in opened ? opened : opened.survey(voice);
    const plain = physicsVoice(targets);
    const byPhysics = outcomes.by(plain);
    if (even.length === 0 || practiceWeight === 0) {
      const physics = await raceBy(plain, await surveyBy(plain), setting.progress);
      return { weighed: physics, practice: null, beliefs, byPhysics, byBoth: byPhysics };
    }
    const byBoth = outcomes.by(beliefs.voice);
    const physicsAlone = async (surveyed: Surveyed): Promise<void> => {
      onPhysics?.(await raceBy(plain, surveyed, () => () => undefined));
    };
    // one voice races while the other surveys, so that all threads have work
    const alone = onPhysics ? physicsAlone(await surveyBy(plain)) : null;
    const [weighed] = await Promise.all([
      surveyBy(beliefs.voice).then((surveyed) => raceBy(beliefs.voice, surveyed, setting.progress)),
      alone,
    ]);
    const practice = alone && (await bestByPractice(markable, beliefs, grid.apart()));
    return { weighed, practice, beliefs, byPhysics, byBoth };
  });
}

/** Tunes the regression to this problem, and passes it to `use`. */
async function withRegression<T>(
  {
    layouts,
    surveyed,
  }: {
    readonly layouts: readonly LayoutNumbers[] /** How many of them, from the first on. */;
    readonly surveyed: number;
  },
  nominal: readonly NominalShot[],
  setting: Setting,
  use: (
    opened: { survey(voice: Voice): Promise<Surveyed> } | { readonly why: RegressionNotice },
  ) => Promise<T>,
): Promise<T> {
  if (nominal.length < setting.budget.survey.leastNominal)
    return use({ why: { code: 'too-few-layouts-to-tune', params: {} } });
  const regression = await setting.regression.open();
  if (regression.kind === 'unusable') return use(regression);
  const scorer = await problemScorer(layouts, nominal, setting, regression, surveyed);
  if ('why' in scorer) return use(scorer);
  const { arithmetic } = regression.model;
  return use({ survey: (voice) => survey(layouts, scorer, voice, setting, arithmetic, surveyed) });
}

/** The best layouts of a survey that arrive about as often as the usual one and may be drilled; some are rolled at a time until enough are found. */
async function likeliest(
  { ranked, arrives }: Survey,
  rolled: NominalShots,
  { layouts, apart, enough, times }: Budget['survey']['looks'],
): Promise<readonly NominalShot[]> {
  const least = (arrives(MIDDLE_LAYOUT) ?? 0) - ARRIVES_ALIKE;
  const arriving = ranked.filter((layout) => (arrives(layout) ?? 0) >= least);
  const tried = new Set<string>();
  const likely: NominalShot[] = [];
  for (let time = 0; time < times && likely.length < enough; time++) {
    const batch = pickDiffering(
      arriving.filter((layout) => !tried.has(keyOf(layout))).map((layout) => ({ layout })),
      layouts,
      apart,
    ).map(({ layout }) => layout);
    for (const layout of batch) tried.add(keyOf(layout));
    await rolled.roll(batch);
    likely.push(...batch.map((layout) => rolled.get(layout)).filter((shot) => shot !== undefined));
  }
  return likely;
}

/** How many layouts are rolled at a time to find one that may be drilled, and how often. */
const TRIED_AT_A_TIME = 6;
const TIMES_TRIED = 20;

/**
 * The best by practice alone that may be drilled; among equals the one nearest to the usual middle layout. Where holes or the lane bar all that
 * practice likes most, it is the best of those rolled for the grid.
 */
async function bestByPractice(
  markable: readonly LayoutNumbers[],
  { byPractice }: ProblemBeliefs,
  rolled: NominalShots,
): Promise<NominalShot | null> {
  const order = markable
    .map((layout) => ({ layout, score: byPractice(layout), apart: layoutsApart(layout, MIDDLE_LAYOUT) }))
    .sort((a, b) => b.score - a.score || a.apart - b.apart || byKey(a, b))
    .map(({ layout }) => layout);
  const bestOf = (some: readonly LayoutNumbers[]): NominalShot | undefined =>
    some.map((layout) => rolled.get(layout)).find((shot) => shot !== undefined);
  for (let time = 0; time < TIMES_TRIED; time++) {
    const some = order.slice(TRIED_AT_A_TIME * time, TRIED_AT_A_TIME * (time + 1));
    await rolled.roll(some);
    const best = bestOf(some);
    if (best) return best;
  }
  return bestOf(order) ?? null;
}

/** A list, followed by those others that are not in it. */
function withAlso(
  list: readonly LayoutNumbers[],
  others: readonly LayoutNumbers[],
): readonly LayoutNumbers[] {
  const known = new Set(list.map(keyOf));
  return [...list, ...others.filter((layout) => !known.has(keyOf(layout)))];
}

const union = (...lists: readonly (readonly NominalShot[])[]): NominalShot[] => [...new Set(lists.flat())];

const byKey = (a: { layout: LayoutNumbers }, b: { layout: LayoutNumbers }): number =>
  keyOf(a.layout) < keyOf(b.layout) ? -1 : 1;
