import { BOARD } from '../../src/constants.js';
import { zonedLane } from '../motion/compare-engines.js';
import { SCENES, type Scene } from '../motion/scenes.js';
import { secondEngine } from '../motion/second-engine.js';
import type { Engines } from './built-motion.js';
import { row, timeTogether } from './timing.js';

/** Two zones, the centre of mass off: what the general engine can do, it knows no film. */
const NAMES = ['two zones, 1 mm off', 'triaxial core', 'high friction 0.30'];

/** Target for answers, m at the pins. */
const ALLOWED = 0.05 * BOARD;

/** Steps tried, s, coarse to fine. */
const THEIR_STEPS = [4e-3, 2e-3, 1e-3, 5e-4, 2e-4, 1e-4, 5e-5];

/**
 * Whole shots by `rollShot` at the setting for answers and by mujoco-js, a general engine in WebAssembly, with the coarsest
 * step that errs no more at the pins than is allowed. Compiling its scene, which one shot need not do, is taken off.
 */
export async function againstGeneralEngine(
  { rollShot, Workspace, ANSWER_STEP }: Engines,
  print: (line: string) => void,
): Promise<void> {
  const rollTheirs = await secondEngine();
  const workspace = new Workspace();
  const scenes = SCENES.filter(({ name }) => NAMES.includes(name));
  const ours = ({ body, release, launch, zones }: Scene, step: number): number => {
    const settings = { step, freshSurface: null, halfWidth: Number.POSITIVE_INFINITY };
    return rollShot(body, release, launch, zonedLane(zones), settings, workspace).x.at(-1)!;
  };
  const truth = scenes.map((scene) => ours(scene, 1e-4));
  const worst = (end: (scene: Scene) => number): number =>
    Math.max(...scenes.map((scene, i) => Math.abs(end(scene) - truth[i])));
  const ourError = worst((scene) => ours(scene, ANSWER_STEP));
  if (!(ourError <= ALLOWED)) throw new Error(`rollShot errs by ${ourError} m`);
  const step = THEIR_STEPS.find((h) => worst((scene) => rollTheirs(scene, h).x) <= ALLOWED);
  if (step === undefined) throw new Error('no step of the general engine is good enough');
  const theirError = worst((scene) => rollTheirs(scene, step).x);

  const [our, their, compiled] = timeTogether(
    [
      (n) => ours(scenes[n % scenes.length], ANSWER_STEP),
      (n) => rollTheirs(scenes[n % scenes.length], step),
      (n) => rollTheirs(scenes[n % scenes.length], 1), // three steps, all the rest is compiling
    ],
    20,
    scenes.length,
  );
  const boards = (m: number): string => `${(m / BOARD).toFixed(4)} board off`;
  print('whole shots on zones of one friction each');
  print(row(`rollShot, ${1000 * ANSWER_STEP} ms, ${boards(ourError)}`, our));
  print(row(`mujoco-js, ${1000 * step} ms, ${boards(theirError)}`, their));
  print(row('mujoco-js, of that compiling the scene', compiled));
  const ratio = (their.median - compiled.median) / our.median;
  print(`  mujoco-js takes ${ratio.toFixed(0)} times as long, compiling taken off`);
}
