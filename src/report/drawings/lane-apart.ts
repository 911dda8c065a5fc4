import type { PathPoint } from '../../records/answers/answer.js';
import { boardAt } from '../lane/board-at.js';
import { type Units, withUnit } from '../text/display-units.js';

/** A path with the sign it is drawn with. */
interface SignedPath {
  readonly sign: string;
  readonly path: readonly PathPoint[];
}

/** How far the paths of a drawing lie apart at most, and where: a drawing by whole boards may hide it. */
export function apartText([first, ...others]: readonly SignedPath[], { laneMark, boards }: Units): string {
  const gaps = others.flatMap(({ sign, path }) =>
    path.flatMap(({ distanceFt, board }) => {
      const there = first && boardAt(first.path, distanceFt);
      return typeof there === 'number' ? [{ sign, distanceFt, gap: Math.abs(board - there) }] : [];
    }),
  );
  const widest = gaps.reduce((a, b) => (b.gap > a.gap ? b : a), { sign: '', distanceFt: 0, gap: 0 });
  return (
    `Signs stand in every third row; where paths meet, ${first?.sign} is drawn. ` +
    (Number(boards.show(widest.gap)) === 0
      ? 'All paths are the same to a tenth of a board.'
      : `At most ${widest.sign} lies ${withUnit(widest.gap, boards)} beside ${first?.sign}, at ${withUnit(widest.distanceFt, laneMark)}.`)
  );
}
