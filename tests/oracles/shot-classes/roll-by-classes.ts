import { GRAVITY, LANE_LENGTH, LANE_WIDTH } from '../../../src/base/constants.js';
import { diagonal, type Mat3, mulVec, rotateTensor } from '../../../src/math/mat3.js';
import { add, addScaled, cross, norm, scale, type Vec3, ZERO } from '../../../src/math/vec3.js';
import type { RollingBody } from '../../../src/motion/shot/body.js';
import { launchState } from '../../../src/motion/shot/launch-state.js';
import { isPlausible } from '../../../src/motion/shot/plausible.js';
import { type PrincipalBody, principalBody } from '../../../src/motion/shot/principal-body.js';
import type { Launch, Release } from '../../../src/motion/shot/release.js';
import type { ShotSettings } from '../../../src/motion/shot/shot-settings.js';
import { Contact } from './contact.js';
import { ContactKinematics } from './contact-kinematics.js';
import type { MethodSurface } from './method-surface.js';
import { emptySamples, type Samples } from './shot-record.js';
import { MOST_CAUTIOUS, ShotStepper } from './shot-stepper.js';
import { PHASE, VX, VY, WX, WY, WZ, writeRotation, X } from './state.js';
import { Workspace } from './workspace.js';

/** Samples a turn, at least; oil rings have as many. */
const USUAL_SAMPLES = 48;

/**
 * A rolled shot. Scalars in SI, one entry per sample; the first is the release. Without samples when it is `invalid` or `hops`.
 *
 * `time`; `x`, `y`, `vx`, `vy` of Bo in W; `spin` (|w|); `slip` of the contact point; `phase`, the angle turned;
 * `film` on the lane and `carried` on the ball under the contact; `fresh`, the share of contact on clean cover.
 * `contact_B` and `axis_B` hold unit vectors, three numbers a sample: the contact point on the ball and the
 * wandering PAP (w/|w|; zeros while the ball does not spin).
 */
interface Shot extends Samples {
  readonly outcome: 'pins' | 'gutter' | 'stopped' | 'hops' | 'invalid';
  /** The line the centre of mass was sent on. */
  readonly launch: Launch;
  readonly steps: number;
  /** Sample at which the ball first rolls without slip, −1 when it never does. */
  readonly rollStart: number;
  /** The PAP at the last sample, unit vector in W. */
  readonly endAxis_W: Vec3;
  /** Heading at which the ball would come to roll from its last sample on, were the lane longer, rad, positive leftward. */
  readonly rollHeading: number;
}

/**
 * Rolls one shot by objects with methods, one idea each: the engine as it was before its arithmetic was laid out flat, kept to check it by.
 *
 * A rigid body of any inertia, its centre of mass off its centre, from release to the pins.
 *
 * Slides under Coulomb friction, rolls once the slip has gone, and slides again when rolling would need more
 * friction than there is. The step is fixed, except that one ends exactly at each jump of friction, at the end of
 * the slip and at the pins, and is shorter while slip comes and goes. Samples lie closer than steps. Left out: air,
 * the lane's rolling resistance, and the friction that slows a spin about the contact. Never throws: a shot that cannot
 * be computed has outcome `invalid`, a ball that would hop off the lane `hops`.
 */
export function rollByClasses(
  body: RollingBody,
  release: Release,
  launch: Launch,
  surface: MethodSurface,
  settings: ShotSettings,
  workspace = new Workspace(),
  samplesPerTurn = USUAL_SAMPLES,
): Shot {
  const { step, freshSurface, gravity = GRAVITY, length = LANE_LENGTH, longest = 12 } = settings;
  const { halfWidth = LANE_WIDTH / 2 } = settings;
  if (!isPlausible(body, release, launch, settings)) return nothingRolled('invalid', launch);

  const sampleAngle = (2 * Math.PI) / samplesPerTurn;
  const ball = principalBody(body);
  const start = launchState(ball, release, launch);
  const rings = freshSurface && workspace.rings;
  if (freshSurface) workspace.rings.clear(freshSurface, body.radius);
  const contact = new Contact(surface, rings);
  const stops = [...surface.breaks.filter((y) => y > 0 && y < length), length];
  const stepper = new ShotStepper(ball, contact, stops, gravity, start);
  const { record } = workspace;
  record.clear();
  const kinematics = new ContactKinematics();
  const sample = (time: number, state: Float64Array): void => {
    kinematics.read(state);
    contact.meet(state, kinematics);
    record.add(time, state, kinematics, contact, ball.R_BP, body.radius);
    rings?.lay(kinematics.contact_P, kinematics.axis_P, state[PHASE], contact.here.film[0]);
  };
  /** Samples of the last step, its end the last of them. */
  const sampleStep = (from: number, fromPhase: number): void => {
    const gaps = Math.ceil((stepper.state[PHASE] - fromPhase) / sampleAngle);
    for (let k = 1; k < gaps; k++) sample(from + (k / gaps) * stepper.taken, stepper.between(k / gaps));
    sample(stepper.time, stepper.state);
  };

  sample(0, start);
  let outcome: Shot['outcome'] = 'stopped';
  let rollStart = -1;
  let steps = 0;
  const mostSteps = MOST_CAUTIOUS * (Math.ceil(longest / step) + stops.length);
  for (; steps < mostSteps && stepper.time < longest; steps++) {
    const { time } = stepper;
    const phase = stepper.state[PHASE];
    const event = stepper.advance(Math.min(step, longest - time));
    if (event === 'lost') return nothingRolled(stepper.hopped ? 'hops' : 'invalid', launch);
    if (stepper.time > time) sampleStep(time, phase);
    if (event === 'rolls' && rollStart < 0) rollStart = record.count - 1;
    if (event === 'arrived') outcome = 'pins';
    else if (Math.abs(stepper.state[X]) > halfWidth) outcome = 'gutter';
    else continue;
    break;
  }
  return {
    ...record.samples(),
    outcome,
    launch,
    steps,
    rollStart,
    endAxis_W: axisInLane(stepper.state),
    rollHeading: rollHeading(stepper.state, ball),
  };
}

const axisInLane = (state: Float64Array): Vec3 => {
  const w_WP_W: Vec3 = [state[WX], state[WY], state[WZ]];
  const spin = norm(w_WP_W);
  return spin > 0 ? scale(1 / spin, w_WP_W) : ZERO;
};

/**
 * Where the ball of a state will head when it rolls, whatever the friction: square to its angular momentum about the contact, which a force
 * there leaves as it is. Source: any mechanics textbook; cf. Hopkins & Patterson, Am. J. Phys. 45, 1977.
 */
function rollHeading(state: Float64Array, { mass, radius, J, p_BoBcm_P }: PrincipalBody): number {
  const r = new Float64Array(9);
  writeRotation(r, state);
  const R_WP: Mat3 = [[r[0], r[1], r[2]], [r[3], r[4], r[5]], [r[6], r[7], r[8]]]; // biome-ignore format: a matrix
  const w_WP_W: Vec3 = [state[WX], state[WY], state[WZ]];
  const p_BoBcm_W = mulVec(R_WP, p_BoBcm_P);
  const v_Bcm_W = add([state[VX], state[VY], 0], cross(w_WP_W, p_BoBcm_W));
  const spin_W = mulVec(rotateTensor(R_WP, diagonal(J)), w_WP_W);
  const [momentumX, momentumY] = addScaled(spin_W, mass, cross(add([0, 0, radius], p_BoBcm_W), v_Bcm_W));
  return Math.atan2(-momentumY, -momentumX);
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
