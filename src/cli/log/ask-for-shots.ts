import { Cancelled, InputError } from '../../base/errors.js';
import { askShots } from '../../interview/ask/ask-shots.js';
import type { Desk } from '../../interview/ask/desk.js';
import { type NightHead, shotCount } from '../../records/log/add-shot.js';
import { LINE_RULE } from '../../records/log/read-line.js';
import { loggedSentences } from '../../report/screens/logged-report.js';
import type { Units } from '../../report/text/display-units.js';
import { nightText } from '../../report/text/shot-text.js';
import { openLog, type ShotLog } from '../files/shot-log.js';
import type { LogOptions } from '../flags/options.js';
import { InputErrors } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';
import { askNight } from './ask-night.js';
import { takeBack } from './change-shot.js';
import { keepShots } from './keep-shots.js';
import { checkSeen, readTyped, splitLine } from './read-typed.js';
import { settleOdd } from './settle-odd.js';
import { headAfter, type TypedShot } from './typed-shot.js';

/** The help shown at `?`. */
const HELP = `${LINE_RULE} Behind them flags may stand as on the command line: 20 14 8 17 --at-50 9 --flare 5 --games 4 --target 15.`;

/**
 * Asks for the night, as far as nothing is known of it, and then for shot after shot. Each is kept at once.
 *
 * @param given  what was typed of the night; its day applies to all shots, the rest to the first and from there to later ones
 */
export async function askForShots(
  opened: ShotLog,
  options: LogOptions,
  given: Partial<NightHead>,
  units: Units,
  desk: Desk,
  terminal: Terminal,
): Promise<void> {
  let log = opened;
  const { head } = headAfter({ shot: {}, given }, log.record.nights, log);
  const { layout, ball, bowler } = log.record;
  desk.screen.say(`${log.id}: ${layout} on ${ball} for ${bowler}. ${nightText(head, units)}.`, 'bold');
  const before = shotCount(log.record.nights);
  let night = { ...given, ...(await askNight(head, log, desk)) };

  const typedIn = (line: string): TypedShot => {
    const { words, options: flags } = splitLine(line);
    const { shot, given: now } = oneError(() => readTyped(words, { ...ofEveryShot(options), ...flags }));
    checkSeen(shot);
    return { shot, given: { ...night, ...now } };
  };

  await askShots(
    {
      number: () => shotCount(log.record.nights) + 1,
      check: (line) => void typedIn(line),
      keep: async (line, at) => {
        const typed = await settleOdd(typedIn(line), log, units, (ask) => ask(at));
        if (typed === null) return null;
        const kept = await keepShots(log, [typed], terminal);
        night = given.on === undefined ? {} : { on: given.on };
        log = openLog(log.id, terminal);
        return loggedSentences(kept, units);
      },
      takeBack: async () => {
        const back = await takeBack(log, undefined, terminal);
        log = openLog(log.id, terminal);
        return loggedSentences(back, units);
      },
    },
    HELP,
    desk,
  ).catch((error: unknown) => {
    if (error instanceof Cancelled) desk.screen.say(keptText(shotCount(log.record.nights) - before));
    throw error;
  });
}

/** @param count  shots more than before; fewer where some were taken back */
const keptText = (count: number): string =>
  count > 0
    ? `Your ${count === 1 ? 'shot is' : `${count} shots are`} kept. flarewise log lists them.`
    : 'No shot was added.';

/** Flags without those that say something of the night or of one shot. */
const ofEveryShot = ({
  lane,
  night,
  games,
  target,
  pattern,
  error,
  note,
  ...others
}: LogOptions): LogOptions => others;

/** Several errors as one, as a prompt shows them. */
function oneError<T>(read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof InputErrors)) throw error;
    throw new InputError(
      'shot-line',
      error.errors.flatMap((each) => (each instanceof InputError ? each.faults : [])),
    );
  }
}
