import { type Mat3, mulMat, mulVec } from '../../math/mat3.js';
import { cos, sin } from '../../math/sin-cos.js';
import { cross, scale } from '../../math/vec3.js';
import { STATE } from '../kernel/slots.js';
import type { PrincipalBody } from './principal-body.js';
import { type Launch, type Release, releaseAxis, releaseOrientation } from './release.js';

const { X, Y, VX, VY, QW, QX, QY, QZ, WX, WY, WZ, STATE_SIZE } = STATE;

/**
 * The state of a ball as it leaves the hand at the foul line.
 *
 * The hand gives the ball its momentum, so the launch is that of the centre of mass. The geometric
 * centre Bo, at −d from it, follows: v_Bo = v − ω×d along the lane. Bo keeps its height, so at first the centre of mass rises or
 * falls with the vertical part of ω×d.
 */
export function launchState(body: PrincipalBody, release: Release, launch: Launch): Float64Array {
  const R_WP = mulMat(releaseOrientation(release), body.R_BP);
  const w_WP_W = scale(release.spin, releaseAxis(release));
  const state = new Float64Array(STATE_SIZE);
  const p_BoBcm_W = mulVec(R_WP, body.p_BoBcm_P);
  const swing_W = cross(w_WP_W, p_BoBcm_W); // of Bcm about Bo
  state[X] = launch.x - p_BoBcm_W[0];
  state[Y] = -p_BoBcm_W[1];
  state[VX] = release.speed * sin(launch.angle) - swing_W[0];
  state[VY] = release.speed * cos(launch.angle) - swing_W[1];
  writeQuaternion(state, R_WP);
  state[WX] = w_WP_W[0];
  state[WY] = w_WP_W[1];
  state[WZ] = w_WP_W[2];
  return state;
}

/**
 * Unit quaternion of a rotation, from its largest component so that no digits are lost.
 * Source: Shepperd, J. Guidance and Control 1(3), 223, 1978.
 */
function writeQuaternion(state: Float64Array, R: Mat3): void {
  const [[a, b, c], [d, e, f], [g, h, i]] = R;
  const candidates = [
    [1 + a + e + i, h - f, c - g, d - b],
    [h - f, 1 + a - e - i, b + d, c + g],
    [c - g, b + d, 1 - a + e - i, f + h],
    [d - b, c + g, f + h, 1 - a - e + i],
  ];
  const largest = [0, 1, 2, 3].reduce((best, k) => (candidates[k][k] > candidates[best][best] ? k : best));
  const q = candidates[largest];
  const length = Math.sqrt(q.reduce((sum, each) => sum + each * each, 0));
  [QW, QX, QY, QZ].forEach((slot, k) => {
    state[slot] = q[k] / length;
  });
}
