import { type Mat3, mulMat, mulVec, transpose } from '../../src/math/mat3.js';
import { cross, type Vec3 } from '../../src/math/vec3.js';
import type { RollingBody } from '../../src/motion/shot/body.js';
import type { Launch, Release } from '../../src/motion/shot/release.js';

/**
 * A sliding ball by another road, to check `sliding.ts` against: everything in W, orientation as a 3×3 matrix
 * whose columns follow dR/dt = ω×R, and Newton, Euler, Coulomb and "Bo stays at its height" as one 6×6 linear
 * system for the accelerations and the normal force, solved by elimination. No formula is shared.
 *
 * State: x, y, vx, vy of Bo; ω (W); R_WB row by row.
 */
export function slidingRates(body: RollingBody, friction: number, gravity: number) {
  const { mass, radius } = body;
  return (_: number, s: number[]): number[] => {
    const w: Vec3 = [s[4], s[5], s[6]];
    const R: Mat3 = [
      [s[7], s[8], s[9]],
      [s[10], s[11], s[12]],
      [s[13], s[14], s[15]],
    ];
    const d = mulVec(R, body.p_BoBcm_B);
    const I = mulMat(mulMat(R, body.I_Bcm_B), transpose(R));
    const slip: Vec3 = [s[2] - radius * w[1], s[3] + radius * w[0], 0];
    const size = Math.hypot(slip[0], slip[1]);
    const f: Vec3 = [(-friction * slip[0]) / size, (-friction * slip[1]) / size, 1];
    const arm: Vec3 = [-d[0], -d[1], -radius - d[2]]; // Bcm to contact
    const moment = cross(arm, f);
    const gyro = cross(w, mulVec(I, w));
    const inward = cross(w, cross(w, d));
    // unknowns: ax, ay of Bo, αx, αy, αz, N.   m (a + α×d + ω×(ω×d)) = N f − m g z;   I α + gyro = N moment
    const rows = [
      [mass, 0, 0, mass * d[2], -mass * d[1], -f[0], -mass * inward[0]],
      [0, mass, -mass * d[2], 0, mass * d[0], -f[1], -mass * inward[1]],
      [0, 0, mass * d[1], -mass * d[0], 0, -f[2], -mass * (inward[2] + gravity)],
      [0, 0, ...I[0], -moment[0], -gyro[0]],
      [0, 0, ...I[1], -moment[1], -gyro[1]],
      [0, 0, ...I[2], -moment[2], -gyro[2]],
    ];
    const [ax, ay, bx, by, bz] = solveLinear(rows);
    const columnRates = [0, 1, 2].map((j) => cross(w, [R[0][j], R[1][j], R[2][j]]));
    const rotationRates = [0, 1, 2].flatMap((i) => columnRates.map((column) => column[i]));
    return [s[2], s[3], ax, ay, bx, by, bz, ...rotationRates];
  };
}

/** Gauss elimination with partial pivoting; each row carries its right-hand side. */
function solveLinear(rows: number[][]): number[] {
  const n = rows.length;
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(rows[i][k]) > Math.abs(rows[pivot][k])) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot], rows[k]];
    for (let i = k + 1; i < n; i++) {
      const factor = rows[i][k] / rows[k][k];
      for (let j = k; j <= n; j++) rows[i][j] -= factor * rows[k][j];
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    x[i] = rows[i].slice(i + 1, n).reduce((sum, a, j) => sum - a * x[i + 1 + j], rows[i][n]) / rows[i][i];
  }
  return x;
}

/** The state of these equations at release: the centre of mass is where it is sent from, and goes where it is sent. */
export function sceneStart(
  { p_BoBcm_B }: RollingBody,
  { speed }: Release,
  { x, angle }: Launch,
  w_W: Vec3,
  R_WB: Mat3,
): number[] {
  const d = mulVec(R_WB, p_BoBcm_B);
  const back = cross(d, w_W); // velocity of Bo seen from the centre of mass: ω × (−d)
  return [
    ...[x - d[0], -d[1], speed * Math.sin(angle) + back[0], speed * Math.cos(angle) + back[1]],
    ...w_W,
    ...R_WB.flat(),
  ];
}
