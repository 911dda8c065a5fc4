import { createHash } from 'node:crypto';
import { join } from 'node:path';
import type { ModelCard } from '../../src/regression/card.js';
import { DESIGN, designShots, LANE_DESIGN, SHOTS_PER_LANE } from '../../src/regression/design.js';
import { FEATURES, writeFeatures } from '../../src/regression/features.js';
import { fingerprint, PROBE_SEED } from '../../src/regression/fingerprint.js';
import { loadRuntime } from '../../src/regression/run-graph.js';
import { TARGETS } from '../../src/regression/targets.js';
import { runDesign } from './data-run.js';
import { fitNetwork } from './fit-network.js';
import { PLAYABLE } from './playable.js';
import { roughness } from './roughness.js';
import { writeModel } from './write-model.js';

interface FitRun {
  readonly seed: number;
  readonly lanes: number;
  readonly epochs: number;
  readonly workers: number;
  /** Folders of rolled shots and of the model. */
  readonly data: string;
  readonly out: string;
  readonly version: string;
  readonly onProgress: (progress: { stage: string; done: number; total: number }) => void;
}

/** Units of the network’s layers: the most that leave a shot’s answer well under a microsecond. */
const WIDTHS = [160, 96, 64];

/** Changes of inputs, as shares of them, at which the engine's own roughness is measured. */
const SHARES = [0.001, 0.01];

/** The whole of it: rolls the design's shots, fits, and writes the model. Shots are kept by physics and design. */
export async function fitModel(run: FitRun): Promise<ModelCard> {
  const { seed, lanes, epochs, workers, data, out, version, onProgress } = run;
  await loadRuntime(); // without it, nothing needs to be rolled
  const rows = await runDesign({
    seed,
    lanes,
    workers,
    directory: join(data, `shots-${fingerprint().hash}-${designHash()}`),
    onProgress: (done, total) => onProgress({ stage: 'lanes of the design', done, total }),
  });
  const fitted = await fitNetwork(rows, {
    seed,
    lanes,
    epochs,
    widths: WIDTHS,
    version,
    roughness: roughness(SHARES),
    onProgress: (done, total) => onProgress({ stage: 'passes of the fit', done, total }),
  });
  await writeModel(fitted, out);
  return fitted.card;
}

/** The reaction numbers that are noted of a shot. */
const NOTED = TARGETS.map(({ name, unit, si }) => ({ name, unit, si }));

/** Short name of what is rolled and noted: rows of another design must not be taken for those of this one. */
const designHash = (): string =>
  createHash('sha256')
    .update(JSON.stringify([DESIGN, LANE_DESIGN, SHOTS_PER_LANE, PLAYABLE, FEATURES, NOTED, someFeatures()]))
    .digest('hex')
    .slice(0, 8);

/** Features of a few shots: they change with the code that works them out. */
function someFeatures(): readonly string[] {
  const shots = designShots(PROBE_SEED, 0);
  const out = new Float32Array(FEATURES.length * shots.length);
  for (const [i, shot] of shots.entries()) writeFeatures(out, FEATURES.length * i, shot);
  return Array.from(out, (value) => value.toPrecision(6));
}
