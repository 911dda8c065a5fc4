import type { SharesAnswer, StepEffect } from '../records/answer.js';
import type { LayoutNumbers } from '../records/layout-text.js';
import { INCH, to } from '../units.js';
import { READINGS } from './readings.js';
import { score } from './score.js';
import type { Setting } from './setting.js';
import { mixtures, shapleyShares } from './shapley.js';
import type { Outcome } from './simulator.js';
import type { Target } from './target.js';
import { toLayout } from './to-layout.js';

export interface Explained {
  readonly shares: SharesAnswer;
  readonly steps: StepEffect[];
  readonly centre: CentreEffect;
}

/** What a layout does against the reference, as it is and with the centre of mass of both at the ball's centre. */
export interface CentreEffect {
  readonly asDrilled: CentreReadings;
  readonly balanced: CentreReadings;
}

/** Differences of reaction numbers, in the units people read. */
export type CentreReadings = Readonly<Record<'hookStartFt' | 'totalHookBoards', number>>;

/** Steps a person can make in each number; what each changes is simulated. */
const STEPS: readonly { change: string; by: Partial<LayoutNumbers> }[] = [
  { change: 'drilling angle -10°', by: { drillingAngleDeg: -10 } },
  { change: 'drilling angle +10°', by: { drillingAngleDeg: 10 } },
  { change: 'pin-to-PAP -1/4 in', by: { pinToPapIn: -0.25 } },
  { change: 'pin-to-PAP +1/4 in', by: { pinToPapIn: 0.25 } },
  { change: 'VAL angle -10°', by: { valAngleDeg: -10 } },
  { change: 'VAL angle +10°', by: { valAngleDeg: 10 } },
];

const stepped = (layout: LayoutNumbers, by: Partial<LayoutNumbers>): LayoutNumbers => ({
  drillingAngleDeg: Math.max(0, layout.drillingAngleDeg + (by.drillingAngleDeg ?? 0)),
  pinToPapIn: Math.max(0, layout.pinToPapIn + (by.pinToPapIn ?? 0)),
  valAngleDeg: Math.max(0, layout.valAngleDeg + (by.valAngleDeg ?? 0)),
});

/**
 * For each layout, exact shares of its three numbers against a reference (eight shots), what one more step in each number would
 * change (six), and what of the difference is left with the centre of mass at the ball's centre (two); all in the nominal
 * world.
 */
export async function explain(
  layouts: readonly LayoutNumbers[],
  reference: LayoutNumbers,
  targets: readonly Target[],
  { problem, evaluator }: Setting,
): Promise<readonly Explained[]> {
  const { radius } = problem.ball.published;
  const perLayout = layouts.map((layout) => [
    ...mixtures(reference, layout),
    ...STEPS.map(({ by }) => stepped(layout, by)),
  ]);
  const [outcomes, [balancedReference, ...balanced]] = await Promise.all([
    evaluator.evaluate(perLayout.flat().map((layout) => ({ layout: toLayout(layout, radius), world: 0 }))),
    evaluator.evaluate(
      [reference, ...layouts].map((layout) => ({
        layout: toLayout(layout, radius),
        world: 'balanced' as const,
      })),
    ),
  ]);
  const size = 8 + STEPS.length;
  return layouts.map((_, i) => {
    const own = outcomes.slice(i * size, (i + 1) * size);
    return {
      shares: sharesOf(own.slice(0, 8), targets),
      steps: stepsOf(own[7], own.slice(8), targets),
      centre: { asDrilled: apart(own[7], own[0]), balanced: apart(balanced[i], balancedReference) },
    };
  });
}

const apart = (a: Outcome, b: Outcome): CentreReadings => ({
  hookStartFt: READINGS.hookStartFt(a) - READINGS.hookStartFt(b),
  totalHookBoards: READINGS.totalHookBoards(a) - READINGS.totalHookBoards(b),
});

function sharesOf(mixed: readonly Outcome[], targets: readonly Target[]): SharesAnswer {
  const share = (reading: (o: Outcome) => number): SharesAnswer['score'] => {
    const values = mixed.map(reading);
    const [drillingAngle, pinToPap, valAngle] = shapleyShares(values);
    return { total: values[7] - values[0], drillingAngle, pinToPap, valAngle };
  };
  return {
    score: share((o) => score(o, targets)),
    hookStartFt: share(READINGS.hookStartFt),
    hookSharpnessDegPerFt: share(READINGS.hookSharpnessDegPerFt),
    totalHookBoards: share(READINGS.totalHookBoards),
    flareIn: share(READINGS.flareIn),
    differentialIn: share((o) => to(o.inertia.differential, INCH)),
    intermediateDifferentialIn: share((o) => to(o.inertia.intermediateDifferential, INCH)),
  };
}

const stepsOf = (own: Outcome, after: readonly Outcome[], targets: readonly Target[]): StepEffect[] =>
  STEPS.map(({ change }, i) => ({
    change,
    score: score(after[i], targets) - score(own, targets),
    hookStartFt: READINGS.hookStartFt(after[i]) - READINGS.hookStartFt(own),
    hookSharpnessDegPerFt: READINGS.hookSharpnessDegPerFt(after[i]) - READINGS.hookSharpnessDegPerFt(own),
    totalHookBoards: READINGS.totalHookBoards(after[i]) - READINGS.totalHookBoards(own),
    flareIn: READINGS.flareIn(after[i]) - READINGS.flareIn(own),
  }));
