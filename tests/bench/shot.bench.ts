import type { Surface } from '../../src/motion/lane/surface.js';
import type { Shot } from '../../src/motion/shot/shot.js';
import type { ShotSettings } from '../../src/motion/shot/shot-settings.js';
import { usualRelease } from '../support/bodies.js';
import { demoPattern } from '../support/patterns.js';
import { DRILLED, type Engines, loadBuilt, type Thrown, throws } from './built-motion.js';
import { againstGeneralEngine } from './general-engine.bench.js';
import { againstOdex } from './odex.bench.js';
import { machine, row, timeCalls, timeTogether } from './timing.js';

const FRESH_SURFACE = { bandWidth: 0.00635, carriedShare: 0.15, wornPerPass: 0.3 };

/** Shots that differ a little, the same ones every run. */
const SHOTS = throws(usualRelease, 50);

/** Times whole shots, against a bare loop of their arithmetic and against other engines at equal error. Prints a table. */
export async function shotBench(print: (line: string) => void = console.log): Promise<void> {
  const engines = await loadBuilt();
  print(`rollShot: ${machine()}`);
  wholeShots(engines, print);
  againstBareLoop(engines, print);
  againstOdex(engines, print);
  await againstGeneralEngine(engines, print);
}

function wholeShots(
  { rollShot, oiledLane, reactionNumbers, Workspace, ANSWER_STEP }: Engines,
  print: (line: string) => void,
): void {
  const lane = oiledLane(demoPattern);
  const workspace = new Workspace();
  const roll = (n: number, settings: ShotSettings): Shot => {
    const { release, launch } = thrown(n);
    return rollShot(DRILLED, release, launch, lane, settings, workspace);
  };
  const usual: ShotSettings = { step: ANSWER_STEP, freshSurface: FRESH_SURFACE };
  const fine: ShotSettings = { ...usual, step: ANSWER_STEP / 8 };
  for (let n = 0; n < SHOTS.length; n += 7) {
    if (roll(n, usual).outcome !== 'pins') throw new Error('a shot of the benchmark should reach the pins');
    const gap = Math.abs(roll(n, usual).x.at(-1)! - roll(n, fine).x.at(-1)!);
    if (!(gap < 0.0013)) throw new Error(`the setting for answers is ${gap} m from a finer one at the pins`);
  }
  const workloads: readonly (readonly [string, ShotSettings])[] = [
    ['usual: oiled lane, carried oil, as for answers', usual],
    ['usual, friction of the lane alone', { ...usual, freshSurface: null }],
    ['large: steps of an eighth', fine],
    ['degenerate: into the gutter at once', { ...usual, halfWidth: 0.06 }],
  ];
  for (const [name, settings] of workloads)
    print(
      row(
        name,
        timeCalls((n) => roll(n, settings)),
      ),
    );
  const shot = roll(0, usual);
  print(
    row(
      'reaction numbers of a shot',
      timeCalls(() => reactionNumbers(shot, DRILLED.radius)),
    ),
  );
}

const thrown = (n: number): Thrown => SHOTS[n % SHOTS.length];

/**
 * The same numbers of rates, of readings of the lane and of weighted sums as a shot has, and nothing else: no events, no rings,
 * no samples. What a shot takes beyond is the price of those.
 */
function againstBareLoop(engines: Engines, print: (line: string) => void): void {
  const { rollShot, oiledLane, slidingEquations, principalBody, launchState, Workspace, ANSWER_STEP } =
    engines;
  const lane = oiledLane(demoPattern);
  const { release, launch } = thrown(0);
  const workspace = new Workspace();
  const settings: ShotSettings = { step: ANSWER_STEP, freshSurface: FRESH_SURFACE };
  const count = { films: 0, frictions: 0 };
  const counting: Surface = {
    ...lane,
    filmAt: (x, y) => {
      count.films++;
      return lane.filmAt(x, y);
    },
    frictionUnder: (film) => {
      count.frictions++;
      return lane.frictionUnder(film);
    },
  };
  const { steps } = rollShot(DRILLED, release, launch, counting, settings, workspace);
  const ball = principalBody(DRILLED);
  const rates = slidingEquations(ball, 9.80665);
  const state = launchState(ball, release, launch);
  const out = new Float64Array(16);
  const next = new Float64Array(state.length);
  const bare = (): number => {
    let sum = 0;
    for (let i = 0; i < 4 * steps; i++) {
      rates(out, state, 0.1);
      for (let j = 0; j < next.length; j++) next[j] = state[j] + 1e-3 * out[j];
    }
    for (let i = 0; i < count.films; i++) sum += lane.filmAt(0.1, 0.01 * (i % 1800));
    for (let i = 0; i < count.frictions; i++) sum += lane.frictionUnder(0.01 * (i % 1800));
    return sum + next[0];
  };
  const [whole, loop] = timeTogether(
    [() => rollShot(DRILLED, release, launch, lane, settings, workspace), bare],
    60,
    25,
  );
  print(`one shot: ${4 * steps} rates, ${count.films} films, ${count.frictions} frictions`);
  print(row('rollShot', whole));
  print(row('a bare loop of the same', loop));
  print(`  a shot takes ${(whole.median / loop.median).toFixed(2)} times as long as its bare arithmetic`);
}
