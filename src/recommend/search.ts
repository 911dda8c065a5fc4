import type { LayoutNumbers } from '../records/layout-text.js';
import type { Want } from '../records/want.js';
import { type Candidate, type GridStep, gridCandidates, keyOf, layoutOf } from './candidates.js';
import { climb, expectedShots } from './climb.js';
import { type Rejection, rejectByMarks } from './constraints.js';
import { type NominalShot, type NominalShots, nominalShots } from './nominal-shots.js';
import { pickDiffering } from './pick-differing.js';
import { openRegression } from './regression.js';
import { score } from './score.js';
import type { Setting } from './setting.js';
import type { Outcome } from './simulator.js';
import { type Surveyed, survey } from './survey.js';
import { type Target, targetsOf } from './target.js';

/** A layout that was simulated in the nominal world and may be drilled. */
export interface Found {
  readonly layout: LayoutNumbers;
  readonly outcome: Outcome;
  /** In the nominal world. */
  readonly score: number;
  /** Mean score over plausible worlds by the fitted regression; null where it was not asked. */
  readonly expected: number | null;
}

export interface SearchResult {
  /** Best first: by what is expected over worlds, where the regression was asked, else by the nominal score. */
  readonly found: readonly Found[];
  readonly targets: readonly Target[];
  /** What the allowed layouts of the first, even grid do: what this ball can do at all. */
  readonly attained: readonly Outcome[];
  /** Layouts the trade drills at marking resolution, before any was set aside. */
  readonly candidates: number;
  readonly shots: number;
  readonly rejected: ReadonlyMap<Rejection, number>;
  readonly surveyed: Surveyed;
}

/** The first grid over all layouts; its outcomes also say what is attainable. */
const COARSE: GridStep = { arcIn: 0.5, angleDeg: 10 };

/** What a person can mark. */
const FINEST: GridStep = { arcIn: 0.125, angleDeg: 5 };

/** From how many, mutually differing, places physics alone climbs. */
const STARTS = 12;

/** Differing layouts of the survey that physics rolls at a time, until so many of them may be drilled. */
const ROLLED = 40;
const ENOUGH = 24;
const MOST_TIMES = 3;

/**
 * Searches all layouts.
 *
 * A coarse grid is simulated by physics; its quantiles turn the wishes into targets. Then the fitted regression, tuned to
 * this problem, scores every layout at marking resolution over plausible worlds, and physics rolls the best that
 * differ. Where there is no regression to use, physics alone climbs from the best of the grid in the nominal world.
 */
export async function search(want: Want, setting: Setting): Promise<SearchResult> {
  const { ball, practice, sides } = setting;
  const { radius } = ball.published;
  const rolled = nominalShots(setting);
  const coarse = grid(COARSE, setting);
  const onProgress = setting.progress('layouts');
  const expected = coarse.length + expectedShots(STARTS);
  let done = 0;
  const onDone = (count: number): void => {
    done += count;
    onProgress(Math.min(done, expected), expected);
  };
  await rolled.roll(
    coarse.map(({ layout }) => layout),
    onDone,
  );
  const attained = rolled.allowed().map(({ outcome }) => outcome);
  const targets = attained.length > 0 ? targetsOf(want, attained) : [];
  const scoreOf = ({ outcome }: NominalShot): number => score(outcome, targets);

  const surveyed = await surveyAll(rolled, targets, setting);
  const means = new Map<string, number>();
  if ('ranked' in surveyed) {
    for (const { layout, expected } of surveyed.ranked) means.set(keyOf(layout), expected);
    await rollBest(surveyed.ranked, rolled, onDone);
  } else {
    const starts = pickDiffering(byScore(rolled, scoreOf), STARTS);
    const isStart = new Set(starts.map(({ layout }) => keyOf(layout)));
    const candidates = coarse.filter(({ layout }) => isStart.has(keyOf(layout))).map((row) => row.candidate);
    await climb(candidates, rolled, scoreOf, setting, onDone);
  }
  onProgress(expected, expected);
  const found = rolled
    .allowed()
    .map(
      (shot): Found => ({ ...shot, score: scoreOf(shot), expected: means.get(keyOf(shot.layout)) ?? null }),
    );
  return {
    found: found.sort((a, b) => (b.expected ?? b.score) - (a.expected ?? a.score) || byKey(a, b)),
    targets,
    attained,
    candidates: gridCandidates(practice, radius, FINEST, sides).length,
    shots: rolled.shots() + ('ranked' in surveyed ? surveyed.shots : 0),
    rejected: rolled.rejected,
    surveyed,
  };
}

/** Asks the regression about every layout that may be marked. */
async function surveyAll(
  rolled: NominalShots,
  targets: readonly Target[],
  setting: Setting,
): Promise<Surveyed> {
  const nominal = rolled.allowed();
  if (nominal.length < LEAST_KNOWN)
    return { why: 'too few layouts may be drilled to tune the regression to' };
  const regression = await openRegression(setting.models);
  if (regression.kind === 'unusable') return regression;
  try {
    const layouts = grid(FINEST, setting)
      .map(({ layout }) => layout)
      .filter((layout) => rejectByMarks(layout, setting.ball, setting.practice) === null);
    return await survey(layouts, nominal, targets, setting, regression);
  } finally {
    await regression.model.close();
  }
}

/** Nominal shots below which the regression is not tuned. */
const LEAST_KNOWN = 100;

/** Rolls the best of a survey, a batch that differ at a time, until enough of them may be drilled. */
async function rollBest(
  ranked: readonly { readonly layout: LayoutNumbers }[],
  rolled: NominalShots,
  onDone: (count: number) => void,
): Promise<void> {
  const tried = new Set<string>();
  let allowed = 0;
  for (let time = 0; time < MOST_TIMES && allowed < ENOUGH; time++) {
    const batch = pickDiffering(
      ranked.filter(({ layout }) => !tried.has(keyOf(layout))),
      ROLLED,
    ).map(({ layout }) => layout);
    for (const layout of batch) tried.add(keyOf(layout));
    await rolled.roll(batch, onDone);
    allowed += batch.filter((layout) => rolled.get(layout)).length;
  }
}

/** The layouts of a grid that the trade drills. */
const grid = (
  step: GridStep,
  { ball, practice, sides }: Setting,
): readonly { candidate: Candidate; layout: LayoutNumbers }[] =>
  gridCandidates(practice, ball.published.radius, step, sides).flatMap((candidate) => {
    const layout = layoutOf(candidate, practice, ball.published.radius);
    return layout ? [{ candidate, layout }] : [];
  });

const byScore = (rolled: NominalShots, scoreOf: (shot: NominalShot) => number): readonly NominalShot[] =>
  [...rolled.allowed()].sort((a, b) => scoreOf(b) - scoreOf(a) || byKey(a, b));

const byKey = (a: { layout: LayoutNumbers }, b: { layout: LayoutNumbers }): number =>
  keyOf(a.layout) < keyOf(b.layout) ? -1 : 1;
