import { InputError } from '../errors.js';
import type { Ball } from '../records/ball.js';
import { bowlerSchema } from '../records/bowler.js';
import { laneSchema } from '../records/lane.js';
import { readBall } from '../records/read-ball.js';
import { readRecord } from '../records/read-record.js';
import { keptIds, pathOf } from '../records/saved-records.js';
import { demoShelf, type Shelf, type Shelved } from '../records/shelf.js';
import { homeOf } from './home.js';
import type { Terminal } from './terminal.js';

/** Kept records first, then the demos whose id no kept one has. */
export function wholeShelf(home: string): Shelf {
  const demos = demoShelf();
  return {
    bowlers: joined(
      kept(home, 'bowler', (path) => readRecord(bowlerSchema, path)),
      demos.bowlers,
    ),
    balls: joined(kept(home, 'ball', readBall), demos.balls),
    lanes: joined(
      kept(home, 'lane', (path) => readRecord(laneSchema, path)),
      demos.lanes,
    ),
  };
}

/** The balls a person keeps. */
export const keptBalls = (terminal: Terminal): readonly Ball[] =>
  kept(homeOf(terminal), 'ball', readBall).map(({ record }) => record);

/** Kept records of a kind; a file that is damaged is left out. */
function kept<T>(
  home: string,
  kind: 'bowler' | 'ball' | 'lane',
  read: (path: string) => T,
): readonly Shelved<T>[] {
  return keptIds(home, kind).flatMap((id) => {
    try {
      return [{ id, record: read(pathOf(home, { kind, id })) }];
    } catch (error) {
      if (error instanceof InputError) return [];
      throw error;
    }
  });
}

const joined = <T>(own: readonly Shelved<T>[], others: readonly Shelved<T>[]): readonly Shelved<T>[] => [
  ...own,
  ...others.filter(({ id }) => !own.some((each) => each.id === id)),
];
