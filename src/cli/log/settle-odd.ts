import { InputError } from '../../base/errors.js';
import { askOdd } from '../../interview/ask/ask-odd.js';
import type { Desk } from '../../interview/ask/desk.js';
import type { Units } from '../../report/text/display-units.js';
import { shotText } from '../../report/text/shot-text.js';
import { sayAll } from '../../report/wording/say.js';
import type { ShotLog } from '../files/shot-log.js';
import { confirmed, oddTyped, type TypedShot } from './typed-shot.js';

/** Asks a person at their terminal. */
export type WithDesk = <T>(ask: (desk: Desk) => Promise<T>) => Promise<T>;

/**
 * The shot to keep: as typed where nothing looks odd; else as the person says, where they can be asked.
 *
 * @param desk  null where there is no one to ask
 * @returns null for a shot that is not to be kept
 * @throws {InputError} `odd-shot` where there is no one to ask
 */
export async function settleOdd(
  typed: TypedShot,
  log: ShotLog,
  units: Units,
  withDesk: WithDesk | null,
): Promise<TypedShot | null> {
  const { oddities, fromOtherSide } = oddTyped(typed, log);
  if (oddities.length === 0) return typed;
  const reasons = sayAll(oddities, units);
  const shot = shotText(typed.shot, units);
  if (!withDesk) throw oddShotFault('the shot', shot, reasons, fromOtherSide !== null);
  const otherSide = fromOtherSide === null ? null : shotText(fromOtherSide.shot, units);
  const reply = await withDesk((desk) => askOdd(shot, reasons, otherSide, desk));
  switch (reply) {
    case 'it-was-so':
      return confirmed(typed);
    case 'other-side':
      return fromOtherSide;
    case 'not-so':
      return null;
  }
}

/** What is wrong with a shot that looks odd, where there is no one to ask. */
export const oddShotFault = (
  field: string,
  shot: string,
  reasons: readonly string[],
  fitsFromOtherSide: boolean,
): InputError =>
  new InputError('odd-shot', {
    field,
    rule: 'looks odd and is not kept',
    got: shot,
    hint: [
      ...reasons,
      ...(fitsFromOtherSide
        ? ['If its boards were counted from the other side, --other-side turns them round.']
        : []),
      'If it was so, --really keeps it.',
    ].join(' '),
  });
