import { loggedAnswer } from '../../answer/logged-answer.js';
import type { LoggedAnswer } from '../../records/answers/log-answer.js';
import { addShot, type NightHead, shotCount } from '../../records/log/add-shot.js';
import { unkeptLane } from '../../records/log/odd-head.js';
import type { Night } from '../../records/schemas/shot-log.js';
import { changeNights, type ShotLog } from '../files/shot-log.js';
import { missingFlag } from '../flags/flags.js';
import type { Terminal } from '../terminal/terminal.js';
import { headAfter, type TypedShot } from './typed-shot.js';

/**
 * Keeps shots behind those that the log holds now, all or none.
 *
 * @throws {InputError} `missing-flag` where their lane is not known; `bad-record` when the log is full
 */
export async function keepShots(
  { id, others, lanes }: ShotLog,
  typed: readonly TypedShot[],
  terminal: Terminal,
): Promise<LoggedAnswer> {
  let answer: LoggedAnswer | undefined;
  await changeNights(id, terminal, (before) => {
    let nights = before;
    let carried: LoggedAnswer['carried'] = [];
    for (const each of typed) {
      const kept = headAfter(each, nights, { others });
      carried = [...kept.carried];
      nights = addShot(nights, withLane(kept.head, id), each.shot);
    }
    const night = nights.at(-1) as Night;
    answer = loggedAnswer({
      id,
      did: 'kept',
      first: shotCount(before) + 1,
      shots: typed.map(({ shot }) => shot),
      night,
      nights,
      carried,
      says: nights.length > before.length ? unkeptLane(night.lane, lanes) : [],
    });
    return nights;
  });
  return answer as LoggedAnswer;
}

/** @throws {InputError} `missing-flag` */
function withLane(head: Partial<NightHead>, id: string): NightHead {
  const { lane } = head;
  if (lane === undefined)
    throw missingFlag(
      '--lane',
      `The first line of an evening says it: flarewise log ${id} 20 14 8 17 --lane house-easy.`,
    );
  return { ...head, lane };
}
