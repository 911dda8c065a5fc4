import { Solver } from 'odex';
import { BOARD, GRAVITY } from '../../src/base/constants.js';
import type { FreshSurface } from '../../src/motion/lane/fresh-surface.js';
import { PHASE, RATES_SIZE, STATE_SIZE, X, Y } from '../oracles/shot-classes/state.js';
import { usualRelease } from '../support/bodies.js';
import { demoPattern } from '../support/patterns.js';
import { DRILLED, type Engines, throws } from './built-motion.js';
import { coarsest } from './coarsest.js';
import { row, timeTogether } from './timing.js';

/** Fast enough, and a lane slippery enough, to slide all the way: the adaptive solver knows no end of slip. */
const SHOTS = throws({ ...usualRelease, speed: 10 }, 20);
const DRY = 0.12;

const PROBES = [0, 3, 7, 11, 15];

const STEPS = [0.048, 0.04, 0.032, 0.024, 0.016, 0.012, 0.008, 0.006, 0.004, 0.003, 0.002, 0.001];
const TOLERANCES = Array.from({ length: 40 }, (_, i) => 10 ** (-1 - i / 4));

/** Errors at which slides over the lane's oil alone are compared, m at the pins: the target for answers, and a thousandth. */
const ALLOWED = [0.05 * BOARD, 5e-5 * BOARD];

/** Oil that does not wear off: odex is given the rings as they are in the end. */
const CARRIED: FreshSurface = { bandWidth: 0.00635, carriedShare: 0.15, wornPerPass: 0 };

/**
 * Whole slides over an oiled lane by `rollShot` and by odex, which gets the loosest tolerance that errs no more at the pins: with the oil that comes back on the ball, and with the lane's own alone.
 *
 * odex is given flarewise's own equations, film and rings (those of the converged path, since it lays none), and is told when
 * the ball arrives; it keeps only its end, `rollShot` finds the arrival and keeps the samples.
 */
export function againstOdex(engines: Engines, print: (line: string) => void): void {
  const { ANSWER_STEP } = engines;
  const carrying = slides(engines, CARRIED);
  const smooth = slides(engines, null);
  compare('its own oil coming back, at the setting for answers', carrying, ANSWER_STEP, print);
  for (const allowed of ALLOWED) {
    const step = coarsest(STEPS, (h) => smooth.worst((n) => smooth.ours(n, h)) <= allowed);
    compare('the oil of the lane alone', smooth, step, print);
  }
}

type End = (n: number, setting: number) => number;

/** Ends of slides at the pins, m, by either engine with a step (s) or a tolerance. */
interface Slides {
  readonly ours: End;
  readonly theirs: End;
  readonly worst: (end: (n: number) => number) => number;
}

function slides(engines: Engines, freshSurface: FreshSurface | null): Slides {
  const { rollLeanShot, oiledLane, principalBody, launchState, Workspace, classes } = engines;
  const { slidingEquations, ContactKinematics, Places, withMethods, rollByClasses } = classes;
  const lane = oiledLane({ ...demoPattern, frictionDry: DRY });
  const methods = withMethods(lane);
  const ball = principalBody(DRILLED);
  const equations = slidingEquations(ball, GRAVITY);
  const workspace = new Workspace();
  const roll = (n: number, step: number) => {
    const { release, launch } = SHOTS[n % SHOTS.length];
    const settings = { step, freshSurface, halfWidth: 9 };
    const shot = rollLeanShot(DRILLED, release, launch, lane, settings, workspace);
    if (shot.rollStart >= 0 || shot.outcome !== 'pins') throw new Error('the shot should slide to the pins');
    return shot;
  };
  const ours: End = (n, step) => roll(n, step).x.at(-1)!;

  const converged = SHOTS.map((_, n) => {
    const { release, launch } = SHOTS[n];
    const own = new classes.Workspace();
    const settings = { step: 1e-4, freshSurface, halfWidth: 9 };
    const shot = rollByClasses(DRILLED, release, launch, methods, settings, own);
    return { x: shot.x.at(-1)!, time: shot.time.at(-1)!, rings: own.rings };
  });
  const state = new Float64Array(STATE_SIZE);
  const rates = new Float64Array(RATES_SIZE);
  const kinematics = new ContactKinematics();
  const place = new Places(1);
  place.count = 1;
  const carriedHere = (rings: (typeof converged)[number]['rings']): number => {
    kinematics.read(state);
    place.phase[0] = state[PHASE];
    place.contact_P.set(kinematics.contact_P);
    rings.expect(kinematics.contact_P, kinematics.axis_P, state[PHASE], 0);
    rings.meet(place);
    return place.carried[0];
  };
  const theirs: End = (n, tolerance) => {
    const { release, launch } = SHOTS[n % SHOTS.length];
    const { time, rings } = converged[n % SHOTS.length];
    const solver = new Solver(STATE_SIZE);
    solver.absoluteTolerance = solver.relativeTolerance = tolerance;
    const { y } = solver.solve(
      (_, s) => {
        state.set(s);
        const film = methods.filmAt(state[X], state[Y]) + (freshSurface ? carriedHere(rings) : 0);
        equations(rates, state, methods.frictionUnder(film));
        return Array.from(rates.subarray(0, STATE_SIZE));
      },
      0,
      [...launchState(ball, release, launch)],
      time,
    );
    return y[X];
  };
  return {
    ours,
    theirs,
    worst: (end) => Math.max(...PROBES.map((n) => Math.abs(end(n) - converged[n].x))),
  };
}

function compare(
  name: string,
  { ours, theirs, worst }: Slides,
  step: number,
  print: (line: string) => void,
): void {
  const allowed = worst((n) => ours(n, step));
  const tolerance = coarsest(TOLERANCES, (tol) => worst((n) => theirs(n, tol)) <= allowed);
  const [our, their] = timeTogether([(n) => ours(n, step), (n) => theirs(n, tolerance)], 25, 10);
  const error = (m: number): string => `${(m / BOARD).toExponential(1)} board off`;
  print(`a slide to the pins over oil, ${name}`);
  print(row(`rollShot, ${1000 * step} ms, ${error(allowed)}`, our));
  print(row(`odex, ${tolerance.toExponential(0)}, ${error(worst((n) => theirs(n, tolerance)))}`, their));
  print(`  odex takes ${(their.median / our.median).toFixed(1)} times as long`);
}
