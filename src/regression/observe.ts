import { ANSWER_STEP } from '../motion/answer-step.js';
import { reactionNumbers } from '../motion/reaction.js';
import { rollShot } from '../motion/shot.js';
import type { Workspace } from '../motion/workspace.js';
import type { ShotInputs } from './inputs.js';
import { TARGETS } from './targets.js';

/** Writes the reaction numbers of a shot by the physics engine, in the order of `TARGETS`; says whether the ball got to the pins. */
export function observe(out: Float64Array, at: number, shot: ShotInputs, workspace?: Workspace): boolean {
  const { body, release, launch, surface, freshSurface } = shot;
  const rolled = rollShot(body, release, launch, surface, { step: ANSWER_STEP, freshSurface }, workspace);
  const reaction = reactionNumbers(rolled, body.radius);
  TARGETS.forEach(({ of }, i) => {
    out[at + i] = of(reaction, launch);
  });
  return rolled.outcome === 'pins';
}
