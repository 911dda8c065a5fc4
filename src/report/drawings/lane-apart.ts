import type { PathPoint } from '../../records/answers/answer.js';
import { boardAt } from '../lane/board-at.js';
import { type Units, withUnit } from '../text/display-units.js';

/** A path and the character that draws it. */
interface SignedPath {
  readonly sign: string;
  readonly path: readonly PathPoint[];
}

/** How a drawing by whole boards is read, and what it may hide. */
export const drawnApartText = (shots: readonly SignedPath[], units: Units): string =>
  `Signs stand in every third row; where paths meet, ${shots[0]?.sign} is drawn. ${apartText(shots, units)}`;

/** The greatest distance between paths, and where it is. */
export function apartText([first, ...others]: readonly SignedPath[], { laneMark, boards }: Units): string {
  const gaps = others.flatMap(({ sign, path }) =>
    path.flatMap(({ distanceFt, board }) => {
      const there = first && boardAt(first.path, distanceFt);
      return typeof there === 'number' ? [{ sign, distanceFt, gap: Math.abs(board - there) }] : [];
    }),
  );
  const widest = gaps.reduce((a, b) => (b.gap > a.gap ? b : a), { sign: '', distanceFt: 0, gap: 0 });
  return Number(boards.show(widest.gap)) === 0
    ? 'All paths are the same to a tenth of a board.'
    : `Paths differ most at ${withUnit(widest.distanceFt, laneMark)}: ${widest.sign} lies ${withUnit(widest.gap, boards)} from ${first?.sign}.`;
}
