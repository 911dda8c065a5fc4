import { mean, quantile, sampleRankCorrelation } from 'simple-statistics';
import { gridCandidates, layoutOf } from '../../src/recommend/candidates.js';
import type { Trial } from '../../src/recommend/evaluator.js';
import { shiftTargets } from '../../src/recommend/in-worlds.js';
import { MIDDLE_LAYOUT } from '../../src/recommend/middle-layout.js';
import { nominalShots } from '../../src/recommend/nominal-shots.js';
import { pickDiffering } from '../../src/recommend/pick-differing.js';
import { problemScorer } from '../../src/recommend/problem-scorer.js';
import { openRegression } from '../../src/recommend/regression.js';
import { score } from '../../src/recommend/score.js';
import { type Setting, withSetting } from '../../src/recommend/setting.js';
import { targetsOf, WISHES } from '../../src/recommend/target.js';
import { toLayout } from '../../src/recommend/to-layout.js';
import { demoShelf } from '../../src/records/shelf.js';

/** One bowler, ball, lane and wish, drawn from the demo records. */
export interface ProofCase {
  readonly bowler: string;
  readonly ball: string;
  readonly lane: string;
  readonly want: { readonly hookStart?: number; readonly hookShape?: number; readonly hookTotal?: number };
}

/** How the regression did beside brute force by physics over the same layouts and worlds. */
export interface Proof {
  readonly layouts: number;
  /** Rank correlation of mean scores. */
  readonly ranks: number;
  /** What the best finalist lacks to the best of all, over the range of mean scores. */
  readonly regret: number;
  /** Share of physics shots in worlds not seen before that lie in the regression's 90 % bands. */
  readonly covered: number;
  /** Milliseconds of one layout in one world. */
  readonly physicsMs: number;
  readonly regressionMs: number;
  /** Milliseconds of all of the regression's work, tuning shots included, and of all brute force. */
  readonly wholeMs: number;
  readonly bruteMs: number;
}

const GRID = { arcIn: 0.5, angleDeg: 10 };
const WORLDS = 40;
const FINALISTS = 8;
const BLIND_SEED = 4242;
const BLIND_LAYOUTS = 10;

/** Cases that differ in everything, in a fixed order. */
export function proofCases(count: number): readonly ProofCase[] {
  const { bowlers, balls, lanes } = demoShelf();
  const step = (i: number): number | undefined => [undefined, 1, 2, 3, 4, 5][i % 6];
  return Array.from({ length: count }, (_, i) => {
    const wishes = { hookStart: step(i + 1), hookShape: step(3 * i + 2), hookTotal: step(5 * i + 3) };
    return {
      bowler: bowlers[(3 * i) % bowlers.length].id,
      ball: balls[(5 * i + Math.floor(i / balls.length)) % balls.length].id,
      lane: lanes[i % lanes.length].id,
      want: Object.fromEntries(Object.entries(wishes).filter(([, value]) => value !== undefined)),
    };
  });
}

/** Proves one case; in one line why not, where the regression was not asked. */
export async function prove({
  bowler,
  ball,
  lane,
  want,
}: ProofCase): Promise<Proof | { readonly why: string }> {
  const { bowlers, balls, lanes } = demoShelf();
  const record = <T>(list: readonly { id: string; record: T }[], id: string): T =>
    list.find((each) => each.id === id)!.record;
  const inputs = {
    bowler: record(bowlers, bowler),
    ball: record(balls, ball),
    lane: record(lanes, lane),
    want,
  };
  const options = { workers: 1, pinSide: 'above' } as const;
  return withSetting(inputs, { ...options, seed: 1 }, (setting) =>
    withSetting(inputs, { ...options, seed: BLIND_SEED }, (blind) => compare(want, setting, blind)),
  );
}

async function compare(
  want: ProofCase['want'],
  setting: Setting,
  blind: Setting,
): Promise<Proof | { readonly why: string }> {
  const { problem, evaluator, practice, sides } = setting;
  const { radius } = problem.ball.published;
  const rolled = nominalShots(setting);
  await rolled.roll(
    gridCandidates(practice, radius, GRID, sides)
      .map((candidate) => layoutOf(candidate, practice, radius))
      .filter((layout) => layout !== null),
  );
  const nominal = rolled.allowed();
  if (nominal.length < 100) return { why: 'too few layouts may be drilled' };
  const targets = targetsOf(
    want,
    nominal.map(({ outcome }) => outcome),
  );
  const regression = await openRegression();
  if (regression.kind === 'unusable') return regression;

  const layouts = nominal.map(({ layout }) => layout);
  const startWhole = performance.now();
  const scorer = await problemScorer(layouts, nominal, targets, setting, regression);
  if ('why' in scorer) return scorer;
  const all = Int32Array.from(layouts.keys());
  const expected = new Float64Array(layouts.length);
  const hooks: number[][] = layouts.map(() => []);
  const startScoring = performance.now();
  for (let world = 0; world < WORLDS; world++)
    await scorer.scoreIn(world, all, (layout, value, reached) => {
      expected[layout] += value / WORLDS;
      if (reached.shot === 'pins') hooks[layout].push(reached.reaction.totalHook);
    });
  const regressionMs = (performance.now() - startScoring) / (WORLDS * layouts.length);
  const wholeMs = performance.now() - startWhole;
  for (let world = WORLDS; world < problem.luck.length; world++)
    await scorer.scoreIn(world, all.subarray(0, BLIND_LAYOUTS), (layout, _, reached) => {
      if (reached.shot === 'pins') hooks[layout].push(reached.reaction.totalHook);
    });
  await regression.model.close();

  const startBrute = performance.now();
  const trialsOf = (i: number): readonly Trial[] =>
    Array.from({ length: WORLDS }, (_, k) => ({
      layout: toLayout(layouts[i], radius),
      world: 1 + k,
      launch: nominal[i].outcome.launch,
    }));
  const outcomes = await evaluator.evaluate(layouts.flatMap((_, i) => trialsOf(i)));
  const bruteMs = performance.now() - startBrute;
  const middle = { layout: toLayout(MIDDLE_LAYOUT, radius), launch: problem.launch };
  const [atNominal, ...luck] = await evaluator.evaluate([
    { ...middle, world: 0 },
    ...Array.from({ length: WORLDS }, (_, k) => ({ ...middle, world: problem.worlds.length + k })),
  ]);
  const means = layouts.map((_, i) =>
    mean(luck.map((here, k) => score(outcomes[WORLDS * i + k], shiftTargets(targets, here, atNominal)))),
  );
  const order = [...all].sort((a, b) => expected[b] - expected[a]);
  const finalists = pickDiffering(
    order.map((i) => ({ layout: layouts[i], mean: means[i] })),
    FINALISTS,
  );
  const best = Math.max(...means);
  const range = best - Math.min(...means);
  return {
    layouts: layouts.length,
    ranks: sampleRankCorrelation(means, [...expected]),
    regret: range > 0 ? (best - Math.max(...finalists.map((each) => each.mean))) / range : 0,
    covered: await coverage(hooks.slice(0, BLIND_LAYOUTS), nominal, blind),
    physicsMs: bruteMs / outcomes.length,
    regressionMs,
    wholeMs,
    bruteMs,
  };
}

/** Share of shots in worlds of another seed whose total hook lies in the 90 % band of the regression's own worlds. */
async function coverage(
  hooks: readonly (readonly number[])[],
  nominal: readonly {
    layout: Parameters<typeof toLayout>[0];
    outcome: { launch: Trial['launch'] & object };
  }[],
  { problem, evaluator }: Setting,
): Promise<number> {
  const { radius } = problem.ball.published;
  const trials = hooks.flatMap((_, i) =>
    Array.from({ length: WORLDS }, (_, k) => ({
      layout: toLayout(nominal[i].layout, radius),
      world: 1 + k,
      launch: nominal[i].outcome.launch,
    })),
  );
  const outcomes = await evaluator.evaluate(trials);
  let inside = 0;
  let reached = 0;
  for (const [t, outcome] of outcomes.entries()) {
    if (outcome.shot !== 'pins') continue;
    const band = hooks[Math.floor(t / WORLDS)];
    const hook = WISHES.hookTotal(outcome);
    reached += 1;
    if (hook >= quantile([...band], 0.05) && hook <= quantile([...band], 0.95)) inside += 1;
  }
  return inside / reached;
}
