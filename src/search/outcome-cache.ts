import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { Evaluator } from '../simulate/evaluator.js';
import type { Setting } from '../simulate/setting.js';
import type { ShotProblem } from '../simulate/shot-problem.js';
import type { Outcome } from '../simulate/simulator.js';
import { keyOf } from './candidates/candidates.js';
import type { NominalShot } from './candidates/nominal-shots.js';
import type { Target } from './scoring/target.js';
import { type ScoredOutcomes, scoredOutcomes, shiftTargets } from './scoring/world-statistics.js';
import type { Voice } from './voices/voice.js';
import { type WorldShots, worldShots } from './world-shots.js';

/** Rolls layouts in plausible worlds by physics, each in each world at most once, and keeps the outcomes. */
export interface OutcomeCache {
  /** All shots, read and scored by a voice. To be read only while nothing is being rolled. */
  by(voice: Voice): ScoredCache;
  /** Only the shots asked for here, read and scored by a voice: shots that others ask for do not appear. */
  alone(voice: Voice): ScoredCache;
  /** The usual middle layout, whose luck moves the targets. */
  readonly middle: NominalShot;
  readonly shots: () => number;
}

/** Layouts rolled in worlds, as one voice reads them. */
export interface ScoredCache {
  readonly roll: WorldShots['roll'];
  /** How a layout did in the worlds it has met. */
  get(layout: LayoutNumbers): ScoredOutcomes | undefined;
  readonly known: () => readonly { readonly layout: LayoutNumbers; readonly worlds: ScoredOutcomes }[];
  readonly middle: NominalShot;
  /** Whether the usual middle layout reaches the pins, world by world; it is marked exactly there. */
  readonly middleArrives: readonly boolean[];
  /** What the wishes aim for in each world, shifted by its luck. */
  readonly targets: readonly (readonly Target[])[];
}

/**
 * Prepares to roll layouts in the worlds of a setting; all layouts meet the same worlds in the same order.
 *
 * A wish concerns what layouts can change, so in each world the target is shifted by what luck (a slower shot,
 * a drier lane) does to any ball: by what it does to the usual middle layout, marked exactly, with the most
 * typical core. What remains is how a layout responds to errors of marking, to other cores, and to that luck.
 *
 * In all worlds a layout is played on the line of its nominal shot, so that luck can make it miss.
 */
export async function cacheOutcomes({
  problem,
  evaluator,
}: Pick<Setting, 'problem' | 'evaluator'>): Promise<OutcomeCache> {
  const { radius } = problem.ball.published;
  const { middle, luck } = await rollUsual(problem, evaluator);
  const rolled = worldShots(evaluator, radius, luck.length);
  const shared = { middle, middleArrives: luck.map(({ shot }) => shot === 'pins') };
  return {
    by(voice) {
      const { scored, targets } = readBy(voice, rolled, luck, middle.outcome);
      return {
        ...shared,
        targets,
        roll: rolled.roll,
        get: (layout) => scored(layout),
        known: () => rolled.layouts().map((layout) => ({ layout, worlds: scored(layout)! })),
      };
    },
    alone(voice) {
      const { scored, targets } = readBy(voice, rolled, luck, middle.outcome);
      const asked = new Map<string, { readonly layout: LayoutNumbers; readonly worlds: number }>();
      return {
        ...shared,
        targets,
        async roll(shots, worlds, onDone) {
          await rolled.roll(shots, worlds, onDone);
          for (const { layout } of shots) {
            const met = asked.get(keyOf(layout))?.worlds ?? 0;
            asked.set(keyOf(layout), { layout, worlds: Math.max(met, worlds) });
          }
        },
        get(layout) {
          const own = asked.get(keyOf(layout));
          return own && scored(layout, own.worlds);
        },
        known: () =>
          [...asked.values()].map(({ layout, worlds }) => ({ layout, worlds: scored(layout, worlds)! })),
      };
    },
    middle,
    shots: () => luck.length + rolled.count(),
  };
}

/** Rolls the usual middle layout in the nominal world and, on the same line, with the luck of every other. */
async function rollUsual(
  { ball, worlds, luck }: ShotProblem,
  evaluator: Evaluator,
): Promise<{ readonly middle: NominalShot; readonly luck: readonly Outcome[] }> {
  const layout = toLayout(MIDDLE_LAYOUT, ball.published.radius);
  const [outcome] = await evaluator.evaluate([{ layout, world: 0 }]);
  const { launch } = outcome;
  const trials = luck.map((_, k) => ({ layout, world: worlds.length + k, launch }));
  return { middle: { layout: MIDDLE_LAYOUT, outcome }, luck: await evaluator.evaluate(trials) };
}

/**
 * Shots in worlds as a voice reads them, scored against its targets. Each layout is scored once for each number of worlds.
 *
 * @param luck   what the usual middle layout does in each world
 * @param usual  what it does in the nominal one
 */
function readBy(
  voice: Voice,
  rolled: WorldShots,
  luck: readonly Outcome[],
  usual: Outcome,
): {
  readonly targets: ScoredCache['targets'];
  /** Scores of a layout in the worlds it has met, or in the first of them. */
  scored(layout: LayoutNumbers, worlds?: number): ScoredOutcomes | undefined;
} {
  const targets = luck.map((here, world) => shiftTargets(voice.targetsIn(world), here, usual));
  const remembered = new Map<string, ScoredOutcomes>();
  return {
    targets,
    scored(layout, worlds) {
      const met = rolled.outcomesOf(layout)?.slice(0, worlds);
      if (!met) return undefined;
      const name = `${keyOf(layout)} ${met.length}`;
      const earlier = remembered.get(name);
      if (earlier) return earlier;
      const effects = voice.effectsOf(layout);
      const outcomes = met.map((outcome, world) => voice.outcome(effects, world, outcome));
      const fresh = scoredOutcomes(outcomes, targets);
      remembered.set(name, fresh);
      return fresh;
    },
  };
}
