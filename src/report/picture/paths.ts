import { boardAt } from '../lane/board-at.js';
import { part } from '../scene/draw.js';
import type { GroupNode, Stroke } from '../scene/scene.js';
import { type Point, polyline } from '../scene/shapes.js';
import { PHASES, type Phase, phaseSpans } from '../wording/phases.js';
import { type Compared, partOf } from './compared.js';
import { signDisc } from './sign-disc.js';

/** Where a board at a distance lies in a picture. */
export type PointAt = (board: number, ft: number) => Point;

/** Phases by the texture of their line; the hook is dashed. */
export const PHASE_STROKES: Readonly<Record<Phase, Omit<Stroke, 'ink'>>> = {
  skid: { width: 1.3 },
  hook: { width: 2.2, dash: [5, 2.6] },
  roll: { width: 3.4 },
};

/** Width of the ground that is kept clear around a path, so that what lies below it does not run into it. */
const CLEAR = 7;

/** Where paths get their signs, ft: between these, each at a distance of its own. */
const SIGNS_FT = [10, 56] as const;

/** The paths of layouts, each in its phases, the first on top; over all of them their signs. */
export function pathsOf(compared: readonly Compared[], place: PointAt): GroupNode[] {
  const ends = compared.map(({ layout }) => layout.path.at(-1)?.distanceFt ?? 0);
  const lines = compared.map((each, i) => pathOf(each, place, ends[i]));
  const signs = compared.map((each, i): GroupNode => {
    const ft = Math.min(signFt(i, compared.length), ends[i]);
    const board = boardAt(each.layout.path, ft);
    return part(partOf(each.sign), ...(board === null ? [] : signDisc(each, place(board, ft))));
  });
  return [...lines.reverse(), ...signs.reverse()];
}

const signFt = (i: number, count: number): number =>
  SIGNS_FT[1] - ((i + 0.5) / count) * (SIGNS_FT[1] - SIGNS_FT[0]);

/** A path as a line for each phase. */
function pathOf(
  { sign, ink, layout: { path, reaction } }: Compared,
  place: PointAt,
  endFt: number,
): GroupNode {
  const spans = phaseSpans(reaction, endFt);
  const along = ([from, to]: readonly [number, number]): string => {
    if (to <= from) return polyline([]);
    const between = path.map(({ distanceFt }) => distanceFt).filter((ft) => ft > from && ft < to);
    return polyline([from, ...between, to].map((ft) => place(boardAt(path, ft) as number, ft)));
  };
  const drawn = (name: string, d: string, stroke: Stroke): GroupNode =>
    part(`${name} ${sign}`, { kind: 'path', d, stroke });
  return part(
    partOf(sign),
    drawn('clear of', along([0, endFt]), { ink: 'paper', width: CLEAR }),
    ...PHASES.map((phase) => drawn(phase, along(spans[phase]), { ink, ...PHASE_STROKES[phase] })),
  );
}
