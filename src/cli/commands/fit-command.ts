import { checkFolder } from '../../files/check-place.js';
import { VERSION } from '../../records/shared/version.js';
import type { ModelCard } from '../../regression/card.js';
import { fitModel } from '../../regression/fit/fit-model.js';
import { MODELS } from '../../regression/model-files.js';
import { platformFolders } from '../files/platform-folders.js';
import { wholeNumber } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import type { FitCommandOptions } from '../flags/options.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
import { gather } from '../terminal/gather.js';
import type { Terminal } from '../terminal/terminal.js';
import { fitReport } from './fit-report.js';

const USUAL_SEED = 1;
const USUAL_LANES = 36000;
const USUAL_EPOCHS = 200;
const MOST_SEED = 1000; // the probes of the physics lie beyond

/** `flarewise fit`: for maintainers, the data run and the fit of the regression. */
export async function fitCommand(options: FitCommandOptions, terminal: Terminal): Promise<void> {
  const number = (flag: string, given: string | undefined, usual: number, most: number) => () =>
    given === undefined ? usual : wholeNumber(flag, given, [1, most], `Left out, it is ${usual}.`);
  const { workers, data, out, ...given } = gather({
    seed: number('--seed', options.seed, USUAL_SEED, MOST_SEED),
    lanes: number('--lanes', options.lanes, USUAL_LANES, 1_000_000),
    epochs: number('--epochs', options.epochs, USUAL_EPOCHS, 10_000),
    ...globalFlags(options, terminal),
    data: () => folderFlag('--data', options.data ?? platformFolders().cache),
    out: () => folderFlag('--out', options.out ?? MODELS),
  });
  const card: ModelCard = await withProgress(terminal, (onProgress) =>
    fitModel({ ...given, workers, data, out, version: VERSION, onProgress }),
  );
  printAnswer(card, (page) => fitReport(card, out, page), options, terminal);
}

/** A folder that files can be written in, made where there is none. */
function folderFlag(field: string, path: string): string {
  checkFolder({ path, field });
  return path;
}
