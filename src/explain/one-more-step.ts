import { meanSimple } from 'simple-statistics';
import { fromKeys } from '../base/from-keys.js';
import { toLayout } from '../prepare/to-layout.js';
import type { StepEffect } from '../records/answers/answer.js';
import type { Step } from '../records/answers/statements/changes.js';
import { SHARED_IDS } from '../records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { isDrilledByTrade } from '../search/candidates/candidates.js';
import { rejectByMarks, rejectByOutcome } from '../search/candidates/constraints.js';
import type { NominalShot } from '../search/candidates/nominal-shots.js';
import type { ScoredCache } from '../search/outcome-cache.js';
import type { ScoredOutcomes } from '../search/scoring/world-statistics.js';
import type { LayoutOutcomes } from '../search/simulate-layouts.js';
import { reader } from '../simulate/readings.js';
import type { Setting } from '../simulate/setting.js';

interface OneStep {
  readonly change: Step;
  readonly number: keyof LayoutNumbers;
  readonly by: number;
}

/** Steps in each number: a few times the smallest difference that a tape or a protractor can mark. */
const STEPS: readonly OneStep[] = [
  ...[-10, 10].map(
    (byDeg): OneStep => ({
      change: { code: 'drilling-angle-by', params: { byDeg } },
      number: 'drillingAngleDeg',
      by: byDeg,
    }),
  ),
  ...[-0.25, 0.25].map(
    (byIn): OneStep => ({
      change: { code: 'pin-to-pap-by', params: { byIn } },
      number: 'pinToPapIn',
      by: byIn,
    }),
  ),
  ...[-10, 10].map(
    (byDeg): OneStep => ({
      change: { code: 'val-angle-by', params: { byDeg } },
      number: 'valAngleDeg',
      by: byDeg,
    }),
  ),
];

interface Tried extends NominalShot {
  readonly change: Step;
}

/**
 * What one more step in each number of a layout would change: the mean change over the first worlds of the budget, each step paired with
 * the layout itself and played on the line of its own nominal shot. Only steps to layouts that the trade drills and that the search
 * would allow; a step is left out if there is no world in which both it and the layout reach the pins.
 */
export async function oneMoreStep(
  { layout, worlds }: LayoutOutcomes,
  cache: ScoredCache,
  setting: Setting,
): Promise<readonly StepEffect[]> {
  const { stepWorlds } = setting.budget;
  const tried = await drillableSteps(layout, setting);
  await cache.roll(tried, stepWorlds);
  return tried.flatMap((step) => {
    const after = cache.get(step.layout);
    return after ? meanChange(step.change, worlds, after, stepWorlds) : [];
  });
}

/** The steps from a layout that may be drilled, with their nominal shots. */
async function drillableSteps(layout: LayoutNumbers, setting: Setting): Promise<readonly Tried[]> {
  const { ball, practice, evaluator } = setting;
  const { radius } = ball.published;
  const steps = STEPS.filter(({ number }) => ball.marker !== null || number !== 'drillingAngleDeg')
    .map(({ change, number, by }) => ({ change, layout: { ...layout, [number]: layout[number] + by } }))
    .filter((step) => isDrilledByTrade(step.layout, practice))
    .filter((step) => rejectByMarks(step.layout, ball, practice) === null);
  const outcomes = await evaluator.evaluate(
    steps.map((step) => ({ layout: toLayout(step.layout, radius), world: 0 })),
  );
  return steps
    .map((step, i) => ({ ...step, outcome: outcomes[i] }))
    .filter(({ outcome }) => rejectByOutcome(outcome, setting) === null);
}

function meanChange(
  change: Step,
  own: ScoredOutcomes,
  after: ScoredOutcomes,
  worlds: number,
): readonly StepEffect[] {
  const scores = after.scores.slice(0, worlds).flatMap((score, k) => {
    const before = own.scores[k];
    return score === null || before === null ? [] : [score - before];
  });
  const played = after.outcomes
    .slice(0, worlds)
    .map((outcome, k) => [own.outcomes[k], outcome] as const)
    .filter((pair) => pair.every(({ shot }) => shot === 'pins'));
  if (played.length === 0) return [];
  return [
    {
      change,
      score: meanSimple(scores),
      ...fromKeys(SHARED_IDS, (id) => meanSimple(played.map(([a, b]) => reader(id)(b) - reader(id)(a)))),
    },
  ];
}
