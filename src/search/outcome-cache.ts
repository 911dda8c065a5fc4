import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { Trial } from '../simulate/evaluator.js';
import type { Setting } from '../simulate/setting.js';
import type { Outcome } from '../simulate/simulator.js';
import { keyOf } from './candidates/candidates.js';
import type { NominalShot } from './candidates/nominal-shots.js';
import type { Target } from './scoring/target.js';
import { type ScoredOutcomes, scoredOutcomes, shiftTargets } from './scoring/world-statistics.js';
import type { Voice } from './voices/voice.js';

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
  /** Rolls layouts in those of the first `worlds` worlds that they have not met. @param onDone  called after every few shots */
  roll(shots: readonly NominalShot[], worlds: number, onDone?: (count: number) => void): Promise<void>;
  /** How a layout did in the worlds it has met. */
  get(layout: LayoutNumbers): ScoredOutcomes | undefined;
  readonly known: () => readonly { readonly layout: LayoutNumbers; readonly worlds: ScoredOutcomes }[];
  readonly middle: NominalShot;
  /** Whether the usual middle layout reaches the pins, world by world; it is marked exactly there. */
  readonly middleArrives: readonly boolean[];
  /** What the wishes aim for in each world, shifted by its luck. */
  readonly targets: readonly (readonly Target[])[];
}

/** What a layout did in the worlds it has met. */
interface Row {
  readonly layout: LayoutNumbers;
  readonly outcomes: Outcome[];
  /** Number of worlds that it has met or is being rolled in. */
  asked: number;
  /** Resolves when it has met those. */
  settled: Promise<void>;
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
  const usual = toLayout(MIDDLE_LAYOUT, radius);
  const [atNominal] = await evaluator.evaluate([{ layout: usual, world: 0 }]);
  const luck = await evaluator.evaluate(
    problem.luck.map((_, k) => ({
      layout: usual,
      world: problem.worlds.length + k,
      launch: atNominal.launch,
    })),
  );
  const known = new Map<string, Row>();
  const middleArrives = luck.map(({ shot }) => shot === 'pins');
  const middle: NominalShot = { layout: MIDDLE_LAYOUT, outcome: atNominal };
  let shots = luck.length;

  const roll: ScoredCache['roll'] = async (rows, worlds, onDone) => {
    const once = new Map(rows.map((each) => [keyOf(each.layout), each]));
    const most = Math.min(worlds, luck.length);
    const running = [...once.values()].map(({ layout, outcome }) => {
      const row = known.get(keyOf(layout)) ?? { layout, outcomes: [], asked: 0, settled: Promise.resolve() };
      known.set(keyOf(layout), row);
      const met = row.asked;
      row.asked = Math.max(met, most);
      return { row, met, marked: toLayout(layout, radius), launch: outcome.launch };
    });
    const asked: { readonly row: Row; readonly trial: Trial }[] = [];
    for (let world = 0; world < most; world++)
      for (const { row, met, marked, launch } of running)
        if (world >= met) asked.push({ row, trial: { layout: marked, world: 1 + world, launch } });
    shots += asked.length;
    const rolling = async (): Promise<void> => {
      const outcomes = await evaluator.evaluate(
        asked.map(({ trial }) => trial),
        onDone,
      );
      for (const [i, { row, trial }] of asked.entries()) row.outcomes[trial.world - 1] = outcomes[i];
    };
    // wait for worlds that another voice is rolling at the moment
    const settled = Promise.all([rolling(), ...running.map(({ row }) => row.settled)]).then(() => undefined);
    for (const { row } of running) row.settled = settled;
    await settled;
  };

  const read = (voice: Voice) => {
    const aimed = luck.map((here, world) => shiftTargets(voice.targetsIn(world), here, atNominal));
    const remembered = new Map<string, ScoredOutcomes>();
    const scored = (layout: LayoutNumbers, worlds?: number): ScoredOutcomes | undefined => {
      const row = known.get(keyOf(layout));
      if (!row) return undefined;
      const met = row.outcomes.slice(0, worlds);
      const name = `${keyOf(layout)} ${met.length}`;
      const earlier = remembered.get(name);
      if (earlier) return earlier;
      const effects = voice.effectsOf(layout);
      const outcomes = met.map((outcome, world) => voice.outcome(effects, world, outcome));
      const fresh = scoredOutcomes(outcomes, aimed);
      remembered.set(name, fresh);
      return fresh;
    };
    return { scored, targets: aimed };
  };

  return {
    by(voice) {
      const { scored, targets } = read(voice);
      return {
        roll,
        get: (layout) => scored(layout),
        // sorted, so that the order does not depend on what was rolled first
        known: () =>
          [...known.entries()]
            .sort(([a], [b]) => (a < b ? -1 : 1))
            .map(([, { layout }]) => ({ layout, worlds: scored(layout)! })),
        middle,
        middleArrives,
        targets,
      };
    },
    alone(voice) {
      const { scored, targets } = read(voice);
      const asked = new Map<string, { readonly layout: LayoutNumbers; readonly worlds: number }>();
      return {
        async roll(rows, worlds, onDone) {
          await roll(rows, worlds, onDone);
          for (const { layout } of rows) {
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
        middle,
        middleArrives,
        targets,
      };
    },
    middle,
    shots: () => shots,
  };
}
