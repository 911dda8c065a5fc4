import { Solver } from 'odex';
import { BOARD, GRAVITY } from '../../src/constants.js';
import { RATES_SIZE, STATE_SIZE, X, Y } from '../../src/motion/state.js';
import { usualRelease } from '../motion/bodies.js';
import { demoPattern } from '../motion/patterns.js';
import { DRILLED, type Engines, throws } from './built-motion.js';
import { coarsest } from './coarsest.js';
import { row, timeTogether } from './timing.js';

/** Fast enough, and a lane slippery enough, to slide all the way: the adaptive solver knows no end of slip. */
const SHOTS = throws({ ...usualRelease, speed: 10 }, 20);
const DRY = 0.12;

const PROBES = [0, 3, 7, 11, 15];

/** Errors at which the two are compared, m at the pins: the target for answers, and a thousandth of it. */
const ALLOWED = [0.05 * BOARD, 5e-5 * BOARD];

const STEPS = [0.048, 0.04, 0.032, 0.024, 0.016, 0.012, 0.008, 0.006, 0.004, 0.003, 0.002, 0.001];
const TOLERANCES = Array.from({ length: 40 }, (_, i) => 10 ** (-1 - i / 4));

/**
 * Whole slides over an oiled lane, friction of the lane alone, by `rollShot` and by odex, each with the coarsest setting
 * whose worst error at the pins is below what is allowed.
 *
 * odex is given flarewise's own equations and film, and is told when the ball arrives; it keeps only its end, `rollShot`
 * finds the arrival and keeps the samples.
 */
export function againstOdex(engines: Engines, print: (line: string) => void): void {
  const { rollShot, oiledLane, slidingEquations, principalBody, launchState, Workspace } = engines;
  const lane = oiledLane({ ...demoPattern, frictionDry: DRY });
  const ball = principalBody(DRILLED);
  const equations = slidingEquations(ball, GRAVITY);
  const workspace = new Workspace();
  const ours = (n: number, step: number): { x: number; time: number } => {
    const { release, launch } = SHOTS[n % SHOTS.length];
    const shot = rollShot(
      DRILLED,
      release,
      launch,
      lane,
      { step, freshSurface: null, halfWidth: 9 },
      workspace,
    );
    const end = shot.x.length - 1;
    if (shot.rollStart >= 0 || shot.outcome !== 'pins') throw new Error('the shot should slide to the pins');
    return { x: shot.x[end], time: shot.time[end] };
  };
  const truth = SHOTS.map((_, n) => ours(n, 1e-4));
  const state = new Float64Array(STATE_SIZE);
  const rates = new Float64Array(RATES_SIZE);
  const theirs = (n: number, tolerance: number): number => {
    const { release, launch } = SHOTS[n % SHOTS.length];
    const solver = new Solver(STATE_SIZE);
    solver.absoluteTolerance = solver.relativeTolerance = tolerance;
    const { y } = solver.solve(
      (_, s) => {
        state.set(s);
        equations(rates, state, lane.frictionUnder(lane.filmAt(state[X], state[Y])));
        return Array.from(rates.subarray(0, STATE_SIZE));
      },
      0,
      [...launchState(ball, release, launch)],
      truth[n % SHOTS.length].time,
    );
    return y[X];
  };

  const worst = (end: (n: number) => number): number =>
    Math.max(...PROBES.map((n) => Math.abs(end(n) - truth[n].x)));
  for (const allowed of ALLOWED) {
    const step = coarsest(STEPS, (h) => worst((n) => ours(n, h).x) <= allowed);
    const tolerance = coarsest(TOLERANCES, (tol) => worst((n) => theirs(n, tol)) <= allowed);
    const [our, their] = timeTogether([(n) => ours(n, step), (n) => theirs(n, tolerance)], 60, 25);
    const error = (m: number): string => `${(m / BOARD).toExponential(1)} board off`;
    print(`a slide to the pins over oil, at most ${error(allowed)}`);
    print(row(`rollShot, ${1000 * step} ms, ${error(worst((n) => ours(n, step).x))}`, our));
    print(row(`odex, ${tolerance.toExponential(0)}, ${error(worst((n) => theirs(n, tolerance)))}`, their));
    print(`  odex takes ${(their.median / our.median).toFixed(1)} times as long`);
  }
}
