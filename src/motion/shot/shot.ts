import { norm, scale, type Vec3, ZERO } from '../../math/vec3.js';
import { memory } from '../kernel/memory.js';
import { sampleRelease, sampleStep } from '../kernel/samples.js';
import { advance, MOST_CAUTIOUS, settleStep } from '../kernel/shot-stepper.js';
import { ADVANCE, FLAG, GROUND, STATE, STEP } from '../kernel/slots.js';
import type { Surface } from '../lane/surface.js';
import { beginShot } from './begin-shot.js';
import type { RollingBody } from './body.js';
import { launchState } from './launch-state.js';
import { isPlausible } from './plausible.js';
import { principalBody } from './principal-body.js';
import type { Launch, Release } from './release.js';
import { rollHeading } from './roll-heading.js';
import { ALL_COLUMNS, emptySamples, type LeanSamples, type Samples } from './samples.js';
import { LONGEST_SHOT, type ShotSettings } from './shot-settings.js';
import { Workspace } from './workspace.js';

/** How a shot ended. SI. */
interface Ending {
  readonly outcome: 'pins' | 'gutter' | 'stopped' | 'hops' | 'invalid';
  /** Line of the centre of mass at release. */
  readonly launch: Launch;
  readonly steps: number;
  /** Sample at which the ball first rolls without slip, −1 when it never does. */
  readonly rollStart: number;
  /** The PAP at the last sample, unit vector in W. */
  readonly endAxis_W: Vec3;
  /** Heading in which the ball would roll on if the lane were longer, rad, positive leftward. */
  readonly rollHeading: number;
}

/** A shot with the samples that its reaction numbers need; without samples when it is `invalid` or `hops`. */
export interface LeanShot extends LeanSamples, Ending {}

/** A shot with samples of all columns; without samples when it is `invalid` or `hops`. */
export interface Shot extends Samples, Ending {}

/**
 * Rolls one shot: a rigid body of any inertia, its centre of mass off its centre, from release to the pins.
 *
 * Slides under Coulomb friction, rolls once the slip has gone, and slides again when rolling would need more
 * friction than there is. The step is fixed, except that one ends exactly at each jump of friction, at the end of
 * the slip and at the pins, and is shorter while slip comes and goes. Samples lie closer than steps. Left out: air,
 * the lane's rolling resistance, and the friction that slows a spin about the contact. Never throws: a shot that cannot
 * be computed has outcome `invalid`, a ball that would hop off the lane `hops`.
 */
export const rollShot = (
  body: RollingBody,
  release: Release,
  launch: Launch,
  surface: Surface,
  settings: ShotSettings,
): Shot => roll(body, release, launch, surface, settings, new Workspace(ALL_COLUMNS), true);

/**
 * The same shot for its reaction numbers alone, a fifth faster.
 *
 * @param workspace  lends the columns of its samples, which are good until the next shot with the same workspace; without
 *   one they are the shot's own
 */
export const rollLeanShot = (
  body: RollingBody,
  release: Release,
  launch: Launch,
  surface: Surface,
  settings: ShotSettings,
  workspace = new Workspace(),
): LeanShot => roll(body, release, launch, surface, settings, workspace, false);

const { here, ground, step, flags, record } = memory;
const { X, WX, WY, WZ } = STATE;
const { TIME, LONGEST } = STEP;
const { RECORDED, HAS_HOPPED } = FLAG;

function roll(
  body: RollingBody,
  release: Release,
  launch: Launch,
  surface: Surface,
  settings: ShotSettings,
  workspace: Workspace,
  isFull: boolean,
): Shot {
  if (!isPlausible(body, release, launch, settings)) return nothingRolled('invalid', launch);
  const { longest = LONGEST_SHOT, step: longestStep } = settings;
  const P = principalBody(body);
  beginShot(P, launchState(P, release, launch), surface, settings, isFull);
  workspace.clear();
  let kept = 0;
  const keep = (): void => {
    workspace.take(record, flags[RECORDED]);
    kept += flags[RECORDED];
    flags[RECORDED] = 0;
  };

  sampleRelease();
  let outcome: Shot['outcome'] = 'stopped';
  let rollStart = -1;
  let steps = 0;
  const mostSteps = MOST_CAUTIOUS * (Math.ceil(longest / longestStep) + surface.stretches.length);
  for (; steps < mostSteps && step[TIME] < longest; steps++) {
    step[LONGEST] = Math.min(longestStep, longest - step[TIME]);
    const event = advance();
    if (event === ADVANCE.LOST) return nothingRolled(flags[HAS_HOPPED] === 1 ? 'hops' : 'invalid', launch);
    if (event === ADVANCE.ROLLS) {
      if (rollStart < 0) rollStart = kept + flags[RECORDED] - 1;
    } else {
      sampleStep(keep);
      settleStep();
    }
    if (event === ADVANCE.ARRIVED) outcome = 'pins';
    else if (Math.abs(here[X]) > ground[GROUND.HALF_WIDTH]) outcome = 'gutter';
    else continue;
    break;
  }
  keep();
  return {
    ...workspace.samples(),
    outcome,
    launch,
    steps,
    rollStart,
    endAxis_W: axisInLane(),
    rollHeading: rollHeading(),
  };
}

function axisInLane(): Vec3 {
  const w_WP_W: Vec3 = [here[WX], here[WY], here[WZ]];
  const spin = norm(w_WP_W);
  return spin > 0 ? scale(1 / spin, w_WP_W) : ZERO;
}

const nothingRolled = (outcome: 'hops' | 'invalid', launch: Launch): Shot => ({
  ...emptySamples(),
  outcome,
  launch,
  steps: 0,
  rollStart: -1,
  endAxis_W: ZERO,
  rollHeading: Number.NaN,
});
