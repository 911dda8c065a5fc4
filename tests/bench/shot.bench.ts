import type { LeanShot } from '../../src/motion/shot/shot.js';
import type { ShotSettings } from '../../src/motion/shot/shot-settings.js';
import { usualRelease } from '../support/bodies.js';
import { demoPattern } from '../support/patterns.js';
import { DRILLED, type Engines, loadBuilt, type Thrown, throws } from './built-motion.js';
import { againstGeneralEngine } from './general-engine.bench.js';
import { kernelTimes } from './kernel-times.js';
import { againstOdex } from './odex.bench.js';
import { machine, row, timeCalls } from './timing.js';

const FRESH_SURFACE = { bandWidth: 0.00635, carriedShare: 0.15, wornPerPass: 0.3 };

/** Shots that differ a little, the same ones every run. */
const SHOTS = throws(usualRelease, 50);

/** Times whole shots, against the classes they are checked by, the same arithmetic in C, and other engines at equal error. Prints a table. */
export async function shotBench(print: (line: string) => void = console.log): Promise<void> {
  const engines = await loadBuilt();
  print(`rollShot: ${machine()}`);
  wholeShots(engines, print);
  await kernelTimes(engines, print);
  againstOdex(engines, print);
  await againstGeneralEngine(engines, print);
}

function wholeShots(
  { rollLeanShot, oiledLane, reactionNumbers, Workspace, ANSWER_STEP }: Engines,
  print: (line: string) => void,
): void {
  const lane = oiledLane(demoPattern);
  const workspace = new Workspace();
  const roll = (n: number, settings: ShotSettings): LeanShot => {
    const { release, launch } = thrown(n);
    return rollLeanShot(DRILLED, release, launch, lane, settings, workspace);
  };
  const usual: ShotSettings = { step: ANSWER_STEP, freshSurface: FRESH_SURFACE };
  const fine: ShotSettings = { ...usual, step: ANSWER_STEP / 8 };
  for (let n = 0; n < SHOTS.length; n += 7) {
    if (roll(n, usual).outcome !== 'pins') throw new Error('a shot of the benchmark should reach the pins');
    const [here, there] = [usual, fine].map((settings) => roll(n, settings).x.at(-1)!);
    const gap = Math.abs(here - there);
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
