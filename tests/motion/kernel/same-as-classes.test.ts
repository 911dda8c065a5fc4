import { expect, test } from 'vitest';
import { BOARD } from '../../../src/base/constants.js';
import { FOOT, INCH, to } from '../../../src/base/units.js';
import { type Reaction, reactionNumbers } from '../../../src/motion/reaction/reaction.js';
import { ANSWER_STEP } from '../../../src/motion/shot/answer-step.js';
import { rollLeanShot, rollShot } from '../../../src/motion/shot/shot.js';
import { Workspace } from '../../../src/motion/shot/workspace.js';
import { quantile } from '../../oracles/answer-error.js';
import { withMethods } from '../../oracles/shot-classes/method-surface.js';
import { rollByClasses } from '../../oracles/shot-classes/roll-by-classes.js';
import { Workspace as Objects } from '../../oracles/shot-classes/workspace.js';
import { type RandomShot, randomShots } from '../../support/random-shots.js';

/** How far numbers by the kernel are from those by classes, shot by shot, ascending: boards, ft, in. */
interface Differences {
  readonly pins: readonly number[];
  readonly hookStart: readonly number[];
  readonly flare: readonly number[];
}

const workspace = new Workspace();
const objects = new Objects();

/** @param places  of an oil ring a turn, for both; the classes take as many samples, at least */
function differences(count: number, change: (shot: RandomShot) => RandomShot, places: number): Differences {
  const pairs = randomShots(count).flatMap((drawn): (readonly [Reaction, Reaction])[] => {
    const { body, release, launch, surface, freshSurface } = change(drawn);
    const settings = { step: ANSWER_STEP, freshSurface: freshSurface.carriedShare > 0 ? freshSurface : null };
    const lane = withMethods(surface);
    const theirs = rollByClasses(body, release, launch, lane, settings, objects, places);
    const ours = rollLeanShot(body, release, launch, surface, { ...settings, ringPlaces: places }, workspace);
    expect(ours.outcome).toBe(theirs.outcome);
    const [a, b] = [ours, theirs].map((shot) => reactionNumbers(shot, body.radius));
    return ours.outcome === 'pins' ? [[a, b]] : [];
  });
  expect(pairs.length).toBeGreaterThan(count / 2);
  const off = (of: (reaction: Reaction) => number): readonly number[] =>
    pairs.map(([a, b]) => Math.abs(of(a) - of(b))).sort((a, b) => a - b);
  return {
    pins: off(({ pinsX }) => to(pinsX, BOARD)),
    hookStart: off(({ hookStart }) => to(hookStart, FOOT)),
    flare: off(({ flare }) => to(flare, INCH)),
  };
}

const noOilBack = (shot: RandomShot): RandomShot => ({
  ...shot,
  freshSurface: { ...shot.freshSurface, carriedShare: 0 },
});
const noWear = (shot: RandomShot): RandomShot => ({
  ...shot,
  freshSurface: { ...shot.freshSurface, wornPerPass: 0 },
});

/*
 * The last digits are those of sine, cosine and the exponential; where a ball rolls and slips by turns they decide when. Samples lie
 * farther apart than those of the classes.
 */
test('without oil on the ball the kernel and the classes do the same arithmetic', () => {
  const { pins, hookStart, flare } = differences(200, noOilBack, 48);
  expect(quantile(pins, 0.5)).toBeLessThan(1e-13);
  expect(quantile(pins, 0.95)).toBeLessThan(1e-12);
  expect(quantile(pins, 1)).toBeLessThan(1e-6);
  expect(quantile(hookStart, 1)).toBeLessThan(0.015);
  expect(quantile(flare, 1)).toBeLessThan(0.01);
});

/* Places of rings lie elsewhere, at equal angles. */
test('with oil that does not wear off the ball, by at most 0.002 board, 0.015 ft of hook start, 0.01 in of flare', () => {
  const { pins, hookStart, flare } = differences(200, noWear, 48);
  expect(quantile(pins, 0.5)).toBeLessThan(1e-4);
  expect(quantile(pins, 1)).toBeLessThan(0.002);
  expect(quantile(hookStart, 1)).toBeLessThan(0.015);
  expect(quantile(flare, 1)).toBeLessThan(0.01);
});

test('with oil that wears off, where places lie decides what a narrow crossing leaves: ever less, the finer they are', () => {
  const [coarse, fine] = [96, 480].map((places) => differences(60, (shot) => shot, places).pins);
  expect(quantile(coarse, 0.95)).toBeLessThan(0.005);
  expect(quantile(fine, 0.95)).toBeLessThan(0.001);
  expect(quantile(fine, 1)).toBeLessThan(quantile(coarse, 1) / 3);
});

test('a lean shot is the full one with fewer columns, to the last bit, whatever was rolled before', () => {
  for (const { body, release, launch, surface, freshSurface } of randomShots(12)) {
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
});
