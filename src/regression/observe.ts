import { meanReaction, reactionNumbers } from '../motion/reaction/reaction.js';
import { ANSWER_STEP } from '../motion/shot/answer-step.js';
import { rollLeanShot } from '../motion/shot/shot.js';
import type { Workspace } from '../motion/shot/workspace.js';
import type { ShotInputs } from './inputs.js';
import { TARGETS } from './targets.js';

/**
 * Writes the reaction numbers of a shot by the physics engine, in the order of `TARGETS`; returns whether the ball reached the pins.
 *
 * They are means of two spin phases half a turn apart: no bowler repeats the phase, and no feature describes it.
 */
export function observe(out: Float64Array, at: number, shot: ShotInputs, workspace?: Workspace): boolean {
  const { body, release, launch, surface, freshSurface } = shot;
  const [here, opposite] = [0, Math.PI].map((turn) => {
    const thrown = { ...release, spinPhase: (release.spinPhase ?? 0) + turn };
    const rolled = rollLeanShot(
      body,
      thrown,
      launch,
      surface,
      { step: ANSWER_STEP, freshSurface },
      workspace,
    );
    return { reaction: reactionNumbers(rolled, body.radius), arrives: rolled.outcome === 'pins' };
  });
  const reaction = meanReaction(here.reaction, opposite.reaction);
  TARGETS.forEach(({ of }, i) => {
    out[at + i] = of(reaction, launch);
  });
  return here.arrives && opposite.arrives;
}
