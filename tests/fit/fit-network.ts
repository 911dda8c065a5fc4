import { createHash } from 'node:crypto';
import { MODEL_FILE, type ModelCard } from '../../src/regression/card.js';
import { FEATURES } from '../../src/regression/features.js';
import { fingerprint } from '../../src/regression/fingerprint.js';
import { TARGETS, type TargetId } from '../../src/regression/targets.js';
import { appraise, errorsBetween } from './appraise.js';
import type { Errors } from './errors.js';
import { linearFit } from './linear-fit.js';
import { parametersOf } from './network.js';
import { networkGraph } from './network-graph.js';
import { onnxFile } from './onnx.js';
import { polynomialFeatures } from './polynomial.js';
import type { Roughness } from './roughness.js';
import { isHeldOut, type Rows, takeRows } from './rows.js';
import { type Spread, spreadOf, standardised } from './standardise.js';
import { startNetwork } from './start-network.js';
import { timesTensor } from './times-tensor.js';
import { train } from './train.js';
import { unwhitened, whitening } from './whiten.js';

export interface FitOptions {
  /** Of the data run, of the start and of the shuffling. */
  readonly seed: number;
  /** Lanes of the data run. */
  readonly lanes: number;
  readonly widths: readonly number[];
  readonly epochs: number;
  /** Of the program, and of the engine, for the card. */
  readonly version: string;
  readonly roughness: readonly Roughness[];
  readonly onProgress?: (done: number, total: number) => void;
}

export interface Fitted {
  readonly file: Uint8Array;
  readonly card: ModelCard;
}

const BATCH = 256;
const RATE = 0.004;

/**
 * How much the error of each answer counts, in its deviations. Rougher numbers cannot be learned as far; counted like
 * the others they would be all that the layers work on, and the smooth ones, which can be exact, would stay a third worse.
 */
const WEIGHTS: Readonly<Record<TargetId, number>> = {
  hookStartFt: 2,
  sharpnessDegPerFt: 1.5,
  totalHookBoards: 6,
  entryAngleDeg: 4,
  flareIn: 4,
  breakpointFromLaydown: 3,
  rollStartFt: 0.5,
  turns: 2,
};

/** Learned sums whose squares enter the answers. */
const SUMS = 48;

/** Rows the polynomial is fitted to at most: ten for each of its weights are plenty, and it takes all the memory there is. */
const POLYNOMIAL_ROWS = 50_000;

const ABOUT =
  'Fitted on shots of flarewise’s own physics engine. Predicts reaction numbers of shots that a bowler would play; ' +
  'knows nothing the engine does not. Features: src/regression/features.ts.';

/**
 * Fits the regression to the rows of a data run: a multivariate linear regression, and a small network for what
 * it leaves. The same rows and seed give the same file, byte for byte, on the same kind of processor.
 */
export async function fitNetwork(rows: Float32Array, options: FitOptions): Promise<Fitted> {
  const { seed, widths, epochs } = options;
  const basis = FEATURES.length + SUMS + widths[widths.length - 1];
  const fitted = takeRows(rows, (lane) => !isHeldOut(lane));
  const heldOut = takeRows(rows, isHeldOut);
  const inputs = spreadOf(fitted.features, FEATURES.length);
  const outputs = spreadOf(fitted.answers, TARGETS.length);
  const z = standardised(fitted.features, inputs);
  const answers = standardised(fitted.answers, outputs);
  const whiten = whitening(z, FEATURES.length);
  const white = timesTensor({ dims: [fitted.count, FEATURES.length], values: z }, whiten).values;
  const linear = linearFit(white, FEATURES.length, answers, TARGETS.length);
  const network = startNetwork(inputs, outputs, linear, widths, SUMS, seed);
  const linearFile = onnxFile(networkGraph(unwhitened(network, whiten), {}));
  const comparison = [
    { fit: 'multivariate linear regression', heldOut: (await appraise(heldOut, linearFile, basis)).errors },
    {
      fit: `the same with squares and products, of up to ${POLYNOMIAL_ROWS} shots`,
      heldOut: polynomialErrors(
        z.subarray(0, POLYNOMIAL_ROWS * FEATURES.length),
        answers.subarray(0, POLYNOMIAL_ROWS * TARGETS.length),
        heldOut,
        inputs,
        outputs,
      ),
    },
  ];
  const weights = TARGETS.map(({ id }) => WEIGHTS[id]);
  const training = { epochs, batch: BATCH, rate: RATE, weights, seed };
  const whiteRows = { count: fitted.count, features: white, answers };
  await train(parametersOf(network), whiteRows, training, (done) => options.onProgress?.(done, epochs));

  const physics = fingerprint();
  const notes = { version: options.version, physics: physics.hash, 'data seed': String(seed) };
  const file = onnxFile(networkGraph(unwhitened(network, whiten), notes));
  const { errors, regions } = await appraise(heldOut, file, basis);
  return {
    file,
    card: {
      schema: 'flarewise/model-card/1',
      about: ABOUT,
      version: options.version,
      file: { name: MODEL_FILE, bytes: file.length, sha256: createHash('sha256').update(file).digest('hex') },
      physics: { hash: physics.hash, numbers: [...physics.numbers] },
      data: {
        seed,
        lanes: options.lanes,
        fittedOn: fitted.count,
        heldOut: heldOut.count,
        split: 'every tenth lane of the design, all of its shots',
      },
      fit: { widths: [...widths], squares: SUMS, basis, epochs, batch: BATCH, rate: RATE, seed },
      inputs: FEATURES.map((feature, j) => ({ ...feature, ...rangeOf(fitted.features, j) })),
      outputs: TARGETS.map(({ name, unit, si }, j) => ({
        name,
        unit,
        si,
        scale: outputs.deviation.values[j],
        heldOut: errors[j],
      })),
      comparison,
      roughness: [...options.roughness],
      regions,
    },
  };
}

function polynomialErrors(
  z: Float32Array,
  answers: Float32Array,
  heldOut: Rows,
  inputs: Spread,
  outputs: Spread,
): Errors[] {
  const fitted = polynomialFeatures(z);
  const weights = linearFit(fitted.values, fitted.width, answers, TARGETS.length);
  const asked = polynomialFeatures(standardised(heldOut.features, inputs));
  const { values } = timesTensor({ dims: [heldOut.count, asked.width], values: asked.values }, weights);
  const { mean, deviation } = outputs;
  const answered = values.map(
    (value, i) => mean.values[i % TARGETS.length] + deviation.values[i % TARGETS.length] * value,
  );
  return errorsBetween(answered, heldOut.answers);
}

/** Least and greatest value of a feature, of all shots that were fitted. */
function rangeOf(features: Float32Array, j: number): { least: number; most: number } {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let at = j; at < features.length; at += FEATURES.length) {
    least = Math.min(least, features[at]);
    most = Math.max(most, features[at]);
  }
  return { least, most };
}
