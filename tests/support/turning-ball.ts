import { add, norm, rotateAbout, scale, type Vec3 } from '../../src/math/vec3.js';
import { memory } from '../../src/motion/kernel/memory.js';
import { writeRotation } from '../../src/motion/kernel/rotation.js';
import { STATE } from '../../src/motion/kernel/slots.js';

const { WX, WY, WZ, PHASE } = STATE;

/** A ball in the hands of mathematics: seen from the ball, where it touches the lane and how it spins, and the angle turned. */
interface Turned {
  readonly contact_P: Vec3;
  readonly w_WP_P: Vec3;
  readonly phase: number;
  /** The orientation, as what each axis of P has become in W. */
  readonly axes_W: readonly Vec3[];
}

/** So many that what they err by is far below what a step of the kernel does. */
const TURNS = 300;

/**
 * How a ball stands that starts as the kernel's `here` and turns for a time (s) under a steady angular acceleration (rad/s², in W): by
 * many short turns, each about the axis of its middle.
 */
export function turnedBall(acceleration_W: Vec3, time: number): Turned {
  const { here, trial, R_WP } = memory;
  trial.set(here);
  writeRotation();
  const start_W: Vec3 = [here[WX], here[WY], here[WZ]];
  const after = (t: number): Vec3 => add(start_W, scale(t, acceleration_W));
  let axes_W = [0, 1, 2].map((i): Vec3 => [R_WP[i], R_WP[3 + i], R_WP[6 + i]]);
  let phase = here[PHASE];
  const dt = time / TURNS;
  for (let k = 0; k < TURNS; k++) {
    const w_W = after((k + 0.5) * dt);
    const spin = norm(w_W);
    const axis = scale(1 / spin, w_W);
    axes_W = axes_W.map((each) => rotateAbout(each, axis, spin * dt));
    phase += spin * dt;
  }
  const w_W = after(time);
  const seenFromBall = (v: Vec3): Vec3 =>
    axes_W.map((axis) => axis[0] * v[0] + axis[1] * v[1] + axis[2] * v[2]) as unknown as Vec3;
  return { contact_P: seenFromBall([0, 0, -1]), w_WP_P: seenFromBall(w_W), phase, axes_W };
}
