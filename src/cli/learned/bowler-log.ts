import type { LoggedBall } from '../../learn/logged.js';
import { isMeant, type LeftOut, loggedBalls, type NightsMeant } from '../../learn/logged-balls.js';
import type { Shelf, Shelved } from '../../records/read/shelf.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { DrilledLayout } from '../../records/schemas/drilled-layout.js';
import type { Lane } from '../../records/schemas/lane.js';
import { keptLayouts, wholeShelf } from '../files/whole-shelf.js';
import type { Terminal } from '../terminal/terminal.js';

/** Nights of a bowler: as they are kept, and as they can be learned from. */
export interface BowlerLog {
  /** Drilled layouts with those of their nights that are meant. */
  readonly kept: readonly Shelved<DrilledLayout>[];
  readonly balls: readonly LoggedBall[];
  readonly leftOut: readonly LeftOut[];
}

/** Which nights are meant: on one lane, from a day on, with one kept drilled ball; all nights if none of these is given. */
interface Meant extends Pick<NightsMeant, 'since'> {
  readonly lane?: Lane | undefined;
  readonly layout?: string | undefined;
}

/** All drilled layouts with logged shots, and the records that they name. */
export interface KeptLogs {
  readonly layouts: readonly Shelved<DrilledLayout>[];
  readonly shelf: Shelf;
}

/** The logs that are kept; null where no shot is, which reads no other record. */
export function keptLogs(terminal: Terminal): KeptLogs | null {
  const layouts = keptLayouts(terminal).filter(({ record }) => record.nights.length > 0);
  return layouts.length === 0 ? null : { layouts, shelf: wholeShelf(terminal) };
}

/** What a bowler has logged, by the records that are kept; null where no shot of theirs is. */
export function bowlerLog(bowler: Bowler, meant: Meant, logs: KeptLogs | null): BowlerLog | null {
  if (logs === null) return null;
  const { shelf } = logs;
  const logged = logs.layouts.filter(({ id }) => (meant.layout ?? id) === id);
  const called = namesOf(shelf.bowlers, bowler);
  const nights = {
    since: meant.since,
    lanes: meant.lane && namesOf(shelf.lanes, meant.lane),
  };
  const own = logged.filter(({ record }) => called.includes(record.bowler));
  const kept = own
    .map(({ id, record }) => ({
      id,
      record: { ...record, nights: record.nights.filter((night) => isMeant(night, nights)) },
    }))
    .filter(({ record }) => record.nights.length > 0);
  return own.length === 0 ? null : { kept, ...loggedBalls(kept, shelf, called) };
}

/** What other records call a record: its name, and the ids of all of that name. */
const namesOf = <T extends { readonly name: string }>(
  shelf: readonly Shelved<T>[],
  { name }: T,
): readonly string[] => [name, ...shelf.flatMap(({ id, record }) => (record.name === name ? [id] : []))];
