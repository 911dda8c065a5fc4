import { expect } from 'vitest';
import { ANSWER_STEP } from '../../src/motion/shot/answer-step.js';
import { rollLeanShot, rollShot } from '../../src/motion/shot/shot.js';
import { Workspace } from '../../src/motion/shot/workspace.js';
import type { randomShots } from './random-shots.js';

/** Lean shots, rolled one after another in one workspace, are the full ones with fewer columns, to the last bit. */
export function expectLeanAsFull(shots: ReturnType<typeof randomShots>): void {
  const workspace = new Workspace();
  for (const { body, release, launch, surface, freshSurface } of shots) {
    const settings = { step: ANSWER_STEP, freshSurface };
    const full = rollShot(body, release, launch, surface, settings);
    const lean = rollLeanShot(body, release, launch, surface, settings, workspace);
    for (const name of ['time', 'x', 'y', 'vx', 'vy', 'spin', 'phase', 'film', 'contact_B'] as const)
      expect(lean[name]).toEqual(full[name]);
    const { outcome, steps, rollStart, endAxis_W, rollHeading } = full;
    expect(lean).toMatchObject({ outcome, steps, rollStart, endAxis_W, rollHeading });
    for (const name of ['slip', 'carried', 'fresh', 'axis_B'] as const)
      expect(lean[name as never]).toHaveLength(0);
  }
}
