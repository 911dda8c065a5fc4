import { isDeepStrictEqual } from 'node:util';
import type { LoggedShot, Night } from '../schemas/shot-log.js';

/** What a log holds about a night in addition to its shots. */
export type NightHead = Omit<Night, 'shots'>;

/** What is known about a night, and which parts of it were not typed but carried over from earlier shots. */
export interface HeadKept {
  /** Without a lane where none is known. */
  readonly head: Partial<NightHead>;
  readonly carried: readonly (keyof NightHead)[];
}

const CARRIED = ['lane', 'games', 'targetBoard', 'patternFt', 'readingErrors'] as const;

/** Fields that belong to one lane and its oil. */
const OF_LANE: readonly string[] = ['games', 'patternFt'];

/**
 * What is known of the night of a shot: what was typed, and for the rest what the line before said, if that was on the same evening.
 * Reading errors go on over evenings, what belongs to a lane ends with it.
 *
 * @param last  the night of the line before: of this ball, or else of another ball of this bowler
 */
export function headOf(given: Partial<NightHead>, last: NightHead | null): HeadKept {
  const isSameEvening = last?.on === given.on;
  const isSameLane = given.lane === undefined || given.lane === last?.lane;
  const carried = CARRIED.filter(
    (field) =>
      given[field] === undefined &&
      last?.[field] !== undefined &&
      (field === 'readingErrors' || (isSameEvening && (isSameLane || !OF_LANE.includes(field)))),
  );
  const before = Object.fromEntries(carried.map((field) => [field, last?.[field]]));
  return { head: withGiven(before, given, last?.readingErrors), carried };
}

/**
 * What is known of a night, with what is given of it in its place. Reading errors are given one by one; none at all take back those
 * that were known.
 */
export function withGiven<H extends Partial<NightHead>>(
  head: H,
  given: Partial<NightHead>,
  known: NightHead['readingErrors'] = head.readingErrors,
): H {
  if (given.readingErrors === undefined) return { ...head, ...given };
  const { readingErrors: _, ...whole } = { ...head, ...given };
  const isReset = Object.keys(given.readingErrors).length === 0;
  return { ...whole, ...(isReset ? {} : { readingErrors: { ...known, ...given.readingErrors } }) } as H;
}

/** A log with one more shot: in its last night where that has the same head, else in a night of its own. */
export function addShot(nights: readonly Night[], head: NightHead, shot: LoggedShot): readonly Night[] {
  const last = nights.at(-1);
  return last && isDeepStrictEqual(headAlone(last), head)
    ? [...nights.slice(0, -1), { ...last, shots: [...last.shots, shot] }]
    : [...nights, { ...head, shots: [shot] }];
}

/** A night without its shots. */
export function headAlone({ shots: _, ...head }: Night): NightHead {
  return head;
}

/** How many shots a log holds. */
export const shotCount = (nights: readonly Night[]): number =>
  nights.reduce((sum, { shots }) => sum + shots.length, 0);
