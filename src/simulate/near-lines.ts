import type { Layout } from '../layout/layout.js';
import type { Launch } from '../motion/shot/release.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import type { AnyTrial, Evaluator, Trial } from './evaluator.js';
import { fittedNumber, layoutBasis, layoutFit } from './layout-basis.js';
import type { ShotProblem } from './shot-problem.js';
import type { Outcome } from './simulator.js';

/** Number of layouts whose lines are fitted to predict those of all others: a little more than twice the size of the basis. */
const FIRST = 60;

/** How many of these must have a line from the problem's laydown board at least. */
const ENOUGH = 45;

/**
 * Starts the search for a layout's own line near that line, which saves about half of its shots.
 *
 * As soon as more than `FIRST` layouts are to be rolled on their own lines, that many of them, spread over all, are rolled from the
 * problem's line, and the launch angles found are fitted over layouts. All others then start from the fit, now and later. Those
 * in the fit, and the middle layout, always start from the problem's line, so that a layout plays the same line every time.
 */
export function withNearLines(evaluator: Evaluator, problem: ShotProblem): Evaluator {
  let near: ((trials: readonly AnyTrial[]) => readonly AnyTrial[]) | null = null;
  return {
    async evaluate(trials, onDone) {
      const places = [...trials.keys()].filter((i) => isOnOwnLine(trials[i]));
      if (near || places.length <= FIRST) return evaluator.evaluate(near ? near(trials) : trials, onDone);
      const first = Array.from({ length: FIRST }, (_, k) => places[Math.floor((k * places.length) / FIRST)]);
      const known = await evaluator.evaluate(
        first.map((i) => trials[i]),
        onDone,
      );
      near = nearLines(
        first.map((i) => (trials[i] as Trial).layout),
        known,
        problem,
      );
      const isFirst = new Set(first);
      const rest = [...trials.keys()].filter((i) => !isFirst.has(i));
      const others = await evaluator.evaluate(near(rest.map((i) => trials[i])), onDone);
      const outcomes: Outcome[] = [];
      for (const [k, i] of first.entries()) outcomes[i] = known[k];
      for (const [k, i] of rest.entries()) outcomes[i] = others[k];
      return outcomes;
    },
  };
}

const isOnOwnLine = (trial: AnyTrial): trial is Trial => 'layout' in trial && trial.launch === undefined;

/** The layout whose line is a good first guess for a trial: for a virtual ball, the layout whose inertia it has. */
function layoutNear(trial: AnyTrial): Layout | null {
  if ('mixed' in trial) return trial.mixed.inertiaOf;
  return isOnOwnLine(trial) ? trial.layout : null;
}

/** Gives trials on their own lines a near line each, fitted to the lines of some layouts. */
function nearLines(
  layouts: readonly Layout[],
  outcomes: readonly Outcome[],
  { ball: { pap_B, published }, launch: { x } }: ShotProblem,
): (trials: readonly AnyTrial[]) => readonly AnyTrial[] {
  const known = layouts
    .map((layout, i) => ({ layout, outcome: outcomes[i] }))
    .filter(({ outcome: { launch, reachesPocket } }) => launch.x === x && reachesPocket);
  if (known.length < ENOUGH) return (trials) => trials;
  const fit = layoutFit(
    layoutBasis(
      known.map(({ layout }) => layout),
      pap_B,
    ),
  );
  const angleOf = fittedNumber(
    known.map(({ outcome }) => outcome.launch.angle),
    fit,
  );
  const middle = toLayout(MIDDLE_LAYOUT, published.radius);
  const fromUsual = new Set([middle, ...layouts].map(keyOf));
  const near = (layout: Layout): Launch => {
    const [angle] = angleOf(layoutBasis([layout], pap_B));
    return { x, angle };
  };
  return (trials) =>
    trials.map((trial) => {
      const layout = layoutNear(trial);
      return layout && !fromUsual.has(keyOf(layout)) ? { ...trial, near: near(layout) } : trial;
    });
}

const keyOf = ({ drillingAngle, pinToPap, valAngle }: Layout): string =>
  `${drillingAngle} ${pinToPap} ${valAngle}`;
