import { ALL_NEEDS } from '../../interview/questions/needs.js';
import { DEMO } from '../../records/read/shelf.js';
import { withInterview } from '../answering/with-interview.js';
import { answerAtOnce } from '../answering/with-records.js';
import { demoInputs } from '../files/demo-inputs.js';
import type { GlobalOptions } from '../flags/options.js';
import { searchFlags } from '../flags/search-flags.js';
import { collectFaults } from '../terminal/collect-faults.js';
import { canAsk, type Terminal } from '../terminal/terminal.js';
import { recommendationAnswerer } from './recommend-command.js';

/** `flarewise` alone: asks, then recommends. Where no one can be asked it answers for the demo records. */
export async function guidedCommand(options: GlobalOptions, terminal: Terminal): Promise<void> {
  // a bad flag is refused before any question
  const search = collectFaults(searchFlags(options, terminal));
  if (!options.input || !canAsk(terminal)) {
    const answerer = recommendationAnswerer(search, { ...options, ...DEMO }, terminal);
    await answerAtOnce({ ...demo(terminal), layout: '', keep: {} }, answerer, terminal);
    return;
  }
  const wanted = { needs: ALL_NEEDS, given: {}, isSimulated: true };
  const answerer = recommendationAnswerer(search, options, terminal, { isAsked: true });
  await withInterview(wanted, options, terminal, answerer);
}

function demo({ stderr }: Terminal) {
  const inputs = demoInputs();
  stderr.write(
    `No questions are asked here, so this answers for demo records: ${inputs.bowler.name}; ${inputs.ball.name}; ` +
      `${inputs.lane.name}.\nFor your own: flarewise recommend --bowler FILE --ball FILE --lane FILE ` +
      '--hook-start 1..5 (see flarewise recommend --help).\n',
  );
  return inputs;
}
