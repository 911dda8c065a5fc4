import { UNITS } from '../../report/text/display-units.js';
import { missingFlag } from '../flags/flags.js';
import type { GlobalOptions } from '../flags/options.js';
import { canAsk, type Terminal } from '../terminal/terminal.js';
import { askStreams } from './ask-streams.js';

/** Asks a plain yes or no before something is taken away. @throws {InputError} `missing-flag` where no one can be asked */
export async function isSure(question: string, options: GlobalOptions, terminal: Terminal): Promise<boolean> {
  if (!options.input || !canAsk(terminal))
    throw missingFlag('--yes', 'Without a terminal there is no one to ask; --yes goes on without asking.');
  const [{ atDesk }, { askYesNo }] = await Promise.all([
    import('../../interview/ask/desk.js'),
    import('../../interview/prompt/ask-yes-no.js'),
  ]);
  return atDesk(askStreams(options, terminal), UNITS.trade, ({ screen, keys }) =>
    askYesNo(question, false, screen, keys),
  );
}
