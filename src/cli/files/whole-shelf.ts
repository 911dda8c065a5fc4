import { formatFault, InputError } from '../../base/errors.js';
import { visible } from '../../base/visible.js';
import { keptIds, pathOf } from '../../records/home/saved-records.js';
import { readBall } from '../../records/read/read-ball.js';
import { readRecord } from '../../records/read/read-record.js';
import type { RecordKind } from '../../records/read/record-kinds.js';
import { demoShelf, type Shelf, type Shelved } from '../../records/read/shelf.js';
import type { Ball } from '../../records/schemas/ball.js';
import { bowlerSchema } from '../../records/schemas/bowler.js';
import { type DrilledLayout, drilledLayoutSchema } from '../../records/schemas/drilled-layout.js';
import { laneSchema } from '../../records/schemas/lane.js';
import type { Terminal } from '../terminal/terminal.js';
import { homeOf } from './home.js';

/** Kept records first, then the demos whose id no kept one has. Damaged ones are named on stderr and left out. */
export function wholeShelf(terminal: Terminal): Shelf {
  const demos = demoShelf();
  return {
    bowlers: joined(
      kept(terminal, 'bowler', (path) => readRecord(bowlerSchema, path)),
      demos.bowlers,
    ),
    balls: joined(kept(terminal, 'ball', readBall), demos.balls),
    lanes: joined(
      kept(terminal, 'lane', (path) => readRecord(laneSchema, path)),
      demos.lanes,
    ),
  };
}

/** The balls a person keeps, without those of this name: to try where a layout is not enough. */
export const otherKeptBalls = ({ name }: Pick<Ball, 'name'>, terminal: Terminal): readonly Ball[] =>
  kept(terminal, 'ball', readBall).flatMap(({ record }) => (record.name === name ? [] : [record]));

/** The drilled layouts a person keeps, with their shots. */
export const keptLayouts = (terminal: Terminal): readonly Shelved<DrilledLayout>[] =>
  kept(terminal, 'layout', (path) => readRecord(drilledLayoutSchema, path));

/** Kept records of a kind; one that is damaged is named and left out. */
function kept<T>(terminal: Terminal, kind: RecordKind, read: (path: string) => T): readonly Shelved<T>[] {
  const home = homeOf(terminal);
  return keptIds(home, kind).flatMap((id) => {
    try {
      return [{ id, record: read(pathOf(home, { kind, id })) }];
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const [fault] = error.faults;
      terminal.stderr.write(`${kind}/${id} is left out, for it is damaged: ${visible(formatFault(fault))}\n`);
      return [];
    }
  });
}

const joined = <T>(own: readonly Shelved<T>[], others: readonly Shelved<T>[]): readonly Shelved<T>[] => [
  ...own,
  ...others.filter(({ id }) => !own.some((each) => each.id === id)),
];
