import { visible } from '../../base/visible.js';
import { atDesk } from '../../interview/ask/desk.js';
import type { LoggedAnswer } from '../../records/answers/log-answer.js';
import { headAlone } from '../../records/log/add-shot.js';
import { shotAt, withTyped } from '../../records/log/edit-shots.js';
import type { LoggedShot } from '../../records/schemas/shot-log.js';
import { shellWord } from '../../records/text/shell-word.js';
import { loggedReport } from '../../report/screens/logged-report.js';
import { UNITS, type Units } from '../../report/text/display-units.js';
import { openLog, type ShotLog } from '../files/shot-log.js';
import { eveningOf } from '../flags/date-flag.js';
import { missingFlag, wholeNumber } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import type { LogOptions } from '../flags/options.js';
import { changeShot, takeBack } from '../log/change-shot.js';
import { importShots } from '../log/import-shots.js';
import { keepShots } from '../log/keep-shots.js';
import { listShots } from '../log/list-shots.js';
import { type LogAction, logAction } from '../log/log-action.js';
import { checkSeen, readTyped, unseenIn } from '../log/read-typed.js';
import { settleOdd, type WithDesk } from '../log/settle-odd.js';
import { headAfter, type TypedShot } from '../log/typed-shot.js';
import { askStreams } from '../print/ask-streams.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import { canAsk, type Terminal } from '../terminal/terminal.js';

/** `flarewise log`: shots as a bowler saw them. */
export async function logCommand(
  options: LogOptions,
  terminal: Terminal,
  [id, ...boards]: readonly string[],
): Promise<void> {
  const mayAsk = options.input && canAsk(terminal);
  const { action, units, typed } = collectFaults({
    ...globalFlags(options, terminal),
    action: () => logAction(options, id, boards, mayAsk),
    typed: () => readTyped(boards, options),
  });
  const evening = typed.given.on ?? eveningOf(new Date());
  if (action === 'list') return listShots(id, options, terminal);
  if (id === undefined)
    throw missingFlag(
      'the drilled layout',
      'Such as: flarewise log first 20 14 8 17. flarewise log lists them.',
    );
  const log = openLog(id, terminal);
  const withDesk: WithDesk | null = mayAsk
    ? (ask) => atDesk(askStreams(options, terminal), UNITS[units], ask)
    : null;
  if (action === 'ask') {
    const night = { on: evening, ...typed.given };
    const { askForShots } = await import('../log/ask-for-shots.js');
    await withDesk?.((desk) => askForShots(log, options, night, UNITS[units], desk, terminal));
    return listShots(id, options, terminal, evening);
  }
  const given = { log, typed, boards, options, evening, units: UNITS[units], withDesk, terminal };
  const answer = await ACTIONS[action](given);
  if (answer) await printAnswer(answer, (page) => loggedReport(answer, page), options, terminal);
  else terminal.stderr.write(`Nothing was kept.${againText(id, boards)}\n`);
}

/** The line that was taken back, to be mended and given again. */
const againText = (id: string, boards: readonly string[]): string =>
  boards.length === 0 ? '' : ` You typed: flarewise log ${visible([id, ...boards].map(shellWord).join(' '))}`;

/** What an action is given. */
interface Given {
  readonly log: ShotLog;
  readonly typed: TypedShot;
  readonly boards: readonly string[];
  readonly options: LogOptions;
  readonly evening: string;
  readonly units: Units;
  readonly withDesk: WithDesk | null;
  readonly terminal: Terminal;
}

type OneAction = Exclude<LogAction, 'list' | 'ask'>;

/** Each returns what was done; null where the person took it back. */
const ACTIONS: Readonly<Record<OneAction, (given: Given) => Promise<LoggedAnswer | null>>> = {
  keep: async ({ log, typed: { shot, given }, evening, units, withDesk, terminal }) => {
    checkSeen(shot);
    const night = { on: evening, ...given };
    const { head } = headAfter({ shot, given: night }, log.record.nights, log);
    const asked =
      withDesk && head.lane === undefined
        ? await withDesk(async (desk) => (await import('../log/ask-night.js')).askNight(head, log, desk))
        : {};
    const kept = await settleOdd({ shot, given: { ...night, ...asked } }, log, units, withDesk);
    return kept && keepShots(log, [kept], terminal);
  },

  edit: async ({ log, typed, boards, options, units, withDesk, terminal }) => {
    const number = shotNumber('--edit', options.edit ?? '');
    const { given } = typed;
    const unseen = unseenIn(boards, typed.shot);
    const { shot: before, night } = shotAt(log.record.nights, number);
    const whole = withTyped(before, typed.shot, unseen);
    checkSeen(whole);
    const kept = await settleOdd(
      { shot: whole, given: { ...headAlone(night), ...given } },
      log,
      units,
      withDesk,
    );
    if (!kept) return null;
    const changed = (now: LoggedShot): LoggedShot =>
      now === before ? kept.shot : withTyped(now, kept.shot, unseen);
    return changeShot(log, number, (now) => ({ shot: changed(now), given }), terminal);
  },

  undo: ({ log, options, terminal }) => {
    const number = options.undo === true ? undefined : shotNumber('--undo', options.undo ?? '');
    return takeBack(log, number, terminal);
  },

  import: ({ log, options, units, withDesk, terminal }) => {
    const flags = { otherSide: options.otherSide ?? false, really: options.really ?? false };
    return importShots(log, options.import ?? '', flags, units, withDesk, terminal);
  },
};

const MOST_SHOTS = 10_000;

const shotNumber = (flag: string, text: string): number =>
  wholeNumber(flag, text, [1, MOST_SHOTS], 'flarewise log ID --list shows the shots with their numbers.');
