import type { PublishedNumbers } from '../../ball/core/published.js';
import type { MassProperties } from '../../ball/mass/mass-properties.js';
import { placeLayout } from '../../layout/placement.js';
import {
  BALL_FEATURES,
  FEATURES,
  releaseFrame,
  WORLD_FEATURES,
  writeBallFeatures,
  writeJointFeatures,
} from '../../regression/features.js';
import { applyFit, layoutBasis } from '../../simulate/layout-basis.js';
import { markedLayout, type Simulator } from '../../simulate/simulator.js';
import { type Deviations, NO_DEVIATIONS } from '../../simulate/worlds/deviations.js';
import { asMade } from '../../simulate/worlds/made-ball.js';
import type { LayoutLines } from './layout-lines.js';
import type { WorldFeatures } from './world-features.js';

/** Writes rows of features in one world for layouts given by their places. */
export type FeatureRows = (out: Float32Array, layouts: Int32Array) => void;

const BALL = BALL_FEATURES.length;
const WORLD = WORLD_FEATURES.length;

/**
 * Prepares to write the regression's features for thousands of layouts in one world, without drilling each.
 *
 * A sample of layouts is drilled into every core, and the mass properties are fitted over the layout basis. In a world, with
 * its core and its errors of marking, these fits give the drilled balls of the sample, and the features of those balls are
 * fitted in turn. The other features depend on the layout only through the angle of its line.
 *
 * @param laydownX  lateral position at the foul line, m
 * @param worlds    features of worlds, without the ball
 */
export function featureRows(
  engine: Simulator,
  { basis, angles, sample, fit: fitOverLayouts }: LayoutLines,
  laydownX: number,
  worlds: WorldFeatures,
  pap_B: Parameters<typeof layoutBasis>[1],
  published: PublishedNumbers,
): (deviations: Deviations) => FeatureRows {
  const cores = new Map<number, Float64Array>();
  const weightsOf = (core: number): Float64Array => {
    const known = cores.get(core);
    if (known) return known;
    const deviations = { ...NO_DEVIATIONS, body: core };
    const weights = fitOverLayouts(
      Float64Array.from(sample.flatMap((layout) => numbersOf(engine.inputs(layout, deviations).body))),
      NUMBERS,
    );
    cores.set(core, weights);
    return weights;
  };
  return (deviations) => {
    const inputs = engine.inputs(sample[0], deviations);
    const writeWorld = worlds(deviations, inputs);
    const R_FB = releaseFrame(inputs.release.pap_B);
    const marked = sample.map((layout) => markedLayout(layout, deviations));
    const markedBasis = layoutBasis(marked, pap_B);
    const numbers = new Float64Array(NUMBERS);
    const drilled = new Float32Array(BALL * sample.length);
    for (let i = 0; i < sample.length; i++) {
      applyFit(numbers, 0, markedBasis, i, weightsOf(deviations.body), NUMBERS);
      const { R_BC } = placeLayout(marked[i], pap_B);
      const made = asMade(massPropertiesOf(numbers), R_BC, published, deviations.made);
      writeBallFeatures(drilled, BALL * i, { ...made, radius: inputs.body.radius }, R_FB);
    }
    const ballWeights = fitOverLayouts(Float64Array.from(drilled), BALL);
    const ball = new Float64Array(BALL);
    return (out, layouts) => {
      for (let i = 0; i < layouts.length; i++) {
        const layout = layouts[i];
        const at = FEATURES.length * i;
        const lane = at + BALL;
        applyFit(ball, 0, basis, layout, ballWeights, BALL);
        for (let j = 0; j < BALL; j++) out[at + j] = ball[j];
        writeWorld(out, lane, laydownX, angles[layout]);
        writeJointFeatures(out, lane + WORLD, at, lane);
      }
    };
  };
}

/** Mass, inertia and offset of a drilled ball: ten numbers. */
const NUMBERS = 10;

const numbersOf = ({ mass, I_Bcm_B: [a, b, c], p_BoBcm_B }: MassProperties): readonly number[] => [
  mass,
  ...a,
  b[1],
  b[2],
  c[2],
  ...p_BoBcm_B,
];

const massPropertiesOf = ([mass, xx, xy, xz, yy, yz, zz, x, y, z]: Float64Array): MassProperties => ({
  mass,
  I_Bcm_B: [
    [xx, xy, xz],
    [xy, yy, yz],
    [xz, yz, zz],
  ],
  p_BoBcm_B: [x, y, z],
});
