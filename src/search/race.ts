import { counted } from '../base/counted.js';
import type { Budget, RaceSize } from '../prepare/budget.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { Setting } from '../simulate/setting.js';
import type { Outcome } from '../simulate/simulator.js';
import { byKey, keyOf } from './candidates/candidates.js';
import type { NominalShot, NominalShots, Rejected } from './candidates/nominal-shots.js';
import { pickDiffering } from './candidates/pick-differing.js';
import type { ScoredCache } from './outcome-cache.js';
import { halveByPhysics, halvingShots } from './physics-halving.js';
import { score } from './scoring/score.js';
import type { Target } from './scoring/target.js';
import { ARRIVES_ALIKE } from './scoring/world-statistics.js';
import type { SearchStart } from './search-start.js';
import type { Survey, Surveyed } from './surrogate/survey.js';
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

/** Races the most promising layouts by physics, as one voice scores them, once it has surveyed all. */
export async function race(
  voice: Voice,
  surveyed: Surveyed,
  { candidates, markable, nominal, attained, targets, outcomes }: SearchStart,
  { budget, progress }: Pick<Setting, 'budget' | 'progress'>,
): Promise<SearchResult> {
  const cache = outcomes.alone(voice);
  const rolled = nominal.apart();
  const bySurvey = 'why' in surveyed ? null : surveyed;
  const size = budget.race[bySurvey ? 'surveyed' : 'alone'];
  const report = counted(progress('shots in worlds'), halvingShots(size));
  const nominally = byNominalScore(voice);
  const starters = await startersOf(bySurvey, rolled, nominally, size, budget.survey.looks);
  const expects =
    starters.length > 0
      ? await halveByPhysics(starters, markable, { rolled, cache }, bySurvey, size, report)
      : null;
  const expectedOf = ({ layout }: NominalShot): number =>
    expects && cache.get(layout) ? expects(layout) : Number.NEGATIVE_INFINITY;
  return {
    found: rolled
      .allowed()
      .map((shot): Found => ({ ...shot, score: score(shot.outcome, targets), expected: expectedOf(shot) }))
      .sort((a, b) => (a.expected === b.expected ? nominally(a, b) : b.expected - a.expected)),
    cache,
    voice,
    targets,
    attained,
    candidates,
    shots: () => rolled.shots() + outcomes.shots() + (bySurvey?.shots ?? 0),
    rejected: rolled.rejected(),
    surveyed,
    byRegression: (layout) => bySurvey?.expected(layout) ?? null,
  };
}

/** Orders layouts by their scores in the nominal world, as a voice reads them, best first. */
function byNominalScore(voice: Voice): (a: NominalShot, b: NominalShot) => number {
  const aimed = voice.targetsIn(NOMINAL);
  const nominalScore = ({ layout, outcome }: NominalShot): number =>
    score(voice.reached(voice.effectsOf(layout), NOMINAL, outcome), aimed);
  return (a, b) => nominalScore(b) - nominalScore(a) || byKey(a, b);
}

/** The layouts that a race starts with: the best of the survey, where there is one, and the best of those rolled for the grid. */
async function startersOf(
  survey: Survey | null,
  rolled: NominalShots,
  nominally: (a: NominalShot, b: NominalShot) => number,
  { starters, leastOfGrid }: RaceSize,
  looks: Budget['survey']['looks'],
): Promise<readonly NominalShot[]> {
  const byGrid = [...rolled.allowed()].sort(nominally);
  const bySurvey = survey ? (await likeliest(survey, rolled, looks)).slice(0, starters - leastOfGrid) : [];
  return [...new Set([...bySurvey, ...byGrid])].slice(0, starters);
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
