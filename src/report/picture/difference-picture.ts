import { scaleLinear } from 'd3-scale';
import { boardAt } from '../lane/board-at.js';
import { LENGTH_FT } from '../lane/lane-marks.js';
import type { Scene, SceneNode } from '../scene/scene.js';
import { polyline } from '../scene/shapes.js';
import type { Units } from '../text/display-units.js';
import type { Compared } from './compared.js';
import { pathsOf } from './paths.js';

const WIDTH = 320;
const PLOT_X = [40, 308] as const;
const PLOT_Y = [200, 14] as const;
const TEXT = 12;

/** Differences are not blown up beyond this many boards to either side. */
const LEAST_SPAN = 0.5;

/** How far each path lies from the last one's, in boards: what the lane's picture hardly shows where layouts differ little. */
export function differencePicture(compared: readonly Compared[], { laneMark }: Units): Scene {
  const base = compared.at(-1) as Compared;
  const endFt = base.layout.path.at(-1)?.distanceFt ?? 0;
  const baseAt = (ft: number): number => boardAt(base.layout.path, ft) as number;
  const differences = compared.flatMap(({ layout: { path } }) =>
    path
      .filter(({ distanceFt }) => distanceFt <= endFt)
      .map(({ board, distanceFt }) => board - baseAt(distanceFt)),
  );
  const x = scaleLinear([0, LENGTH_FT], PLOT_X);
  const marks = scaleLinear([0, LENGTH_FT * laneMark.per], PLOT_X);
  const y = scaleLinear(
    [Math.min(-LEAST_SPAN, ...differences), Math.max(LEAST_SPAN, ...differences)],
    PLOT_Y,
  ).nice(5);
  const tick = (at: { x: number; y: number }, text: string, anchor: 'middle' | 'end'): SceneNode => ({
    kind: 'text',
    ...at,
    text,
    size: TEXT,
    anchor,
    ink: 'soft',
  });
  return {
    width: WIDTH,
    height: PLOT_Y[0] + 38,
    title: `Boards from the path of layout ${base.sign}`,
    description: `How far each path lies from that of layout ${base.sign} at each distance; up is toward higher boards.`,
    nodes: [
      ...y.ticks(5).flatMap((at): SceneNode[] => [
        {
          kind: 'path',
          d: polyline([
            [PLOT_X[0], y(at)],
            [PLOT_X[1], y(at)],
          ]),
          stroke: { ink: at === 0 ? 'soft' : 'faint', width: 0.6 },
        },
        tick({ x: PLOT_X[0] - 6, y: y(at) + 4 }, at > 0 ? `+${at}` : `${at}`, 'end'),
      ]),
      ...marks.ticks(6).map((at) => tick({ x: marks(at), y: PLOT_Y[0] + 16 }, `${at}`, 'middle')),
      tick(
        { x: (PLOT_X[0] + PLOT_X[1]) / 2, y: PLOT_Y[0] + 32 },
        `${laneMark.name} from the foul line`,
        'middle',
      ),
      ...pathsOf(compared, (board, ft) => [x(ft), y(board - baseAt(ft))], endFt),
    ],
  };
}
