import { InputError, quotedTyped } from '../../base/errors.js';
import { hypot } from '../../math/hypot.js';
import { changeKept } from '../../records/home/change-records.js';
import { keptIds, readKept } from '../../records/home/saved-records.js';
import type { KnownLane } from '../../records/log/odd-head.js';
import type { ReleaseSpeed } from '../../records/log/odd-numbers.js';
import { parseRecord } from '../../records/read/read-record.js';
import { demoLanes } from '../../records/read/shelf.js';
import { type DrilledLayout, drilledLayoutSchema } from '../../records/schemas/drilled-layout.js';
import type { Night } from '../../records/schemas/shot-log.js';
import { ABOUT_DEVIATION } from '../../records/shared/about-deviation.js';
import { localDay } from '../flags/date-flag.js';
import { didYouMean } from '../terminal/did-you-mean.js';
import type { Terminal } from '../terminal/terminal.js';
import { homeOf } from './home.js';
import { loadBowler } from './load-record.js';

/** The log of one drilled ball, as it stood when it was opened, with what else is known of it. */
export interface ShotLog {
  readonly id: string;
  readonly record: DrilledLayout;
  /** The logs of this bowler's other balls. */
  readonly others: readonly (readonly Night[])[];
  readonly lanes: readonly KnownLane[];
  /** Null where the bowler is in no record that is kept. */
  readonly release: ReleaseSpeed | null;
  /** The day by the clock. */
  readonly today: string;
}

/**
 * Opens the log of a kept drilled layout.
 *
 * @throws {InputError} `no-such-record`, or when its file is damaged
 */
export function openLog(word: string, terminal: Terminal): ShotLog {
  const home = homeOf(terminal);
  const ids = keptIds(home, 'layout');
  const id = word.replace(/^layout\//, '');
  if (!ids.includes(id))
    throw new InputError('no-such-record', {
      field: 'the drilled layout',
      rule: 'must be one that is kept',
      got: quotedTyped(word),
      hint: `${didYouMean(id, ids)}${ids.length > 0 ? `Kept: ${ids.join(', ')}.` : 'flarewise shelf add keeps one.'}`,
    });
  const record = readKept(home, 'layout', id);
  const others = ids.flatMap((other) => {
    const each = other === id ? null : orNull(() => readKept(home, 'layout', other));
    return each?.bowler === record.bowler ? [each.nights] : [];
  });
  return {
    id,
    record,
    others,
    lanes: knownLanes(terminal),
    release: releaseOf(record.bowler, terminal),
    today: localDay(new Date()),
  };
}

/** All lanes that are kept, and the demos. */
export function knownLanes(terminal: Terminal): readonly KnownLane[] {
  const home = homeOf(terminal);
  const kept = keptIds(home, 'lane').flatMap((id) => {
    const lane = orNull(() => readKept(home, 'lane', id));
    return lane ? [{ id, patternFt: lane.patternFt }] : [];
  });
  return [...kept, ...demoLanes().map(({ id, record }) => ({ id, patternFt: record.patternFt }))];
}

/** Changes the nights of a log as they are now, which nothing else changes meanwhile. */
export const changeNights = (
  id: string,
  terminal: Terminal,
  change: (nights: readonly Night[]) => readonly Night[],
): Promise<void> =>
  changeKept(homeOf(terminal), 'layout', id, (record) =>
    parseRecord(drilledLayoutSchema, { ...record, nights: change(record.nights) }, 'command line'),
  );

function releaseOf(bowler: string, terminal: Terminal): ReleaseSpeed | null {
  const found = orNull(() => loadBowler(bowler, terminal));
  if (!found) return null;
  const scatter = found.scatter?.speedMph ?? ABOUT_DEVIATION.speedMph;
  return { mph: found.speedMph, deviation: hypot(found.uncertainty?.speedMph ?? 0, scatter) };
}

/** What is read, or null for what cannot be: here it only helps. */
function orNull<T>(read: () => T): T | null {
  try {
    return read();
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}
