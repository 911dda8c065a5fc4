import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { Want } from '../../src/records/schemas/want.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { gridCandidates, layoutOf } from '../../src/search/candidates/candidates.js';
import { type NominalShot, nominalShots } from '../../src/search/candidates/nominal-shots.js';
import { score } from '../../src/search/scoring/score.js';
import { type Target, targetsOf } from '../../src/search/scoring/target.js';
import { ARRIVES_ALIKE, shiftTargets } from '../../src/search/scoring/world-statistics.js';
import type { Reached } from '../../src/simulate/readings.js';
import type { Setting } from '../../src/simulate/setting.js';
import type { Outcome } from '../../src/simulate/simulator.js';

/** Worlds in which physics rolls every allowed layout of the grid, and those in which it rolls the best of them. */
export const WORLDS = 24;
const BEST = 16;

/** Layouts, spread over the grid, and worlds of another seed in which bands are tried. */
const BLIND_LAYOUTS = 10;
const BLIND_WORLDS = 40;

const GRID = { arcIn: 0.5, angleDeg: 10 };

/** Brute force by physics: no search, no regression. */
export interface BruteForce {
  readonly targets: readonly Target[];
  readonly layouts: readonly LayoutNumbers[];
  /** Mean scores of the layouts in the first `WORLDS` worlds. */
  readonly means: readonly number[];
  /** Highest mean score in all worlds among those that did best in the first and reach the pins about as often as the usual layout. */
  readonly best: number;
  /** What some of the layouts do in worlds of another seed, one row a layout. */
  readonly blind: readonly (readonly Reached[])[];
}

/**
 * Rolls every allowed layout of a grid in plausible worlds. Some ten thousand shots.
 *
 * @param setting  of the worlds in which it is compared with a recommendation
 * @param blind    the same with worlds of another seed
 */
export async function bruteForce(want: Want, setting: Setting, blind: Setting): Promise<BruteForce> {
  const { problem, evaluator, practice, sides } = setting;
  const { radius } = problem.ball.published;
  const rolled = nominalShots(setting);
  await rolled.roll(
    gridCandidates(practice, radius, GRID, sides)
      .map((candidate) => layoutOf(candidate, practice, radius))
      .filter((layout) => layout !== null),
  );
  const nominal = rolled.allowed();
  const targets = targetsOf(
    want,
    nominal.map(({ outcome }) => outcome),
  );
  const middle = { layout: toLayout(MIDDLE_LAYOUT, radius), launch: problem.launch };
  const [atNominal, ...luck] = await evaluator.evaluate(
    [0, ...problem.luck.map((_, k) => problem.worlds.length + k)].map((world) => ({ ...middle, world })),
  );
  const inWorlds = ({ layout, outcome }: NominalShot, count: number, { evaluator }: Setting) =>
    evaluator.evaluate(
      Array.from({ length: count }, (_, k) => ({
        layout: toLayout(layout, radius),
        world: 1 + k,
        launch: outcome.launch,
      })),
    );
  /** Mean score over the worlds in which the ball reaches the pins, and the share of those. */
  const inAll = async (shot: NominalShot, count: number): Promise<{ mean: number; arrives: number }> => {
    const outcomes = await inWorlds(shot, count, setting);
    const scores = outcomes.flatMap((outcome, k) =>
      outcome.shot === 'pins' ? [score(outcome, shiftTargets(targets, luck[k], atNominal))] : [],
    );
    const mean = scores.reduce((sum, each) => sum + each, 0) / Math.max(1, scores.length);
    return { mean, arrives: scores.length / count };
  };
  const means: number[] = [];
  for (const shot of nominal) means.push((await inAll(shot, WORLDS)).mean);
  const order = [...nominal.keys()].sort((a, b) => means[b] - means[a]).slice(0, BEST);
  const usual = await inAll({ layout: MIDDLE_LAYOUT, outcome: atNominal }, luck.length);
  let best = Number.NEGATIVE_INFINITY;
  for (const i of order) {
    const { mean, arrives } = await inAll(nominal[i], luck.length);
    if (arrives >= usual.arrives - ARRIVES_ALIKE) best = Math.max(best, mean);
  }
  const blindly: Reached[][] = [];
  for (const i of blindLayouts(nominal.length))
    blindly.push((await inWorlds(nominal[i], BLIND_WORLDS, blind)).map(reached));
  return { targets, layouts: nominal.map(({ layout }) => layout), means, best, blind: blindly };
}

/** Places of the layouts that bands are tried on, spread evenly over so many. */
export const blindLayouts = (count: number): readonly number[] =>
  Array.from({ length: Math.min(count, BLIND_LAYOUTS) }, (_, i) => Math.floor((i * count) / BLIND_LAYOUTS));

const reached = ({ shot, reaction }: Outcome): Reached => {
  const { hookStart, sharpness, totalHook, entryAngle } = reaction;
  return { shot, reaction: { hookStart, sharpness, totalHook, entryAngle } };
};

/**
 * Remembers in a folder what takes minutes to work out, by all that it depends on.
 *
 * @param folder  null to remember nothing
 */
export async function remembered<T>(
  folder: string | null,
  of: unknown,
  workOut: () => Promise<T>,
): Promise<T> {
  if (folder === null) return workOut();
  const file = `${folder}/${createHash('sha256').update(JSON.stringify(of)).digest('hex')}.json`;
  try {
    return JSON.parse(readFileSync(file, 'utf8')) as T;
  } catch {
    const found = await workOut(); // not there yet
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, JSON.stringify(found));
    return found;
  }
}
