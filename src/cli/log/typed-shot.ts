import type { Oddity } from '../../records/answers/statements/log-remarks.js';
import { type HeadKept, headOf, type NightHead } from '../../records/log/add-shot.js';
import { lastHead } from '../../records/log/last-head.js';
import { oddDay } from '../../records/log/odd-day.js';
import { oddHead } from '../../records/log/odd-head.js';
import { oddShot } from '../../records/log/odd-shot.js';
import { headFromOtherSide, shotFromOtherSide } from '../../records/log/other-side.js';
import type { LoggedShot, Night } from '../../records/schemas/shot-log.js';
import type { ShotLog } from '../files/shot-log.js';

/** A shot as typed, and what was typed of its night. */
export interface TypedShot {
  readonly shot: LoggedShot;
  readonly given: Partial<NightHead>;
  /** Whether that is all there is to know of its night, so that nothing is taken over from the line before. */
  readonly isWhole?: true;
}

/** What looks odd about a shot as typed. */
interface OddTyped {
  readonly oddities: readonly Oddity[];
  /** The same shot with its boards counted from the other side, where its path is sound then. */
  readonly fromOtherSide: TypedShot | null;
}

/** The night of a shot by what was typed and by the nights before it. */
export const headAfter = (
  { given, isWhole }: TypedShot,
  nights: readonly Night[],
  { others }: Pick<ShotLog, 'others'>,
): HeadKept => (isWhole ? { head: given, carried: [] } : headOf(given, lastHead(nights, others, given.on)));

/** What looks odd about a shot and its night; nothing of one that the person has confirmed. */
export function oddTyped(typed: TypedShot, log: ShotLog): OddTyped {
  const { shot, given } = typed;
  if (shot.confirmed) return { oddities: [], fromOtherSide: null };
  const { head } = headAfter(typed, log.record.nights, log);
  const { oddities, fitsFromOtherSide } = oddShot(shot, head, log.release);
  return {
    oddities: [...oddDay(given.on, log.record, log.today), ...oddHead(given, head, log.lanes), ...oddities],
    fromOtherSide: fitsFromOtherSide ? turned(typed) : null,
  };
}

/** A shot whose boards were counted from the other side. */
export const turned = ({ shot, given, ...others }: TypedShot): TypedShot => ({
  ...others,
  shot: shotFromOtherSide(shot),
  given: headFromOtherSide(given),
});

/** A shot that the person has confirmed. */
export const confirmed = (typed: TypedShot): TypedShot => ({
  ...typed,
  shot: { ...typed.shot, confirmed: true },
});
