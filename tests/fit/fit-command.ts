import { mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Flag } from '../../src/cli/flags/flag-table.js';
import { wholeNumber } from '../../src/cli/flags/flags.js';
import { globalFlags } from '../../src/cli/flags/global-flags.js';
import type { GlobalOptions } from '../../src/cli/flags/options.js';
import { printAnswer } from '../../src/cli/print/print-answer.js';
import { withProgress } from '../../src/cli/print/progress.js';
import { collectFaults } from '../../src/cli/terminal/collect-faults.js';
import type { Terminal } from '../../src/cli/terminal/terminal.js';
import { checkPlace } from '../../src/files/check-place.js';
import { orSayWhy } from '../../src/files/machine-fault.js';
import { VERSION } from '../../src/records/shared/version.js';
import type { ModelCard } from '../../src/regression/card.js';
import { MODELS } from '../../src/regression/model-files.js';
import { fitModel } from './fit-model.js';
import { fitReport } from './fit-report.js';

const USUAL_SEED = 1;
const USUAL_LANES = 36000;
const USUAL_EPOCHS = 200;
const MOST_SEED = 1000; // the probes of the physics lie beyond

export const FIT_FLAGS: readonly Flag[] = [
  ['--seed <n>', `seed of the design and of the fit (default: ${USUAL_SEED})`],
  ['--lanes <n>', `oil patterns of the design; some fourteen shots each are kept (default: ${USUAL_LANES})`],
  ['--epochs <n>', `passes over the shots in fitting (default: ${USUAL_EPOCHS})`],
  [
    '--data <folder>',
    'where rolled shots are kept (default: flarewise-fit in the folder for temporary files)',
  ],
  ['--out <folder>', 'where the model goes (default: models, in the package)'],
];

interface FitOptions extends GlobalOptions {
  readonly seed?: string;
  readonly lanes?: string;
  readonly epochs?: string;
  readonly data?: string;
  readonly out?: string;
}

/** `npm run fit`: the data run and the fit of the regression. */
export async function fitCommand(options: FitOptions, terminal: Terminal): Promise<void> {
  const number = (flag: string, given: string | undefined, usual: number, most: number) => () =>
    given === undefined ? usual : wholeNumber(flag, given, [1, most], `Left out, it is ${usual}.`);
  const { workers, data, out, ...given } = collectFaults({
    seed: number('--seed', options.seed, USUAL_SEED, MOST_SEED),
    lanes: number('--lanes', options.lanes, USUAL_LANES, 1_000_000),
    epochs: number('--epochs', options.epochs, USUAL_EPOCHS, 10_000),
    ...globalFlags(options, terminal),
    data: () => folderFlag('--data', options.data ?? join(tmpdir(), 'flarewise-fit')),
    out: () => folderFlag('--out', options.out ?? MODELS),
  });
  const card: ModelCard = await withProgress(terminal, ({ show: onProgress }) =>
    fitModel({ ...given, workers, data, out, version: VERSION, onProgress }),
  );
  printAnswer(card, (page) => fitReport(card, out, page), options, terminal);
}

/** A folder that files can be written in, made where there is none. */
function folderFlag(field: string, path: string): string {
  orSayWhy({ path, field, rule: 'must be a folder that can be written to' }, () =>
    mkdirSync(path, { recursive: true }),
  );
  checkPlace({ path: join(path, 'model.json'), field });
  return path;
}
