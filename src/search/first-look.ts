import { LANE_LENGTH } from '../base/constants.js';
import { clamp } from '../math/clamp.js';
import { tan } from '../math/sin-cos.js';
import { boardToX } from '../motion/lane/boards.js';
import type { Launch } from '../motion/shot/release.js';
import { toLayout } from '../prepare/to-layout.js';
import type { Want } from '../records/schemas/want.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { ModelCard } from '../regression/card.js';
import {
  BALL_FEATURES,
  FEATURES,
  releaseFrame,
  WORLD_FEATURES,
  writeBallFeatures,
  writeJointFeatures,
  writeWorldFeatures,
} from '../regression/features.js';
import { isInRange } from '../regression/in-range.js';
import type { ReactionModel } from '../regression/reaction-model.js';
import { TARGETS, type TargetId } from '../regression/targets.js';
import type { Tensor } from '../regression/tensor.js';
import { POCKET_BOARD } from '../simulate/pocket.js';
import type { Reached } from '../simulate/readings.js';
import type { Setting } from '../simulate/setting.js';
import { simulator } from '../simulate/simulator.js';
import { markableOf } from './candidates/constraints.js';
import { drilledGrid } from './candidates/drilled-grid.js';
import { score } from './scoring/score.js';
import { targetsOf } from './scoring/target.js';

/** What the regression would choose by itself. SI. */
export interface FirstLook {
  readonly layout: LayoutNumbers;
  readonly hookStart: number;
}

/**
 * The best layout of the coarse grid by the regression as fitted, in the nominal world, each layout on the line that leads to the pocket
 * according to the regression. No shot is rolled for it, so it can be shown before the search begins.
 *
 * @returns null where there is no wish, no layout to drill, no line to the pocket, or where the problem is unlike those that the
 *   regression was fitted on
 */
export async function firstLook(
  want: Want,
  setting: Setting,
  { model, card }: { readonly model: ReactionModel; readonly card: ModelCard },
): Promise<FirstLook | null> {
  const { budget, line } = setting;
  const layouts = markableOf(drilledGrid(budget.grid.coarse, setting), setting);
  if (layouts.length === 0 || !line.reachesPocket) return null;
  const features = featuresOnLines(layouts, setting);
  if (!isInRange(features, card)) return null;
  const answers = await model.answer(features);
  const reached = layouts.map((_, i) => reachedBy(answers, i * TURNS.length, line.launch));
  const targets = targetsOf(want, reached);
  if (targets.length === 0) return null;
  const scores = reached.map((each) => score(each, targets));
  const best = scores.reduce((leader, each, i) => (each > scores[leader] ? i : leader), 0);
  return { layout: layouts[best], hookStart: reached[best].reaction.hookStart };
}

/** Directions asked about, relative to that of the usual middle layout's line, rad: they cover some 16 boards at the pins. */
const TURNS = [-0.012, 0, 0.012];

/** Features of each layout in each direction, row by row; those that do not depend on the ball are computed once. */
function featuresOnLines(layouts: readonly LayoutNumbers[], { ball, problem, line }: Setting): Tensor {
  const values = new Float32Array(FEATURES.length * layouts.length * TURNS.length);
  const { radius } = ball.published;
  const engine = simulator(problem);
  const [nominal] = problem.worlds;
  const { release, surface, freshSurface } = engine.inputs(toLayout(layouts[0], radius), nominal);
  const R_FB = releaseFrame(release.pap_B);
  const worlds = TURNS.map((turn) => {
    const world = new Float32Array(WORLD_FEATURES.length);
    const launch = { ...line.launch, angle: line.launch.angle + turn };
    writeWorldFeatures(world, 0, radius, release, launch, surface, freshSurface);
    return world;
  });
  let at = 0;
  for (const layout of layouts) {
    const { body } = engine.inputs(toLayout(layout, radius), nominal);
    for (const world of worlds) {
      const lane = at + BALL_FEATURES.length;
      writeBallFeatures(values, at, body, R_FB);
      values.set(world, lane);
      writeJointFeatures(values, lane + world.length, at, lane);
      at += FEATURES.length;
    }
  }
  return { dims: [layouts.length * TURNS.length, FEATURES.length], values };
}

/** What a layout does in the direction that leads to the pocket, interpolated, or in the tried direction that comes nearest. */
function reachedBy(answers: Float32Array, row: number, { x, angle }: Launch): Reached {
  const answer = (id: TargetId, turn: number): number =>
    answers[TARGETS.length * (row + turn) + TARGETS.findIndex((target) => target.id === id)];
  const beyondPocket = TURNS.map(
    (by, turn) => x + LANE_LENGTH * tan(angle + by) - answer('totalHookBoards', turn) - POCKET_X,
  );
  const [first, middle, last] = beyondPocket;
  const isMissed = first * middle > 0 && middle * last > 0;
  const from = (isMissed ? Math.abs(first) < Math.abs(last) : first * middle <= 0) ? 0 : 1;
  const share = beyondPocket[from] / (beyondPocket[from] - beyondPocket[from + 1]);
  const along = Number.isFinite(share) ? clamp(share, 0, 1) : 0;
  const at = (id: TargetId): number => answer(id, from) + along * (answer(id, from + 1) - answer(id, from));
  return {
    shot: 'pins',
    reaction: {
      hookStart: at('hookStartFt'),
      sharpness: at('sharpnessDegPerFt'),
      totalHook: at('totalHookBoards'),
      entryAngle: at('entryAngleDeg'),
    },
  };
}

const POCKET_X = boardToX(POCKET_BOARD);
