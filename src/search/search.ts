import type { Budget } from '../prepare/budget.js';
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
import { pickDiffering } from './candidates/pick-differing.js';
import { cacheOutcomes, type OutcomeCache } from './outcome-cache.js';
import { halveByPhysics, halvingShots } from './physics-halving.js';
import { score } from './scoring/score.js';
import { type Target, targetsOf } from './scoring/target.js';
import { type Surveyed, survey } from './surrogate/survey.js';

/** A layout that was simulated in the nominal world and may be drilled. */
export interface Found {
  readonly layout: LayoutNumbers;
  readonly outcome: Outcome;
  /** In the nominal world. */
  readonly score: number;
}

export interface SearchResult {
  /** Best first: those that physics rolled in plausible worlds by what it then expects of them, then the others. */
  readonly found: readonly Found[];
  /** What physics did in plausible worlds so far. */
  readonly cache: OutcomeCache;
  readonly targets: readonly Target[];
  /** What the allowed layouts of the first, even grid do: what this ball can do at all. */
  readonly attained: readonly Outcome[];
  /** Layouts the trade drills at marking resolution, before any was set aside. */
  readonly candidates: number;
  readonly shots: () => number;
  readonly rejected: readonly Rejected[];
  readonly surveyed: Surveyed;
  /** Mean score over plausible worlds by the fitted regression; null where it was not asked. */
  byRegression(layout: LayoutNumbers): number | null;
}

/**
 * Searches all layouts, coarse to fine.
 *
 * A coarse grid is simulated by physics in the nominal world; its quantiles turn the wishes into targets. Then the fitted
 * regression, tuned to this problem, scores every layout at marking resolution over plausible worlds. Physics tries
 * the likeliest in some of those worlds, or, where there is no regression to use, the best of the grid, and
 * looks between and beside the best.
 *
 * @param also  layouts that the regression is asked about besides
 */
export async function search(
  want: Want,
  setting: Setting,
  also: readonly LayoutNumbers[] = [],
): Promise<SearchResult> {
  const { ball, budget } = setting;
  const rolled = nominalShots(setting);
  const coarse = drilledGrid(budget.grid.coarse, setting);
  const finest = drilledGrid(budget.grid.finest, setting);
  await rolled.roll(coarse, counted(setting.progress('layouts'), coarse.length));
  const attained = rolled.allowed().map(({ outcome }) => outcome);
  const targets = attained.length > 0 ? targetsOf(want, attained) : [];
  const cache = await cacheOutcomes(targets, setting);
  const scoreOf = ({ outcome }: NominalShot): number => score(outcome, targets);
  const nominally = (a: NominalShot, b: NominalShot): number => scoreOf(b) - scoreOf(a) || byKey(a, b);

  const markable = finest.filter((layout) => rejectByMarks(layout, ball, setting.practice) === null);
  const { surveyed, expects } = await withSurvey(
    [...markable, ...also.filter((layout) => !markable.some((each) => keyOf(each) === keyOf(layout)))],
    rolled,
    targets,
    setting,
    async (surveyed) => {
      const survey = 'ranked' in surveyed ? surveyed : null;
      const size = budget.race[survey ? 'surveyed' : 'alone'];
      const report = counted(setting.progress('shots in worlds'), halvingShots(size));
      const byGrid = [...rolled.allowed()].sort(nominally);
      const starters = survey
        ? union(await likeliest(survey.ranked, rolled, budget.survey.looks), byGrid).slice(0, size.starters)
        : byGrid.slice(0, size.starters);
      const expects =
        starters.length > 0
          ? await halveByPhysics(starters, markable, { rolled, cache }, survey, size, report)
          : null;
      return { surveyed, expects };
    },
  );

  const expectedOf = (shot: NominalShot): number =>
    expects && cache.get(shot.layout) ? expects(shot.layout) : Number.NEGATIVE_INFINITY;
  const order = rolled
    .allowed()
    .map((shot) => ({ shot, expected: expectedOf(shot) }))
    .sort((a, b) => (a.expected === b.expected ? nominally(a.shot, b.shot) : b.expected - a.expected));
  return {
    found: order.map(({ shot }): Found => ({ ...shot, score: scoreOf(shot) })),
    cache,
    targets,
    attained,
    candidates: finest.length,
    shots: () => rolled.shots() + cache.shots() + ('ranked' in surveyed ? surveyed.shots : 0),
    rejected: rolled.rejected(),
    surveyed,
    byRegression: (layout) => ('ranked' in surveyed ? (surveyed.expected(layout) ?? null) : null),
  };
}

/** Asks the regression about every layout that may be marked, and hands on what it says. */
async function withSurvey<T>(
  layouts: readonly LayoutNumbers[],
  rolled: NominalShots,
  targets: readonly Target[],
  setting: Setting,
  use: (surveyed: Surveyed) => Promise<T>,
): Promise<T> {
  const nominal = rolled.allowed();
  if (nominal.length < setting.budget.survey.leastNominal)
    return use({ why: { code: 'too-few-layouts-to-tune', params: {} } });
  const regression = await setting.regression.open();
  if (regression.kind === 'unusable') return use(regression);
  return use(await survey(layouts, nominal, targets, setting, regression));
}

/** The best of a survey that may be drilled: some are rolled at a time until there are enough. */
async function likeliest(
  ranked: readonly LayoutNumbers[],
  rolled: NominalShots,
  { layouts, apart, enough, times }: Budget['survey']['looks'],
): Promise<readonly NominalShot[]> {
  const tried = new Set<string>();
  const likely: NominalShot[] = [];
  for (let time = 0; time < times && likely.length < enough; time++) {
    const batch = pickDiffering(
      ranked.filter((layout) => !tried.has(keyOf(layout))).map((layout) => ({ layout })),
      layouts,
      apart,
    ).map(({ layout }) => layout);
    for (const layout of batch) tried.add(keyOf(layout));
    await rolled.roll(batch);
    likely.push(...batch.map((layout) => rolled.get(layout)).filter((shot) => shot !== undefined));
  }
  return likely;
}

const union = (...lists: readonly (readonly NominalShot[])[]): NominalShot[] => [...new Set(lists.flat())];

/** Sums up counts for a report of progress that never passes its total. */
function counted(report: (done: number, total: number) => void, total: number): (count: number) => void {
  let done = 0;
  return (count) => {
    done += count;
    report(Math.min(done, total), total);
  };
}

const byKey = (a: { layout: LayoutNumbers }, b: { layout: LayoutNumbers }): number =>
  keyOf(a.layout) < keyOf(b.layout) ? -1 : 1;
