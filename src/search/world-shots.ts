import { toLayout } from '../prepare/to-layout.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { Evaluator, Trial } from '../simulate/evaluator.js';
import type { Outcome } from '../simulate/simulator.js';
import { keyOf } from './candidates/candidates.js';
import type { NominalShot } from './candidates/nominal-shots.js';

/** Rolls layouts in plausible worlds, each in each world at most once, on the line of its nominal shot. */
export interface WorldShots {
  /** Rolls layouts in those of the first `worlds` worlds that they have not met. @param onDone  called after every few shots */
  roll(shots: readonly NominalShot[], worlds: number, onDone?: (count: number) => void): Promise<void>;
  /** What a layout did, world by world, as far as it has met them; undefined for one that was not rolled. */
  outcomesOf(layout: LayoutNumbers): readonly Outcome[] | undefined;
  /** All layouts rolled, in an order that does not depend on what was rolled first. */
  readonly layouts: () => readonly LayoutNumbers[];
  /** Number of shots rolled. */
  readonly count: () => number;
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
 * Prepares to roll layouts in the worlds after the nominal one; all layouts meet the same worlds in the same order.
 *
 * @param radius  of the ball, m
 * @param most    number of those worlds
 */
export function worldShots(evaluator: Evaluator, radius: number, most: number): WorldShots {
  const rows = new Map<string, Row>();
  let count = 0;

  const rowOf = (layout: LayoutNumbers): Row => {
    const row = rows.get(keyOf(layout)) ?? { layout, outcomes: [], asked: 0, settled: Promise.resolve() };
    rows.set(keyOf(layout), row);
    return row;
  };

  const rollAll = async (
    asked: readonly { readonly row: Row; readonly trial: Trial }[],
    onDone?: (count: number) => void,
  ): Promise<void> => {
    count += asked.length;
    const outcomes = await evaluator.evaluate(
      asked.map(({ trial }) => trial),
      onDone,
    );
    for (const [i, { row, trial }] of asked.entries()) row.outcomes[trial.world - 1] = outcomes[i];
  };

  return {
    async roll(shots, worlds, onDone) {
      const wanted = Math.min(worlds, most);
      const once = new Map(shots.map((shot) => [keyOf(shot.layout), shot]));
      const running = [...once.values()].map(({ layout, outcome }) => {
        const row = rowOf(layout);
        const met = row.asked;
        row.asked = Math.max(met, wanted);
        return { row, met, marked: toLayout(layout, radius), launch: outcome.launch };
      });
      const asked = Array.from({ length: wanted }, (_, world) =>
        running
          .filter(({ met }) => world >= met)
          .map(({ row, marked, launch }) => ({ row, trial: { layout: marked, world: 1 + world, launch } })),
      ).flat();
      // wait also for worlds that another voice is rolling at the moment
      const settled = Promise.all([rollAll(asked, onDone), ...running.map(({ row }) => row.settled)]).then(
        () => undefined,
      );
      for (const { row } of running) row.settled = settled;
      await settled;
    },
    outcomesOf: (layout) => rows.get(keyOf(layout))?.outcomes,
    layouts: () => [...rows.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, { layout }]) => layout),
    count: () => count,
  };
}
