import loadEngine, { type MainModule, type MjData } from 'mujoco-js';
import { GRAVITY, LANE_LENGTH } from '../../src/base/constants.js';
import { type Mat3, mulMat, mulVec, transpose } from '../../src/math/mat3.js';
import { cross, norm, scale, unit, type Vec3 } from '../../src/math/vec3.js';
import { releaseAxis, releaseOrientation } from '../../src/motion/shot/release.js';
import type { Scene } from '../support/scenes.js';

/** Where and how a ball gets to the pins; m, s, m/s, rad/s, rad. Heading (positive leftward) is the instant's. */
export interface Arrival {
  readonly x: number;
  readonly time: number;
  readonly heading: number;
  readonly speed: number;
  readonly spin: number;
  /** The spin axis in the ball: unit vector expressed in B. */
  readonly axis_B: Vec3;
}

/**
 * Time constants of the engine's soft contact, in steps. Along the normal as stiff as is stable. Across it
 * softer: friction's direction lags by as much, but a stiff one kicks a sliding ball off the lane.
 */
const NORMAL_STEPS = 5;
const FRICTION_STEPS = 40;

/** How many times stiffer holding friction is than the normal force: less creep while rolling. */
const HOLD = 10;

const LONGEST = 12; // s

const PATH = '/scene.xml';

/**
 * A general rigid-body engine (the package mujoco-js) that rolls scenes with a given step, s.
 *
 * A free sphere with the ball's full inertia and offset centre of mass on a plane, Coulomb friction with an
 * elliptic cone, Runge–Kutta steps. It knows nothing of a bowling ball: normal force, friction's direction,
 * the end of slip and rolling all come out of its contact solver. Its contact is soft, and its sliding ball
 * hops by hundredths of a millimetre; both shrink with the step, to which the softness is tied.
 */
export async function secondEngine(): Promise<(scene: Scene, step: number) => Arrival> {
  const engine = await loadEngine();
  return (scene, step) => roll(engine, scene, step);
}

function roll(engine: MainModule, scene: Scene, step: number): Arrival {
  const side = scene.isMirrored ? -1 : 1;
  engine.FS.writeFile(PATH, sceneXml(scene, side, step));
  const model = engine.MjModel.loadFromXML(PATH);
  const data = new engine.MjData(model);
  try {
    const { release, launch, zones } = scene;
    const w_WB_W = scale(release.spin, releaseAxis(release));
    const w_WB_B = mulVec(transpose(releaseOrientation(release)), w_WB_W);
    // of a free joint: velocity of Bo in W, then w_WB_B. The bowler sends the centre of mass, d from Bo: v_Bo = v − ω×d
    const d_W = mulVec(releaseOrientation(release), scene.body.p_BoBcm_B);
    const swing_W = cross(w_WB_W, d_W);
    data.qvel.set([
      side * (release.speed * Math.sin(launch.angle) - swing_W[0]),
      release.speed * Math.cos(launch.angle) - swing_W[1],
      0,
    ]);
    data.qvel.set(mirrorTurn(w_WB_B, side), 3);
    let nextZone = 0;
    for (let before = stateOf(data); before.time < LONGEST; ) {
      for (; nextZone < zones.length && before.y >= zones[nextZone].fromY; nextZone++)
        model.pair_friction.fill(zones[nextZone].friction, 0, 2);
      engine.mj_step(model, data);
      const now = stateOf(data);
      if (now.y >= LANE_LENGTH) return arrival(before, now, side);
      before = now;
    }
    throw new Error(`the second engine’s ball did not arrive: ${scene.name}`);
  } finally {
    data.delete();
    model.delete();
  }
}

/** The scene, its ball turned as at release; with side −1 all is mirrored in x. */
function sceneXml({ body, release, launch, zones }: Scene, side: number, step: number): string {
  const M: Mat3 = [
    [side, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  const mirrored = (matrix: Mat3): Mat3 => mulMat(mulMat(M, matrix), M);
  const [xAxis, yAxis] = transpose(mirrored(releaseOrientation(release)));
  const I = mirrored(body.I_Bcm_B);
  const d_W = mulVec(releaseOrientation(release), body.p_BoBcm_B);
  return `<mujoco>
  <option timestep="${step}" gravity="0 0 ${-GRAVITY}" integrator="RK4" cone="elliptic" impratio="${HOLD}" tolerance="1e-14"/>
  <worldbody>
    <geom name="lane" type="plane" size="100 100 1" contype="0" conaffinity="0"/>
    <body pos="${side * (launch.x - d_W[0])} ${-d_W[1]} ${body.radius}" xyaxes="${[...xAxis, ...yAxis].join(' ')}">
      <freejoint/>
      <geom name="ball" type="sphere" size="${body.radius}" contype="0" conaffinity="0"/>
      <inertial pos="${mulVec(M, body.p_BoBcm_B).join(' ')}" mass="${body.mass}"
        fullinertia="${[I[0][0], I[1][1], I[2][2], I[0][1], I[0][2], I[1][2]].join(' ')}"/>
    </body>
  </worldbody>
  <contact>
    <pair geom1="lane" geom2="ball" condim="3" friction="${zones[0].friction} ${zones[0].friction} 0 0 0"
      solref="${NORMAL_STEPS * step} 1" solreffriction="${FRICTION_STEPS * step} 1" solimp="0.999 0.9999 0.00001"/>
  </contact>
</mujoco>`;
}

interface State {
  readonly time: number;
  readonly x: number;
  readonly y: number;
  readonly vx: number;
  readonly vy: number;
  readonly w_WB_B: Vec3;
}

const stateOf = ({ time, qpos, qvel }: MjData): State => ({
  time,
  x: qpos[0],
  y: qpos[1],
  vx: qvel[0],
  vy: qvel[1],
  w_WB_B: [qvel[3], qvel[4], qvel[5]],
});

/** At the pins, between two states a step apart, mirrored back. */
function arrival(before: State, now: State, side: number): Arrival {
  const share = (LANE_LENGTH - before.y) / (now.y - before.y);
  const at = (a: number, b: number): number => a + share * (b - a);
  const vx = side * at(before.vx, now.vx);
  const vy = at(before.vy, now.vy);
  const w_WB_B = before.w_WB_B.map((w, i) => at(w, now.w_WB_B[i])) as unknown as Vec3;
  return {
    x: side * at(before.x, now.x),
    time: at(before.time, now.time),
    heading: Math.atan2(-vx, vy),
    speed: Math.hypot(vx, vy),
    spin: norm(w_WB_B),
    axis_B: mirrorTurn(unit(w_WB_B), side),
  };
}

/** A turn (angular velocity or its axis) in the mirror x → −x: what lies in the mirror's plane changes sign. */
const mirrorTurn = ([x, y, z]: Vec3, side: number): Vec3 => [x, side * y, side * z];
