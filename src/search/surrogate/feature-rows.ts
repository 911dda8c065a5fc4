import type { PublishedNumbers } from '../../ball/core/published.js';
import type { MassProperties } from '../../ball/mass/mass-properties.js';
import type { Layout } from '../../layout/layout.js';
import { placeLayout } from '../../layout/placement.js';
import type { Launch } from '../../motion/shot/release.js';
import {
  BALL_FEATURES,
  FEATURES,
  releaseFrame,
  WORLD_FEATURES,
  writeBallFeatures,
  writeJointFeatures,
  writeWorldFeatures,
} from '../../regression/features.js';
import { applyFit, type LayoutFit, layoutBasis } from '../../simulate/layout-basis.js';
import { markedLayout, type Simulator, scatteredLaunch } from '../../simulate/simulator.js';
import { type Deviations, NO_DEVIATIONS } from '../../simulate/worlds/deviations.js';
import { asMade } from '../../simulate/worlds/made-ball.js';

/** Layouts, and the launch angle (rad) of each one's own line. */
export interface LayoutLines {
  readonly basis: Float64Array;
  readonly angles: Float64Array;
  /** How many of them, from the first on, say which angles features are worked out at; all when left out. */
  readonly surveyed?: number | undefined;
}

/** Layouts to drill into each core, spread over all that are asked about, and the fit over them. */
export interface Sample {
  readonly layouts: readonly Layout[];
  readonly fit: LayoutFit;
}

/** Rows of features, for any of the layouts that are asked about, in one world. */
export type FeatureRows = (out: Float32Array, layouts: Int32Array) => void;

const BALL = BALL_FEATURES.length;
const WORLD = WORLD_FEATURES.length;

/** Launch angles at which a world's features are worked out; between them they follow a parabola. */
const NODES = 3;

/**
 * Prepares to write the regression's features for thousands of layouts in one world, without drilling each.
 *
 * A sample of layouts is drilled into every core and its mass properties are fitted over the layout's basis. In a world
 * (its core, its errors of marking) they say what each of the sample comes out as, and the features of those are
 * fitted in turn. The rest depends on the layout only through the angle of its line.
 *
 * @param laydownX lateral position at the foul line, m
 */
export function featureRows(
  engine: Simulator,
  { layouts: sample, fit: fitOverLayouts }: Sample,
  { basis, angles, surveyed }: LayoutLines,
  laydownX: number,
  pap_B: Parameters<typeof layoutBasis>[1],
  published: PublishedNumbers,
): (deviations: Deviations) => FeatureRows {
  const spanned = angles.subarray(0, surveyed);
  const least = spanned.reduce((a, b) => Math.min(a, b));
  const most = Math.max(
    least + LEAST_SPAN,
    spanned.reduce((a, b) => Math.max(a, b)),
  );
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
    const { body, release, surface, freshSurface } = engine.inputs(sample[0], deviations);
    const R_FB = releaseFrame(release.pap_B);
    const marked = sample.map((layout) => markedLayout(layout, deviations));
    const markedBasis = layoutBasis(marked, pap_B);
    const numbers = new Float64Array(NUMBERS);
    const drilled = new Float32Array(BALL * sample.length);
    for (let i = 0; i < sample.length; i++) {
      applyFit(numbers, 0, markedBasis, i, weightsOf(deviations.body), NUMBERS);
      const { R_BC } = placeLayout(marked[i], pap_B);
      const made = asMade(massPropertiesOf(numbers), R_BC, published, deviations.made);
      writeBallFeatures(drilled, BALL * i, { ...made, radius: body.radius }, R_FB);
    }
    const ballWeights = fitOverLayouts(Float64Array.from(drilled), BALL);
    const nodes = new Float32Array(NODES * WORLD);
    for (let k = 0; k < NODES; k++) {
      const launch: Launch = { x: laydownX, angle: least + ((most - least) * k) / (NODES - 1) };
      const scattered = scatteredLaunch(launch, deviations);
      writeWorldFeatures(nodes, WORLD * k, body.radius, release, scattered, surface, freshSurface);
    }
    const ball = new Float64Array(BALL);
    return (out, layouts) => {
      for (let i = 0; i < layouts.length; i++) {
        const layout = layouts[i];
        const at = FEATURES.length * i;
        const lane = at + BALL;
        applyFit(ball, 0, basis, layout, ballWeights, BALL);
        for (let j = 0; j < BALL; j++) out[at + j] = ball[j];
        const u = (2 * (angles[layout] - least)) / (most - least); // 0, 1, 2 at the nodes
        const a = ((u - 1) * (u - 2)) / 2;
        const b = u * (2 - u);
        const c = (u * (u - 1)) / 2;
        for (let j = 0; j < WORLD; j++)
          out[lane + j] = a * nodes[j] + b * nodes[WORLD + j] + c * nodes[2 * WORLD + j];
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

/** Least span of launch angles over which features are fitted, rad. */
const LEAST_SPAN = 1e-4;
