import { meanSimple } from 'simple-statistics';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { Trial } from '../simulate/evaluator.js';
import type { Setting } from '../simulate/setting.js';
import type { Outcome } from '../simulate/simulator.js';
import { keyOf } from './candidates/candidates.js';
import type { NominalShot } from './candidates/nominal-shots.js';
import { score } from './scoring/score.js';
import type { Target } from './scoring/target.js';
import { type ScoredOutcomes, scoresAtPins, shiftTargets } from './scoring/world-statistics.js';
import type { Voice } from './voices/voice.js';

/** Rolls layouts in plausible worlds by physics, each in each world at most once, and keeps what comes out. */
export interface OutcomeCache {
  /** The same shots, read and scored by a voice. */
  by(voice: Voice): ScoredCache;
  /** The usual middle layout, whose luck moves the targets. */
  readonly middle: NominalShot;
  readonly shots: () => number;
}

/** What is rolled in worlds, as one voice has it. */
export interface ScoredCache {
  /** Rolls layouts in the first `worlds` worlds, as far as they have not met them. @param onDone told of every few */
  roll(shots: readonly NominalShot[], worlds: number, onDone?: (count: number) => void): Promise<void>;
  /** How a layout did in the worlds it has met. */
  get(layout: LayoutNumbers): ScoredOutcomes | undefined;
  readonly known: () => readonly { readonly layout: LayoutNumbers; readonly worlds: ScoredOutcomes }[];
  readonly middle: NominalShot;
  /** What the wishes aim for, world by world, moved along with luck. */
  readonly targets: readonly (readonly Target[])[];
}

/**
 * Makes ready to roll layouts in the worlds of a setting; all meet the same worlds in the same order.
 *
 * A wish is about what layouts can change, so in each world it is moved along with what luck (a slower shot,
 * a drier lane) does to any ball: what it does to the usual middle layout, marked exactly, with the most
 * typical core. What is left to each layout is how it takes errors of marking, other cores and that luck.
 *
 * Each is played on its own line throughout: that of its nominal shot. Luck makes it miss.
 */
export async function cacheOutcomes({
  problem,
  evaluator,
}: Pick<Setting, 'problem' | 'evaluator'>): Promise<OutcomeCache> {
  const { radius } = problem.ball.published;
  const usual = toLayout(MIDDLE_LAYOUT, radius);
  const [atNominal] = await evaluator.evaluate([{ layout: usual, world: 0 }]);
  const luck = await evaluator.evaluate(
    problem.luck.map((_, k) => ({
      layout: usual,
      world: problem.worlds.length + k,
      launch: atNominal.launch,
    })),
  );
  const known = new Map<string, { readonly layout: LayoutNumbers; readonly outcomes: Outcome[] }>();
  const middle: NominalShot = { layout: MIDDLE_LAYOUT, outcome: atNominal };
  let shots = luck.length;

  const roll: ScoredCache['roll'] = async (rows, worlds, onDone) => {
    const once = new Map(rows.map((each) => [keyOf(each.layout), each]));
    const running = [...once.values()].map(({ layout, outcome }) => {
      const row = known.get(keyOf(layout)) ?? { layout, outcomes: [] };
      known.set(keyOf(layout), row);
      return { row, met: row.outcomes.length, marked: toLayout(layout, radius), launch: outcome.launch };
    });
    const asked: { readonly row: { readonly outcomes: Outcome[] }; readonly trial: Trial }[] = [];
    for (let world = 0; world < Math.min(worlds, luck.length); world++)
      for (const { row, met, marked, launch } of running)
        if (world >= met) asked.push({ row, trial: { layout: marked, world: 1 + world, launch } });
    const outcomes = await evaluator.evaluate(
      asked.map(({ trial }) => trial),
      onDone,
    );
    shots += asked.length;
    for (const [i, { row }] of asked.entries()) row.outcomes.push(outcomes[i]);
  };

  return {
    by(voice) {
      const aimed = luck.map((here, world) => shiftTargets(voice.targetsIn(world), here, atNominal));
      const scored = (layout: LayoutNumbers, byPhysics: readonly Outcome[]): ScoredOutcomes => {
        const effects = voice.effectsOf(layout);
        const outcomes = byPhysics.map((outcome, world) => voice.outcome(effects, world, outcome));
        const scores = outcomes.map((outcome, world) =>
          outcome.shot === 'pins' ? score(outcome, aimed[world]) : null,
        );
        const reached = scoresAtPins({ scores });
        const arrives = outcomes.filter(({ shot }) => shot === 'pins').length / outcomes.length;
        return { outcomes, scores, meanScore: meanSimple(reached), arrives };
      };
      return {
        roll,
        get(layout) {
          const row = known.get(keyOf(layout));
          return row && scored(layout, row.outcomes);
        },
        known: () =>
          [...known.values()].map(({ layout, outcomes }) => ({ layout, worlds: scored(layout, outcomes) })),
        middle,
        targets: aimed,
      };
    },
    middle,
    shots: () => shots,
  };
}
