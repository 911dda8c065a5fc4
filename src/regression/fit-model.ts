import { join } from 'node:path';
import type { ModelCard } from './card.js';
import { runDesign } from './data-run.js';
import { fingerprint } from './fingerprint.js';
import { fitNetwork } from './fit-network.js';
import { writeModel } from './model-files.js';

export interface FitRun {
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

/** Units of the network's two layers: the widest that leave a shot's answer near a microsecond. */
const WIDTHS = [96, 96];

/** The whole of it: rolls the design's shots, fits, and writes the model. Shots are kept by the physics that rolled them. */
export async function fitModel(run: FitRun): Promise<ModelCard> {
  const { seed, lanes, epochs, workers, data, out, version, onProgress } = run;
  const rows = await runDesign({
    seed,
    lanes,
    workers,
    directory: join(data, `shots-${fingerprint().hash}`),
    onProgress: (done, total) => onProgress({ stage: 'lanes of the design', done, total }),
  });
  const fitted = await fitNetwork(rows, {
    seed,
    lanes,
    epochs,
    widths: WIDTHS,
    version,
    onProgress: (done, total) => onProgress({ stage: 'passes of the fit', done, total }),
  });
  await writeModel(fitted, out);
  return fitted.card;
}
