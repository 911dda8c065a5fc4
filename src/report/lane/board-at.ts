import type { PathPoint } from '../../records/answers/answer.js';

/** How far beyond its ends a path still counts, so that a drawing's first and last row show it, ft. */
const REACH_FT = 1.5;

/** Board of the path at a distance, by straight lines between its points; null where it never was. */
export function boardAt(path: readonly PathPoint[], ft: number): number | null {
  const [first, last] = [path[0], path.at(-1)];
  if (!first || !last || ft < first.distanceFt - REACH_FT || ft > last.distanceFt + REACH_FT) return null;
  const i = path.findIndex(({ distanceFt }) => distanceFt >= ft);
  if (i <= 0) return i === 0 ? first.board : last.board;
  const [before, after] = [path[i - 1], path[i]];
  const share = (ft - before.distanceFt) / (after.distanceFt - before.distanceFt);
  return before.board + share * (after.board - before.board);
}
