import { BOARD, LANE_LENGTH, LANE_WIDTH } from '../../../src/base/constants.js';
import { FOOT } from '../../../src/base/units.js';
import type { Surface } from '../../../src/motion/lane/surface.js';

/** What the ball rolls on, by methods. Positions in m (W), film in units of oil. */
export interface MethodSurface {
  readonly filmAt: (x: number, y: number) => number;
  readonly frictionUnder: (film: number) => number;
  /** Distances where friction jumps, ascending: a step of the integrator ends on each. */
  readonly breaks: readonly number[];
}

/** An oiled lane of one friction law as methods: its own spline over the nodes, the engine's exponential. */
export function withMethods({ film, stretches }: Surface): MethodSurface {
  const [{ oiled, dry, filmScale }, ...others] = stretches;
  if (others.length > 0) throw new Error('methods know one friction law');
  const perScale = -1 / filmScale;
  const drop = dry - oiled;
  return {
    filmAt: film ? splineOver(film) : () => 0,
    frictionUnder: (units) => oiled + drop * Math.exp(units * perScale),
    breaks: [],
  };
}

const CELL_X = BOARD / 2;
const CELL_Y = FOOT / 2;

/** The tensor quadratic B-spline over a lane’s nodes; de Boor, A Practical Guide to Splines, ch. IX. */
function splineOver(nodes: Float64Array): MethodSurface['filmAt'] {
  const columns = Math.round(LANE_WIDTH / CELL_X) + 3;
  const lastI = columns - 2;
  const lastJ = Math.round(LANE_LENGTH / CELL_Y) + 1;
  return (x, y) => {
    const s = within((x + LANE_WIDTH / 2) / CELL_X + 1, lastI);
    const t = within(y / CELL_Y + 1, lastJ);
    const i = Math.floor(s + 0.5);
    const j = Math.floor(t + 0.5);
    const u = s - i;
    const v = t - j;
    const a0 = 0.5 * (0.5 - u) * (0.5 - u);
    const a1 = 0.75 - u * u;
    const a2 = 0.5 * (0.5 + u) * (0.5 + u);
    const at = (j - 1) * columns + i - 1;
    const up = at + columns;
    const top = up + columns;
    return (
      0.5 * (0.5 - v) * (0.5 - v) * (a0 * nodes[at] + a1 * nodes[at + 1] + a2 * nodes[at + 2]) +
      (0.75 - v * v) * (a0 * nodes[up] + a1 * nodes[up + 1] + a2 * nodes[up + 2]) +
      0.5 * (0.5 + v) * (0.5 + v) * (a0 * nodes[top] + a1 * nodes[top + 1] + a2 * nodes[top + 2])
    );
  };
}

/** Keeps a grid coordinate where all three taps exist: from node 1 to the last but one. NaN stays NaN. */
const within = (s: number, last: number): number => Math.max(1, Math.min(last, s));
