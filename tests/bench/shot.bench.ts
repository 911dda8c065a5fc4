import { Solver } from 'odex';
import { launchState } from '../../src/motion/launch-state.js';
import { oiledLane } from '../../src/motion/oil.js';
import { principalBody } from '../../src/motion/principal-body.js';
import { reactionNumbers } from '../../src/motion/reaction.js';
import type { Launch, Release } from '../../src/motion/release.js';
import { rollShot, type Shot, type ShotSettings } from '../../src/motion/shot.js';
import { slidingEquations } from '../../src/motion/sliding.js';
import { RATES_SIZE, STATE_SIZE, VX, VY, X, Y } from '../../src/motion/state.js';
import { uniformLane } from '../../src/motion/surface.js';
import { drilledBall, last, openLane, seeded, usualRelease } from '../motion/bodies.js';
import { demoPattern } from '../motion/patterns.js';
import { machine, type Timing, timeCalls, timeTogether } from './timing.js';

const SLIDE_FRICTION = 0.1;
const SLIDE_SECONDS = 1;
const GRAVITY = 9.80665;

/** Shots that differ a little, the same ones every run. */
const SHOTS: readonly { release: Release; launch: Launch }[] = (() => {
  const random = seeded(2026);
  return Array.from({ length: 50 }, () => ({
    release: {
      ...usualRelease,
      speed: usualRelease.speed + random() - 0.5,
      spin: usualRelease.spin + 4 * random(),
    },
    launch: { x: 0.1 * (random() - 0.5), angle: 0.02 * random() },
  }));
})();

const shotOf = (n: number) => SHOTS[n % SHOTS.length];

/** Times whole shots, and the sliding phase against an adaptive integrator at equal error. Prints a table. */
export async function shotBench(print: (line: string) => void = console.log): Promise<void> {
  print(`rollShot: ${machine()}`);
  wholeShots(print);
  againstOdex(print);
}

function wholeShots(print: (line: string) => void): void {
  const lane = oiledLane(demoPattern);
  const freshSurface = { bandWidth: 0.00635, carriedShare: 0.15 };
  const roll = (n: number, settings: ShotSettings): Shot => {
    const { release, launch } = shotOf(n);
    return rollShot(drilledBall, release, launch, lane, settings);
  };
  const workloads: readonly (readonly [string, (n: number) => Shot])[] = [
    ['usual: oiled lane, carried oil, step 2 ms', (n) => roll(n, { step: 0.002, freshSurface })],
    ['usual, friction of the lane alone', (n) => roll(n, { step: 0.002, freshSurface: null })],
    ['large: step 0.5 ms', (n) => roll(n, { step: 0.0005, freshSurface })],
    ['degenerate: into the gutter at once', (n) => roll(n, { step: 0.002, freshSurface, halfWidth: 0.06 })],
  ];
  for (let n = 0; n < SHOTS.length; n += 7) {
    const gap = Math.abs(last(workloads[0][1](n).x) - last(workloads[2][1](n).x));
    if (!(gap < 0.003)) throw new Error(`step 2 ms is ${gap} m from step 0.5 ms at the pins`);
  }
  for (const [name, run] of workloads) print(row(name, timeCalls(run)));
  const shot = workloads[0][1](0);
  print(
    row(
      'reaction numbers of a shot',
      timeCalls(() => reactionNumbers(shot, drilledBall.radius)),
    ),
  );
}

/**
 * One second of sliding on one friction: no jump, no end of slip, since the adaptive solver knows no events.
 * It is given flarewise's own equations and the loosest tolerance with which it errs no more than `rollShot` at
 * 2 ms does. It keeps only its end, `rollShot` also its 500 samples.
 */
function againstOdex(print: (line: string) => void): void {
  const ball = principalBody(drilledBall);
  const lane = uniformLane(SLIDE_FRICTION);
  const ours = (n: number, step = 0.002): number[] => {
    const { release, launch } = shotOf(n);
    const shot = rollShot(drilledBall, release, launch, lane, openLane(SLIDE_SECONDS, step));
    return [last(shot.x), last(shot.y), last(shot.vx), last(shot.vy)];
  };
  const equations = slidingEquations(ball, GRAVITY);
  const state = new Float64Array(STATE_SIZE);
  const rates = new Float64Array(RATES_SIZE);
  const theirs = (n: number, tolerance: number): number[] => {
    const { release, launch } = shotOf(n);
    const solver = new Solver(STATE_SIZE);
    solver.absoluteTolerance = solver.relativeTolerance = tolerance;
    const { y } = solver.solve(
      (_, s) => {
        state.set(s);
        equations(rates, state, SLIDE_FRICTION);
        return Array.from(rates.subarray(0, STATE_SIZE));
      },
      0,
      [...launchState(ball, release, launch)],
      SLIDE_SECONDS,
    );
    return [y[X], y[Y], y[VX], y[VY]];
  };

  const probes = [0, 7, 14, 21, 28];
  const worst = (end: (n: number) => number[]): number =>
    Math.max(...probes.map((n) => distance(end(n), theirs(n, 1e-13))));
  const ourError = worst((n) => ours(n));
  if (!(ourError < 1e-6)) throw new Error(`rollShot is ${ourError} from the reference`);
  const tolerances = Array.from({ length: 25 }, (_, i) => 10 ** (-2 - i / 2));
  const tolerance = tolerances.find((tol) => worst((n) => theirs(n, tol)) <= ourError);
  if (tolerance === undefined) throw new Error('no tolerance makes odex as exact');
  print(
    `one second of sliding, error at its end ${ourError.toExponential(1)} (m, m/s); odex at tolerance ${tolerance.toExponential(1)}`,
  );
  const [our, their] = timeTogether([(n) => ours(n), (n) => theirs(n, tolerance)]);
  print(row('rollShot, step 2 ms', our));
  print(row('odex, the same equations', their));
  print(`  odex takes ${(their.median / our.median).toFixed(2)} times as long`);
}

const distance = (a: readonly number[], b: readonly number[]): number =>
  Math.hypot(...a.map((v, i) => v - b[i]));

const row = (name: string, { median, p90 }: Timing): string =>
  `  ${name.padEnd(44)} ${median.toFixed(3)} ms median, ${p90.toFixed(3)} ms p90, ${Math.round(1000 / median)} a second`;
