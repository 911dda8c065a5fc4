import type { LayoutNumbers } from '../records/layout-text.js';
import type { Want } from '../records/want.js';
import { type Candidate, type GridStep, gridCandidates, keyOf, layoutOf, neighbours } from './candidates.js';
import { type Rejection, rejectByMarks, rejectByOutcome } from './constraints.js';
import { score } from './score.js';
import type { Setting } from './setting.js';
import type { Outcome } from './simulator.js';
import { type Target, targetsOf } from './target.js';
import { toLayout } from './to-layout.js';

/** A layout that was simulated in the nominal world and may be drilled. */
export interface Found {
  readonly candidate: Candidate;
  readonly layout: LayoutNumbers;
  readonly outcome: Outcome;
  readonly score: number;
}

export interface SearchResult {
  /** Best first. */
  readonly found: readonly Found[];
  readonly targets: readonly Target[];
  /** What the allowed layouts of the first, even grid do: what this ball can do at all. */
  readonly attained: readonly Outcome[];
  /** Layouts the trade drills at marking resolution, before any was set aside. */
  readonly candidates: number;
  readonly shots: number;
  readonly rejected: ReadonlyMap<Rejection, number>;
}

/** The first grid over all layouts; its outcomes also say what is attainable. */
const COARSE: GridStep = { arcIn: 0.5, angleDeg: 10 };

/** Steps of the refinement, down to what a person can mark. */
const REFINEMENTS: readonly GridStep[] = [
  { arcIn: 0.25, angleDeg: 5 },
  { arcIn: 0.125, angleDeg: 5 },
];

/** From how many, mutually differing, places the refinement starts. */
const STARTS = 12;
const MOST_ROUNDS = 12;

/**
 * Searches all layouts by physics, coarse to fine.
 *
 * A grid over pin-to-PAP × pin buffer × drilling angle is simulated; its quantiles turn the wishes into
 * targets; from the best, mutually differing, grid points each climbs to its best neighbour until none
 * is better, at marking resolution. Each layout is simulated once.
 */
export async function search(want: Want, setting: Setting): Promise<SearchResult> {
  const { ball, evaluator, practice, sides } = setting;
  const { radius } = ball.published;
  const onProgress = setting.progress('layouts');
  const rejected = new Map<Rejection, number>();
  const reject = (why: Rejection): null => {
    rejected.set(why, (rejected.get(why) ?? 0) + 1);
    return null;
  };
  const known = new Map<string, { outcome: Outcome; candidate: Candidate; layout: LayoutNumbers } | null>();
  let shots = 0;

  /** Simulates those of the candidates that are new and may be drilled. */
  const simulate = async (candidates: readonly Candidate[], done: number, total: number): Promise<void> => {
    const fresh: { candidate: Candidate; layout: LayoutNumbers; key: string }[] = [];
    for (const candidate of candidates) {
      const layout = layoutOf(candidate, practice, radius);
      if (!layout || known.has(keyOf(layout))) continue;
      known.set(keyOf(layout), null);
      const why = rejectByMarks(layout, ball, practice);
      if (why) reject(why);
      else fresh.push({ candidate, layout, key: keyOf(layout) });
    }
    let reported = done;
    const outcomes = await evaluator.evaluate(
      fresh.map(({ layout }) => ({ layout: toLayout(layout, radius), world: 0 })),
      (count) => {
        reported += count;
        onProgress(Math.min(reported, total), total);
      },
    );
    shots += fresh.length;
    fresh.forEach(({ candidate, layout, key }, i) => {
      const why = rejectByOutcome(outcomes[i], setting);
      known.set(key, why ? reject(why) : { outcome: outcomes[i], candidate, layout });
    });
  };

  const coarse = gridCandidates(practice, radius, COARSE, sides);
  const expected = coarse.length + STARTS * MOST_ROUNDS * 3;
  await simulate(coarse, 0, expected);
  const attained = [...known.values()].filter((row) => row !== null).map(({ outcome }) => outcome);
  const targets = attained.length > 0 ? targetsOf(want, attained) : [];
  const scored = (): Found[] =>
    [...known.values()]
      .filter((row) => row !== null)
      .map((row) => ({ ...row, score: score(row.outcome, targets) }))
      .sort((a, b) => b.score - a.score || (keyOf(a.layout) < keyOf(b.layout) ? -1 : 1));

  let climbers = pickDiffering(scored(), STARTS).map(({ candidate }) => candidate);
  for (const step of REFINEMENTS) {
    let moving = climbers.map((_, i) => i);
    for (let round = 0; round < MOST_ROUNDS && moving.length > 0; round++) {
      await simulate(
        moving.flatMap((i) => neighbours(climbers[i], step)),
        shots,
        expected,
      );
      const scoreOf = (candidate: Candidate): number => {
        const layout = layoutOf(candidate, practice, radius);
        const row = layout && known.get(keyOf(layout));
        return row ? score(row.outcome, targets) : Number.NEGATIVE_INFINITY;
      };
      const still: number[] = [];
      for (const i of moving) {
        const best = neighbours(climbers[i], step).reduce(
          (a, b) => (scoreOf(b) > scoreOf(a) ? b : a),
          climbers[i],
        );
        if (best !== climbers[i]) {
          climbers = climbers.with(i, best);
          still.push(i);
        }
      }
      moving = still;
    }
  }
  onProgress(expected, expected);
  const finest = REFINEMENTS[REFINEMENTS.length - 1];
  return {
    found: scored(),
    targets,
    attained,
    candidates: gridCandidates(practice, radius, finest, sides).length,
    shots,
    rejected,
  };
}

/** How far two layouts must lie apart to count as different choices: one of these, or a mix. */
const APART = { pinToPapIn: 0.75, drillingAngleDeg: 25, valAngleDeg: 15 };

/** The first `count` of a list, best first, that differ from one another in more than a step or two. */
export function pickDiffering<T extends { readonly layout: LayoutNumbers }>(
  list: readonly T[],
  count: number,
): T[] {
  const picked: T[] = [];
  for (const row of list) {
    if (picked.length === count) break;
    const differs = picked.every(
      ({ layout }) =>
        Math.hypot(
          (row.layout.pinToPapIn - layout.pinToPapIn) / APART.pinToPapIn,
          (row.layout.drillingAngleDeg - layout.drillingAngleDeg) / APART.drillingAngleDeg,
          (row.layout.valAngleDeg - layout.valAngleDeg) / APART.valAngleDeg,
        ) >= 1,
    );
    if (differs) picked.push(row);
  }
  return picked;
}
