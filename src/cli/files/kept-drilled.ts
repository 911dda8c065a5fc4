import type { KeptBall } from '../../answer/adjust/rolled-remedies.js';
import { InputError, quotedTyped } from '../../base/errors.js';
import { keptLayoutOn, layoutOnBall } from '../../prepare/layout-on-ball.js';
import { type Shelf, type Shelved, shelvedAs } from '../../records/read/shelf.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { DrilledLayout } from '../../records/schemas/drilled-layout.js';
import type { Lane } from '../../records/schemas/lane.js';
import type { Night } from '../../records/schemas/shot-log.js';
import { readLayout } from '../../records/text/written-layout.js';
import { missingFlag } from '../flags/flags.js';
import type { AdjustOptions } from '../flags/options.js';
import type { Terminal } from '../terminal/terminal.js';
import { loadBowler, loadLane } from './load-record.js';
import { openLog } from './shot-log.js';
import { keptLayouts, wholeShelf } from './whole-shelf.js';

/** A drilled ball that is kept, with all that its record names. */
interface KeptDrilled {
  readonly kept: KeptBall;
  readonly bowler: Bowler;
  readonly lane: Lane;
  /** The last night of this ball on this lane; null for none. */
  readonly night: Night | null;
  /** The bowler's other drilled balls. */
  readonly others: readonly KeptBall[];
}

/**
 * Finds the drilled ball that is meant, and whose it is, and the lane: the one that is named, or that of its last logged night.
 *
 * @throws {InputError} `missing-flag`, `no-such-record`
 */
export function keptDrilled(options: AdjustOptions, terminal: Terminal): KeptDrilled {
  if (options.ball === undefined)
    throw missingFlag('--ball', 'Name the drilled layout by its id; flarewise shelf lists them.');
  const { id, record } = openLog(options.ball, terminal);
  const shelf = wholeShelf(terminal);
  const ball = shelvedAs(shelf.balls, record.ball)?.record;
  if (!ball) throw notKept('ball', record.ball, id, 'Import it: flarewise shelf import FILE.');
  const owner = shelvedAs(shelf.bowlers, record.bowler);
  const bowler = options.bowler === undefined ? owner?.record : loadBowler(options.bowler, terminal);
  if (!bowler) throw notKept('bowler', record.bowler, id, 'Import it, or give --bowler.');
  const { lane, night } = laneAndNight(record, options.lane, shelf, terminal);
  const called = [record.bowler, ...(owner ? [owner.id, owner.record.name] : [])];
  return {
    kept: { id, ball, layout: layoutOnBall(readLayout(record.layout), ball) },
    bowler,
    lane,
    night,
    others: keptLayouts(terminal).flatMap((each) =>
      each.id !== id && called.includes(each.record.bowler) ? drilledOf(each, shelf) : [],
    ),
  };
}

function laneAndNight(
  { nights }: DrilledLayout,
  given: string | undefined,
  shelf: Shelf,
  terminal: Terminal,
): { readonly lane: Lane; readonly night: Night | null } {
  const logged = nights.filter(({ shots }) => shots.length > 0);
  if (given !== undefined) {
    const lane = loadLane(given, terminal);
    const isThere = ({ lane: where }: Night): boolean =>
      where === given || where === lane.name || shelvedAs(shelf.lanes, where)?.record.name === lane.name;
    return { lane, night: logged.findLast(isThere) ?? null };
  }
  const night = logged.at(-1);
  if (!night) throw missingFlag('--lane', 'No night of this ball is logged: say on which lane.');
  const lane = shelvedAs(shelf.lanes, night.lane)?.record;
  if (!lane)
    throw missingFlag(
      '--lane',
      `Its last night was on ${quotedTyped(night.lane)}, of which no record is kept.`,
    );
  return { lane, night };
}

/** None where the ball is not kept, or cannot have this layout. */
function drilledOf({ id, record }: Shelved<DrilledLayout>, { balls }: Shelf): KeptBall[] {
  const ball = shelvedAs(balls, record.ball)?.record;
  const layout = ball && keptLayoutOn(record, ball);
  return ball && layout ? [{ id, ball, layout }] : [];
}

const notKept = (what: string, name: string, id: string, hint: string): InputError =>
  new InputError('no-such-record', {
    field: `the ${what} of ${id}`,
    rule: 'must be one that is kept, or a demo',
    got: quotedTyped(name),
    hint,
  });
