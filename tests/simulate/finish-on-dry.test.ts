import { describe, expect, test } from 'vitest';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { findLine } from '../../src/simulate/line.js';
import { reactionAnswer } from '../../src/simulate/reaction-answer.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import { simulator } from '../../src/simulate/simulator.js';
import { NOMINAL_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';
import { NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';

const { bowlers, balls, lanes } = demoShelf();
const byId = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;

const bowler = byId(bowlers, 'average-right');
const plain = byId(balls, 'plain-medium');
const ready = ballProblem(plain, bowler, 'moment');
const problemAt = (surfaceGrit: number) =>
  unaimedProblem(byId(lanes, 'house-easy'), bowler, { ...plain, surfaceGrit }, ready);
const layout = toLayout(MIDDLE_LAYOUT, ready.published.radius);
const { launch } = findLine(problemAt(2000), layout);

/** What 4000 grit instead of 500 changes on one line, for a share of the finish that counts on dry boards. */
function smootherBy(finishOnDry: number) {
  const world = { ...NO_DEVIATIONS, surface: { ...NOMINAL_SURFACE, finishOnDry } };
  const [rough, smooth] = [500, 4000].map((grit) =>
    reactionAnswer(simulator(problemAt(grit)).outcome(layout, world, launch)),
  );
  return {
    hookStartFt: smooth!.hookStartFt - rough!.hookStartFt,
    sharpnessDegPerFt: smooth!.sharpnessDegPerFt - rough!.sharpnessDegPerFt,
    totalHookBoards: smooth!.totalHookBoards - rough!.totalHookBoards,
  };
}

describe('a smoother cover, average bowler on an easy lane', () => {
  test('hooks later and less, whatever counts on dry boards', () => {
    for (const share of [0, 0.3, 0.7, 1]) {
      expect(smootherBy(share).hookStartFt).toBeGreaterThan(1);
      expect(smootherBy(share).totalHookBoards).toBeLessThan(-1.5);
    }
  });

  // one standard deviation of this bowler's shots is 0.03 deg/ft
  test('is as sharp where a finish counts on oil alone, and smoother by more than shots vary only where it counts as much on dry boards', () => {
    expect(Math.abs(smootherBy(0).sharpnessDegPerFt)).toBeLessThan(0.005);
    expect(smootherBy(0.7).sharpnessDegPerFt).toBeGreaterThan(-0.06);
    expect(smootherBy(1).sharpnessDegPerFt).toBeLessThan(-0.06);
  });
});
