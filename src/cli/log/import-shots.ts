import { isDeepStrictEqual } from 'node:util';
import { InputError } from '../../base/errors.js';
import { askOdd } from '../../interview/ask/ask-odd.js';
import type { LoggedAnswer } from '../../records/answers/log-answer.js';
import { type ListedShot, readShotList } from '../../records/log/shot-list.js';
import { readListText } from '../../records/read/list-text.js';
import { SHOT_LIST_FILE } from '../../records/read/read-file.js';
import type { Units } from '../../report/text/display-units.js';
import { shotText } from '../../report/text/shot-text.js';
import { say, sayAll } from '../../report/wording/say.js';
import type { ShotLog } from '../files/shot-log.js';
import { printGuessedEncoding } from '../print/print-guessed-encoding.js';
import { InputErrors } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';
import { keepShots } from './keep-shots.js';
import { oddShotFault, type WithDesk } from './settle-odd.js';
import { confirmed, oddTyped, type TypedShot, turned } from './typed-shot.js';

/** How shots of a list are to be taken. */
interface ImportFlags {
  /** Boards were counted from the other side. */
  readonly otherSide: boolean;
  /** What looks odd was so. */
  readonly really: boolean;
}

/**
 * Keeps the shots of a CSV list, all or none.
 *
 * @param withDesk  null where there is no one to ask
 * @returns null where the person took the list back
 * @throws {InputErrors} every row that looks odd, where there is no one to ask
 */
export async function importShots(
  log: ShotLog,
  file: string,
  { otherSide, really }: ImportFlags,
  units: Units,
  withDesk: WithDesk | null,
  terminal: Terminal,
): Promise<LoggedAnswer | null> {
  const listed = readShotList(
    readListText(file, SHOT_LIST_FILE, printGuessedEncoding(terminal)),
    log.id,
    file,
  );
  const shots = listed.map(({ shot, head }): TypedShot => {
    const typed = { shot, given: head, isWhole: true } as const;
    return otherSide ? turned(typed) : typed;
  });
  const odd = really ? [] : oddRows(listed, shots, log, units);
  if (odd.length === 0) return keepShots(log, shots, terminal);
  if (!withDesk)
    throw new InputErrors(
      odd.map(({ field, shot, reasons, fitsFromOtherSide }) => {
        const { code, faults } = oddShotFault(field, shot, reasons, fitsFromOtherSide);
        return new InputError(code, faults, file);
      }),
    );
  const fits = odd.every(({ fitsFromOtherSide }) => fitsFromOtherSide);
  const reply = await withDesk((desk) =>
    askOdd(
      `${odd.length} of ${shots.length} rows look odd`,
      odd.slice(0, MOST_SAID).map(({ field, reasons }) => `${field}: ${reasons.join(' ')}`),
      fits ? 'all rows so' : null,
      desk,
    ),
  );
  switch (reply) {
    case 'it-was-so':
      return keepShots(
        log,
        shots.map((shot, i) => (odd.some((each) => each.i === i) ? confirmed(shot) : shot)),
        terminal,
      );
    case 'other-side':
      return keepShots(log, shots.map(turned), terminal);
    case 'not-so':
      return null;
  }
}

/** Rows that are spelt out where a person is asked about all of them. */
const MOST_SAID = 3;

interface OddRow {
  readonly i: number;
  readonly field: string;
  readonly shot: string;
  readonly reasons: readonly string[];
  readonly fitsFromOtherSide: boolean;
}

function oddRows(
  listed: readonly ListedShot[],
  shots: readonly TypedShot[],
  log: ShotLog,
  units: Units,
): readonly OddRow[] {
  if (isLoggedBefore(shots, log))
    return [
      {
        i: -1,
        field: 'the list',
        shot: shots.length === 1 ? 'one row' : `${shots.length} rows`,
        reasons: [say({ code: 'logged-before', params: { shots: shots.length } }, units)],
        fitsFromOtherSide: false,
      },
    ];
  return shots.flatMap((shot, i) => {
    const { oddities, fromOtherSide } = oddTyped(shot, log);
    return oddities.length === 0
      ? []
      : [
          {
            i,
            field: `row ${listed[i].row}`,
            shot: shotText(shot.shot, units),
            reasons: sayAll(oddities, units),
            fitsFromOtherSide: fromOtherSide !== null,
          },
        ];
  });
}

/** Whether the log holds all of these shots, as after the same list was imported. */
function isLoggedBefore(shots: readonly TypedShot[], { record }: ShotLog): boolean {
  const kept = record.nights.flatMap((night) => night.shots.map((shot) => ({ on: night.on, shot })));
  return shots.every(({ shot, given }) =>
    kept.some((each) => isDeepStrictEqual(each, { on: given.on, shot })),
  );
}
