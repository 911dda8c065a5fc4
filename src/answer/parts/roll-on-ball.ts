import { counted } from '../../base/counted.js';
import { MIDDLE_LAYOUT } from '../../prepare/middle-layout.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { markableOf } from '../../search/candidates/constraints.js';
import { drilledGrid } from '../../search/candidates/drilled-grid.js';
import { type NominalShot, nominalShots } from '../../search/candidates/nominal-shots.js';
import { type LayoutQuantities, layoutQuantities } from '../../search/voices/layout-quantities.js';
import type { Grounds, Setting } from '../../simulate/setting.js';
import type { Outcome } from '../../simulate/simulator.js';

/** Layouts that were rolled on one ball. */
export interface RolledOnBall {
  readonly grounds: Grounds;
  readonly entrants: readonly (NominalShot & { readonly outcomes: readonly Outcome[] })[];
  /** The usual middle layout, and what the luck of each world does to it. */
  readonly usual: Outcome;
  readonly luck: readonly Outcome[];
  /** Allowed layouts of an even grid; none where there is no wish. */
  readonly attained: readonly NominalShot[];
  readonly quantitiesOf: (layout: LayoutNumbers) => LayoutQuantities;
}

/**
 * Rolls layouts of one ball in the nominal world, each on its own line, and on that line in all worlds.
 *
 * @param hasWish  whether a grid over all layouts is rolled, too
 */
export async function rollOnBall(
  layouts: readonly LayoutNumbers[],
  setting: Setting,
  hasWish: boolean,
): Promise<RolledOnBall> {
  const { evaluator, regression: _, ...grounds } = setting;
  const { ball, problem, budget, progress } = setting;
  const { radius } = ball.published;
  const count = problem.luck.length;
  const all = [MIDDLE_LAYOUT, ...layouts].map((layout) => toLayout(layout, radius));

  const grid = nominalShots(setting);
  const coarse = hasWish ? drilledGrid(budget.grid.coarse, setting) : [];
  if (hasWish) await grid.roll(coarse, counted(progress('layouts'), coarse.length));

  const [usual, ...nominal] = await evaluator.evaluate(all.map((layout) => ({ layout, world: 0 })));
  const inWorlds = await evaluator.evaluate(
    [usual, ...nominal].flatMap(({ launch }, i) =>
      Array.from({ length: count }, (_world, k) => ({
        layout: all[i],
        // the usual one is marked exactly and has the most typical core: luck alone moves it
        world: i === 0 ? problem.worlds.length + k : 1 + k,
        launch,
      })),
    ),
    counted(progress('worlds'), all.length * count),
  );
  const worldsOf = (i: number): readonly Outcome[] => inWorlds.slice(i * count, (i + 1) * count);
  const markable = markableOf(drilledGrid(budget.grid.finest, setting), setting);
  return {
    grounds,
    entrants: layouts.map((layout, i) => ({ layout, outcome: nominal[i], outcomes: worldsOf(i + 1) })),
    usual,
    luck: worldsOf(0),
    attained: grid.allowed(),
    quantitiesOf: layoutQuantities(problem, markable),
  };
}
