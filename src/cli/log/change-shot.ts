import { loggedAnswer } from '../../answer/logged-answer.js';
import type { LoggedAnswer } from '../../records/answers/log-answer.js';
import { shotAt, withChangedShot, withoutShot } from '../../records/log/edit-shots.js';
import type { LoggedShot, Night } from '../../records/schemas/shot-log.js';
import { changeNights, type ShotLog } from '../files/shot-log.js';
import type { Terminal } from '../terminal/terminal.js';
import type { TypedShot } from './typed-shot.js';

/**
 * Takes a shot out of the log: the last, or that of a number.
 *
 * @throws {InputError} `no-such-shot`
 */
export const takeBack = (
  log: ShotLog,
  given: number | undefined,
  terminal: Terminal,
): Promise<LoggedAnswer> =>
  change(log, terminal, (nights) => {
    const { number, shot, night } = shotAt(nights, given);
    const shots = night.shots.filter((each) => each !== shot);
    return {
      did: 'taken-back',
      number,
      shot,
      night: { ...night, shots },
      nights: withoutShot(nights, number),
    };
  });

/**
 * Puts a shot in the place of one in the log, and changes what is typed of its night.
 *
 * @param changed  the shot in its place, by the one that stands there
 * @throws {InputError} `no-such-shot`
 */
export const changeShot = (
  log: ShotLog,
  number: number,
  changed: (before: LoggedShot) => TypedShot,
  terminal: Terminal,
): Promise<LoggedAnswer> =>
  change(log, terminal, (before) => {
    const { shot, given } = changed(shotAt(before, number).shot);
    const nights = withChangedShot(before, number, shot, given);
    return { did: 'changed', number, shot, night: shotAt(nights, number).night, nights };
  });

/** A change of one shot, and the log after it. */
interface Change {
  readonly did: LoggedAnswer['did'];
  readonly number: number;
  readonly shot: LoggedShot;
  /** The night in which it stands or stood, after the change. */
  readonly night: Night;
  readonly nights: readonly Night[];
}

async function change(
  { id }: ShotLog,
  terminal: Terminal,
  changeOf: (nights: readonly Night[]) => Change,
): Promise<LoggedAnswer> {
  let answer: LoggedAnswer | undefined;
  await changeNights(id, terminal, (before) => {
    const { number, shot, ...done } = changeOf(before);
    answer = loggedAnswer({ id, first: number, shots: [shot], carried: [], says: [], ...done });
    return done.nights;
  });
  return answer as LoggedAnswer;
}
