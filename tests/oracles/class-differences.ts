import { expect } from 'vitest';
import { BOARD } from '../../src/base/constants.js';
import { FOOT, INCH, to } from '../../src/base/units.js';
import { type Reaction, reactionNumbers } from '../../src/motion/reaction/reaction.js';
import { ANSWER_STEP } from '../../src/motion/shot/answer-step.js';
import { rollLeanShot } from '../../src/motion/shot/shot.js';
import { Workspace } from '../../src/motion/shot/workspace.js';
import type { RandomShot } from '../support/random-shots.js';
import { withMethods } from './shot-classes/method-surface.js';
import { rollByClasses } from './shot-classes/roll-by-classes.js';
import { Workspace as Objects } from './shot-classes/workspace.js';

/** How far numbers by the kernel are from those by classes, shot by shot, ascending: boards, ft, in. */
interface Differences {
  readonly pins: readonly number[];
  readonly hookStart: readonly number[];
  readonly flare: readonly number[];
}

const workspace = new Workspace();
const objects = new Objects();

/**
 * Rolls shots both ways.
 *
 * @param places  of an oil ring a turn, for both; the classes take as many samples, at least
 */
export function differences(shots: readonly RandomShot[], places: number): Differences {
  const pairs = shots.flatMap((shot): (readonly [Reaction, Reaction])[] => {
    const { body, release, launch, surface, freshSurface } = shot;
    const settings = { step: ANSWER_STEP, freshSurface: freshSurface.carriedShare > 0 ? freshSurface : null };
    const lane = withMethods(surface);
    const theirs = rollByClasses(body, release, launch, lane, settings, objects, places);
    const ours = rollLeanShot(body, release, launch, surface, { ...settings, ringPlaces: places }, workspace);
    expect(ours.outcome).toBe(theirs.outcome);
    const [a, b] = [ours, theirs].map((shot) => reactionNumbers(shot, body.radius));
    return ours.outcome === 'pins' ? [[a, b]] : [];
  });
  expect(pairs.length).toBeGreaterThan(shots.length / 2);
  const off = (of: (reaction: Reaction) => number): readonly number[] =>
    pairs.map(([a, b]) => Math.abs(of(a) - of(b))).sort((a, b) => a - b);
  return {
    pins: off(({ pinsX }) => to(pinsX, BOARD)),
    hookStart: off(({ hookStart }) => to(hookStart, FOOT)),
    flare: off(({ flare }) => to(flare, INCH)),
  };
}

export const noOilBack = (shot: RandomShot): RandomShot => ({
  ...shot,
  freshSurface: { ...shot.freshSurface, carriedShare: 0 },
});
export const noWear = (shot: RandomShot): RandomShot => ({
  ...shot,
  freshSurface: { ...shot.freshSurface, wornPerPass: 0 },
});
