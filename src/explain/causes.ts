import { fromKeys } from '../base/from-keys.js';
import { OUNCE, to } from '../base/units.js';
import type { Layout } from '../layout/layout.js';
import { toLayout } from '../prepare/to-layout.js';
import type { CausesAnswer } from '../records/answers/answer.js';
import { USUAL_GRIT } from '../records/schemas/ball.js';
import { SHARED_IDS } from '../records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { score } from '../search/scoring/score.js';
import type { Target } from '../search/scoring/target.js';
import { reader } from '../simulate/readings.js';
import type { Setting } from '../simulate/setting.js';
import type { Outcome } from '../simulate/simulator.js';
import type { MixedBall } from '../simulate/unreal/mixed-ball.js';
import { CENTRE, INERTIA, NO_OIL, splitCauses } from './split-causes.js';

/**
 * For each layout, which property of the drilled ball makes its shot differ from a reference's: its centre of mass, its flare, or its
 * inertia itself. Virtual balls with the centre of mass of one layout and the inertia of the
 * other, with and without oil on their rings, are rolled in the nominal world, each on its own line.
 *
 * @returns null for a layout where these balls cannot be compared: one does not reach the pins, or needs another laydown than
 *   the others to reach the pocket
 */
export async function causes(
  layouts: readonly LayoutNumbers[],
  reference: LayoutNumbers,
  targets: readonly Target[],
  { problem, evaluator }: Pick<Setting, 'problem' | 'evaluator'>,
): Promise<readonly (CausesAnswer | null)[]> {
  const { radius } = problem.ball.published;
  const from = toLayout(reference, radius);
  const perLayout = layouts.map((layout) => {
    const own = toLayout(layout, radius);
    return {
      split: mixedBalls(from, own),
      finished: problem.grit === USUAL_GRIT ? [] : [from, own].map(atUsualFinish),
      turned:
        problem.ball.marker === null ? [] : turnedBalls({ ...own, drillingAngle: from.drillingAngle }, own),
    };
  });
  const asked = perLayout.flatMap(({ split, finished, turned }) => [...split, ...finished, ...turned]);
  const outcomes = [...(await evaluator.evaluate(asked.map((mixed) => ({ mixed }))))];
  return perLayout.map(({ split, finished, turned }) => {
    const rolled = {
      split: outcomes.splice(0, split.length),
      finished: outcomes.splice(0, finished.length),
      turned: outcomes.splice(0, turned.length),
    };
    // with oil the laydown may differ from that without; only balls with the same laydown are compared
    const isSplit = [rolled.split.slice(0, NO_OIL), rolled.split.slice(NO_OIL)].every(areComparable);
    return isSplit ? causesOf(rolled, targets, problem.grit) : null;
  });
}

/** The eight balls between two layouts, indexed as `splitCauses` wants them. */
const mixedBalls = (from: Layout, own: Layout): readonly MixedBall[] =>
  Array.from({ length: 8 }, (_, mask) => ({
    centreOf: mask & CENTRE ? own : from,
    inertiaOf: mask & INERTIA ? own : from,
    carriesOil: (mask & NO_OIL) === 0,
  }));

const atUsualFinish = (layout: Layout): MixedBall => ({
  centreOf: layout,
  inertiaOf: layout,
  carriesOil: true,
  grit: USUAL_GRIT,
});

/** A layout with the reference's drilling angle; then with the inertia of its own; then with the centre of mass of its own too. */
const turnedBalls = (before: Layout, own: Layout): readonly MixedBall[] =>
  [
    [before, before],
    [before, own],
    [own, own],
  ].map(([centreOf, inertiaOf]) => ({ centreOf, inertiaOf, carriesOil: true }));

/** Whether there are shots and all reach the pins from one laydown, so that they differ only by the ball. */
const areComparable = (outcomes: readonly Outcome[]): boolean =>
  outcomes.length > 0 &&
  outcomes.every(({ shot, launch }) => shot === 'pins' && launch.x === outcomes[0].launch.x);

interface Rolled {
  readonly split: readonly Outcome[];
  readonly finished: readonly Outcome[];
  readonly turned: readonly Outcome[];
}

function causesOf(
  { split, finished, turned }: Rolled,
  targets: readonly Target[],
  grit: number,
): CausesAnswer {
  const scored = (outcome: Outcome): number => score(outcome, targets);
  return {
    score: splitCauses(split.map(scored)),
    ...fromKeys(SHARED_IDS, (id) => splitCauses(split.map(reader(id)))),
    atUsualFinish: areComparable(finished)
      ? { grit, usualGrit: USUAL_GRIT, ...fromKeys(SHARED_IDS, (id) => apart(finished, reader(id))) }
      : null,
    byDrillingAngle: areComparable(turned) ? byDrillingAngle(turned, scored) : null,
  };
}

const apart = ([a, b]: readonly Outcome[], read: (outcome: Outcome) => number): number => read(b) - read(a);

function byDrillingAngle(
  [before, held, own]: readonly Outcome[],
  scored: (outcome: Outcome) => number,
): CausesAnswer['byDrillingAngle'] {
  return {
    score: scored(own) - scored(before),
    withCentreHeld: scored(held) - scored(before),
    movesOz: fromKeys(['top', 'side', 'finger'] as const, (id) =>
      to(own.statics[id] - before.statics[id], OUNCE),
    ),
  };
}
