import { LANE_LENGTH, LANE_WIDTH } from '../../base/constants.js';
import { oncePer } from '../../base/once-per.js';
import type { Layout } from '../../layout/layout.js';
import { exp } from '../../math/exp.js';
import { tan } from '../../math/sin-cos.js';
import type { ModelCard } from '../../regression/card.js';
import {
  BALL_FEATURES,
  FEATURES,
  releaseFrame,
  WORLD_FEATURES,
  writeBallFeatures,
  writeFeatures,
  writeJointFeatures,
} from '../../regression/features.js';
import type { ReactionModel, Tuning } from '../../regression/reaction-model.js';
import { TARGETS, type TargetId } from '../../regression/targets.js';
import type { Tensor } from '../../regression/tensor.js';
import { tune } from '../../regression/tune.js';
import type { Reached } from '../../simulate/readings.js';
import type { ShotProblem } from '../../simulate/shot-problem.js';
import { type Outcome, type Simulator, scatteredLaunch } from '../../simulate/simulator.js';
import type { Deviations } from '../../simulate/worlds/deviations.js';
import { featureRows } from './feature-rows.js';
import type { LayoutLines } from './layout-lines.js';
import type { WorldFeatures } from './world-features.js';

/** A shot that physics rolled: what the regression is tuned to. */
export interface Known {
  readonly layout: Layout;
  readonly deviations: Deviations;
  readonly outcome: Outcome;
}

/** The fitted regression, prepared for one problem. */
export interface Surrogate {
  /**
   * What each of the layouts does in a world if it stays on the lane, and the chance that it does. They are passed to `tell` one after
   * the other, always in the same object.
   */
  inWorld(
    deviations: Deviations,
    layouts: Int32Array,
    tell: (layout: number, reached: Reached, chance: number) => void,
  ): Promise<void>;
  /** The same for single shots, their features computed in full. */
  answer(shots: readonly Asked[]): Promise<Reached[]>;
}

export interface Asked {
  readonly layout: Layout;
  readonly deviations: Deviations;
  readonly launch: Outcome['launch'];
}

/** Rows answered at a time: few enough to stay in the processor's cache. */
const CHUNK = 1024;

/**
 * Tunes the fitted regression to shots of one problem, and prepares it for many layouts.
 *
 * @param known     shots of physics that reached the pins
 * @param features  their features, row by row
 * @param worlds    features of worlds, without the ball
 * @param lines     the layouts that will be asked about
 */
export async function surrogate(
  model: ReactionModel,
  card: ModelCard,
  problem: ShotProblem,
  engine: Simulator,
  known: readonly Known[],
  features: Tensor,
  worlds: WorldFeatures,
  lines: LayoutLines,
): Promise<Surrogate> {
  const { pap_B, published } = problem.ball;
  const tuning = await tuningTo(known, features, model, card);
  const rowsIn = oncePer(featureRows(engine, lines, problem.launch.x, worlds, pap_B, published));
  const reader = reachedReader();
  const { si, heldOut } = card.outputs[BREAKPOINT];
  const chance = (answers: Float32Array, row: number): number =>
    chanceWithin(problem.launch.x + answers[TARGETS.length * row + BREAKPOINT], si * heldOut.rmse);

  return {
    async inWorld(deviations, asked, tell) {
      const write = rowsIn(deviations);
      const rows = new Float32Array(FEATURES.length * Math.min(CHUNK, asked.length));
      for (let from = 0; from < asked.length; from += CHUNK) {
        const part = asked.subarray(from, from + CHUNK);
        write(rows, part);
        const values = rows.subarray(0, FEATURES.length * part.length);
        const answers = await model.answer({ dims: [part.length, FEATURES.length], values }, tuning);
        part.forEach((layout, i) => {
          const reached = reader(answers, i, problem.launch.x, lines.angles[layout] + deviations.launchAngle);
          tell(layout, reached, chance(answers, i));
        });
      }
    },
    async answer(shots) {
      const answers = await model.answer(featuresOf(shots, engine), tuning);
      return shots.map(({ deviations, launch }, i) => {
        const { shot, reaction } = reader(answers, i, launch.x, launch.angle + deviations.launchAngle);
        return { shot, reaction: { ...reaction } };
      });
    },
  };
}

/** Features of single shots, computed in full, row by row. */
function featuresOf(shots: readonly Asked[], engine: Simulator): Tensor {
  const values = new Float32Array(FEATURES.length * shots.length);
  for (const [i, { layout, deviations, launch }] of shots.entries()) {
    const shot = { ...engine.inputs(layout, deviations), launch: scatteredLaunch(launch, deviations) };
    writeFeatures(values, FEATURES.length * i, shot);
  }
  return { dims: [shots.length, FEATURES.length], values };
}

/** The same, with the features of a world computed once for all its shots. */
export function sharedFeatures(shots: readonly Asked[], engine: Simulator, worlds: WorldFeatures): Tensor {
  const values = new Float32Array(FEATURES.length * shots.length);
  for (const [i, { layout, deviations, launch }] of shots.entries()) {
    const inputs = engine.inputs(layout, deviations);
    const ball = FEATURES.length * i;
    const world = ball + BALL_FEATURES.length;
    writeBallFeatures(values, ball, inputs.body, releaseFrame(inputs.release.pap_B));
    worlds(deviations, inputs)(values, world, launch.x, launch.angle);
    writeJointFeatures(values, world + WORLD_FEATURES.length, ball, world);
  }
  return { dims: [shots.length, FEATURES.length], values };
}

async function tuningTo(
  known: readonly Known[],
  features: Tensor,
  model: ReactionModel,
  card: ModelCard,
): Promise<Tuning> {
  const { reaction, basis } = await model.basis(features);
  const residuals = new Float32Array(reaction.length);
  for (const [i, { outcome, deviations }] of known.entries())
    TARGETS.forEach(({ of }, j) => {
      const at = TARGETS.length * i + j;
      const observed = of(outcome.reaction, scatteredLaunch(outcome.launch, deviations));
      residuals[at] = (observed - reaction[at]) / card.outputs[j].scale;
    });
  return tune(basis, { dims: [known.length, TARGETS.length], values: residuals });
}

/** Reads answers of the regression into the form that a score needs, always into the same object. */
function reachedReader(): (answers: Float32Array, row: number, x: number, angle: number) => Reached {
  const reaction = { hookStart: 0, sharpness: 0, totalHook: 0, entryAngle: 0 };
  const reached = { shot: 'pins' as Outcome['shot'], reaction };
  return (answers, row, x, angle) => {
    const at = TARGETS.length * row;
    reaction.hookStart = answers[at + HOOK_START];
    reaction.sharpness = answers[at + SHARPNESS];
    reaction.totalHook = answers[at + TOTAL_HOOK];
    reaction.entryAngle = answers[at + ENTRY_ANGLE];
    const pinsX = x + LANE_LENGTH * tan(angle) - reaction.totalHook;
    reached.shot = Math.abs(pinsX) > LANE_WIDTH / 2 ? 'gutter' : 'pins';
    return reached;
  };
}

/** Slope of the logistic function that comes nearest to a normal distribution's (Camilli, J. Educ. Behav. Stat. 19, 293, 1994, from memory). */
const LOGISTIC = 1.702;

/** Chance that a ball does not run into its own gutter, from its predicted breakpoint and the error of that, m. */
const chanceWithin = (widestX: number, error: number): number =>
  1 / (1 + exp((LOGISTIC * (widestX - LANE_WIDTH / 2)) / error));

const indexOf = (id: TargetId): number => TARGETS.findIndex((target) => target.id === id);
const HOOK_START = indexOf('hookStartFt');
const SHARPNESS = indexOf('sharpnessDegPerFt');
const TOTAL_HOOK = indexOf('totalHookBoards');
const ENTRY_ANGLE = indexOf('entryAngleDeg');
const BREAKPOINT = indexOf('breakpointFromLaydown');
