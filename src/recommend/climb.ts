import type { LayoutNumbers } from '../records/layout-text.js';
import { type Candidate, type GridStep, layoutOf, neighbours } from './candidates.js';
import type { NominalShot, NominalShots } from './nominal-shots.js';
import type { Setting } from './setting.js';

/** Steps of the climb, down to what a person can mark. */
const REFINEMENTS: readonly GridStep[] = [
  { arcIn: 0.25, angleDeg: 5 },
  { arcIn: 0.125, angleDeg: 5 },
];

const MOST_ROUNDS = 12;

/** Most shots a climb from so many places is expected to take; for the progress shown. */
export const expectedShots = (starts: number): number => starts * MOST_ROUNDS * 3;

/**
 * Search by physics alone: from each start to its best neighbour until none is better, at marking resolution. Each
 * layout is simulated once.
 */
export async function climb(
  starts: readonly Candidate[],
  rolled: NominalShots,
  scoreOf: (shot: NominalShot) => number,
  { ball, practice }: Setting,
  onDone: (count: number) => void,
): Promise<void> {
  const { radius } = ball.published;
  const layoutAt = (candidate: Candidate): LayoutNumbers | null => layoutOf(candidate, practice, radius);
  const scoreAt = (candidate: Candidate): number => {
    const layout = layoutAt(candidate);
    const shot = layout && rolled.get(layout);
    return shot ? scoreOf(shot) : Number.NEGATIVE_INFINITY;
  };
  let climbers = starts;
  for (const step of REFINEMENTS) {
    let moving = climbers.map((_, i) => i);
    for (let round = 0; round < MOST_ROUNDS && moving.length > 0; round++) {
      const around = moving.flatMap((i) => neighbours(climbers[i], step));
      await rolled.roll(
        around.map(layoutAt).filter((layout) => layout !== null),
        onDone,
      );
      const still: number[] = [];
      for (const i of moving) {
        const best = neighbours(climbers[i], step).reduce(
          (a, b) => (scoreAt(b) > scoreAt(a) ? b : a),
          climbers[i],
        );
        if (best === climbers[i]) continue;
        climbers = climbers.with(i, best);
        still.push(i);
      }
      moving = still;
    }
  }
}
