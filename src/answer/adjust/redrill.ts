import { counted } from '../../base/counted.js';
import type { AdjustAnswer } from '../../records/answers/adjust-answer.js';
import type { WishedId } from '../../records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { drilledGrid } from '../../search/candidates/drilled-grid.js';
import { nominalShots } from '../../search/candidates/nominal-shots.js';
import { reader } from '../../simulate/readings.js';
import type { RecommendInputs, Setting } from '../../simulate/setting.js';
import type { ShotScatter } from '../../simulate/shot-scatter.js';
import type { Outcome } from '../../simulate/simulator.js';
import { drilledFacts } from '../parts/drilled-facts.js';
import { layoutAnswer } from '../parts/layout-answer.js';
import { redrilledAnswer } from '../parts/redrilled-answer.js';
import { pluggedBall } from './plugged-ball.js';
import type { RolledBase, RolledRemedy } from './rolled-remedies.js';
import { missOf, type WantedChange, weighRemedy } from './weigh-remedy.js';

/** Layouts that meet all worlds. */
const MOST_ROLLED = 6;

/**
 * Plugs a drilled ball and looks for the layout that then comes nearest to the wish in all worlds; null where there is none.
 *
 * @param layout  as the ball is drilled now
 * @param base    how it rolls so
 */
export async function rollRedrilled(
  inputs: RecommendInputs,
  layout: LayoutNumbers,
  base: RolledBase,
  wanted: WantedChange,
  scatter: ShotScatter,
): Promise<{ readonly rolled: RolledRemedy; readonly answer: AdjustAnswer['redrill'] } | null> {
  const ball = pluggedBall(inputs.ball, layout, inputs.bowler);
  if (!ball) return null;
  const there = await base.roll({ ...inputs, ball }, (setting) =>
    likelyLayouts(setting, base.nominal, wanted, scatter),
  );
  const missing = (outcomes: readonly Outcome[]): number =>
    weighRemedy(outcomes, base.outcomes, wanted, scatter).miss;
  const [best] = there.rows
    .map((row) => ({ ...row, miss: missing(row.outcomes) }))
    .sort((a, b) => a.miss - b.miss);
  if (!best) return null;
  const { ball: drillable, rules } = there.on.grounds;
  const facts = drilledFacts(drillable, rules)(best.layout);
  const redrilled = redrilledAnswer(best.layout, drillable);
  const text = layoutAnswer(best.layout, drillable);
  return {
    rolled: {
      remedy: { code: 'plug-and-redrill', params: { layout: text.text } },
      outcomes: best.outcomes,
      reachesPocket: best.reachesPocket,
    },
    answer: redrilled && {
      layout: text,
      drilled: facts.drilled,
      marks: [...facts.marks],
      legality: facts.legality,
      redrilled,
    },
  };
}

/**
 * The layouts of a plugged ball that come nearest to the wish in the nominal world, of an even grid over those that the trade drills and
 * that the rules allow.
 *
 * @param before  the ball as it is drilled, in the nominal world
 */
async function likelyLayouts(
  setting: Setting,
  before: Outcome,
  wanted: WantedChange,
  scatter: ShotScatter,
): Promise<readonly LayoutNumbers[]> {
  const { ball, rules, budget, progress } = setting;
  const grid = drilledGrid(budget.grid.coarse, setting);
  const shots = nominalShots(setting);
  await shots.roll(grid, counted(progress('layouts'), grid.length));
  const missing = (outcome: Outcome): number =>
    missOf(
      Object.fromEntries(
        (Object.entries(wanted) as [WishedId, number][]).map(([id, change]) => [
          id,
          change - (reader(id)(outcome) - reader(id)(before)),
        ]),
      ),
      scatter,
    );
  const factsOf = drilledFacts(ball, rules);
  const likeliest = shots
    .allowed()
    .map(({ layout, outcome }) => ({ layout, miss: missing(outcome) }))
    .sort((a, b) => a.miss - b.miss);
  const found: LayoutNumbers[] = [];
  for (const { layout } of likeliest) {
    if (found.length === MOST_ROLLED) break;
    if (factsOf(layout).legality.legal) found.push(layout);
  }
  return found;
}
