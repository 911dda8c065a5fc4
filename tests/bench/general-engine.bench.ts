import { BOARD } from '../../src/base/constants.js';
import { secondEngine } from '../oracles/second-engine.js';
import { zonedLane } from '../support/dry-lanes.js';
import { SCENES, type Scene } from '../support/scenes.js';
import type { Engines } from './built-motion.js';
import { coarsest } from './coarsest.js';
import { row, timeTogether } from './timing.js';

/** Two zones, the centre of mass off: what the general engine can do, it knows no film. */
const NAMES = ['two zones, 1 mm off', 'triaxial core', 'high friction 0.30'];

/** Target for answers, m at the pins. */
const ALLOWED = 0.05 * BOARD;

/** Shots before ours are timed: theirs take so long that few are, too few for ours to be compiled in. */
const WARM_UP = 2000;

/** Steps tried, s, coarse to fine. */
const OUR_STEPS = [0.048, 0.04, 0.032, 0.024, 0.016, 0.012, 0.008, 0.004];
const THEIR_STEPS = [4e-3, 2e-3, 1e-3, 5e-4, 2e-4, 1e-4, 5e-5];

/**
 * Whole shots by `rollShot` and by mujoco-js, a general engine in WebAssembly: theirs with the coarsest step that errs no
 * more at the pins than is allowed, ours with the coarsest that errs no more than theirs, and at the setting for answers.
 * Compiling its scene, which not every shot need do, is taken off.
 */
export async function againstGeneralEngine(
  { rollLeanShot, Workspace, ANSWER_STEP }: Engines,
  print: (line: string) => void,
): Promise<void> {
  const rollTheirs = await secondEngine();
  const workspace = new Workspace();
  const scenes = SCENES.filter(({ name }) => NAMES.includes(name));
  const ours = ({ body, release, launch, zones }: Scene, step: number): number => {
    const settings = { step, freshSurface: null, halfWidth: Number.POSITIVE_INFINITY };
    return rollLeanShot(body, release, launch, zonedLane(zones), settings, workspace).x.at(-1)!;
  };
  const truth = scenes.map((scene) => ours(scene, 1e-4));
  const worst = (end: (scene: Scene) => number): number =>
    Math.max(...scenes.map((scene, i) => Math.abs(end(scene) - truth[i])));
  const theirStep = coarsest(THEIR_STEPS, (h) => worst((scene) => rollTheirs(scene, h).x) <= ALLOWED);
  const theirError = worst((scene) => rollTheirs(scene, theirStep).x);
  const ourStep = coarsest(OUR_STEPS, (h) => worst((scene) => ours(scene, h)) <= theirError);

  for (let n = 0; n < WARM_UP; n++) ours(scenes[n % scenes.length], ANSWER_STEP);
  const scene = (n: number): Scene => scenes[n % scenes.length];
  const [our, answer, their, compiled] = timeTogether(
    [
      (n) => ours(scene(n), ourStep),
      (n) => ours(scene(n), ANSWER_STEP),
      (n) => rollTheirs(scene(n), theirStep),
      (n) => rollTheirs(scene(n), 1), // three steps, all the rest is compiling
    ],
    20,
    scenes.length,
  );
  const boards = (m: number): string => `${(m / BOARD).toFixed(4)} board off`;
  const ourLine = (step: number): string =>
    `rollShot, ${1000 * step} ms, ${boards(worst((s) => ours(s, step)))}`;
  print('whole shots on zones of one friction each');
  print(row(ourLine(ourStep), our));
  print(row(`${ourLine(ANSWER_STEP)}, as for answers`, answer));
  print(row(`mujoco-js, ${1000 * theirStep} ms, ${boards(theirError)}`, their));
  print(row('mujoco-js, of that compiling the scene', compiled));
  const alone = their.median - compiled.median;
  print(
    `  mujoco-js takes ${(alone / our.median).toFixed(0)} times as long at equal error, ${(alone / answer.median).toFixed(0)} times beside the setting for answers; compiling taken off`,
  );
}
