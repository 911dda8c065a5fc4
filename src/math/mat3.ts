import { cos, sin } from './sin-cos.js';
import { cross, dot, type Vec3, ZERO } from './vec3.js';

/** A 3×3 matrix as three rows. A rotation `R_WB` has the axes of B, expressed in W, as its columns. */
export type Mat3 = readonly [Vec3, Vec3, Vec3];

export const IDENTITY: Mat3 = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

export const ZERO_MAT: Mat3 = [ZERO, ZERO, ZERO];

export const addMat = (a: Mat3, b: Mat3): Mat3 => combine(1, a, 1, b);
export const subMat = (a: Mat3, b: Mat3): Mat3 => combine(1, a, -1, b);
export const scaleMat = (s: number, a: Mat3): Mat3 => combine(s, a, 0, a);
export const transpose = (a: Mat3): Mat3 => [column(a, 0), column(a, 1), column(a, 2)];
export const column = (a: Mat3, i: number): Vec3 => [a[0][i], a[1][i], a[2][i]];
export const fromColumns = (x: Vec3, y: Vec3, z: Vec3): Mat3 => transpose([x, y, z]);
export const mulVec = (a: Mat3, v: Vec3): Vec3 => [dot(a[0], v), dot(a[1], v), dot(a[2], v)];
export const trace = (a: Mat3): number => a[0][0] + a[1][1] + a[2][2];
export const diagonal = (v: Vec3): Mat3 => [
  [v[0], 0, 0],
  [0, v[1], 0],
  [0, 0, v[2]],
];

/** `u vᵀ`. */
export const outer = (u: Vec3, v: Vec3): Mat3 => [
  [u[0] * v[0], u[0] * v[1], u[0] * v[2]],
  [u[1] * v[0], u[1] * v[1], u[1] * v[2]],
  [u[2] * v[0], u[2] * v[1], u[2] * v[2]],
];

export const mulMat = (a: Mat3, b: Mat3): Mat3 => {
  const [x, y, z] = transpose(b);
  const row = (r: Vec3): Vec3 => [dot(r, x), dot(r, y), dot(r, z)];
  return [row(a[0]), row(a[1]), row(a[2])];
};

/** `R m Rᵀ` with `R = R_AB`: a tensor given in B, expressed in A. */
export const rotateTensor = (R_AB: Mat3, m_B: Mat3): Mat3 => mulMat(mulMat(R_AB, m_B), transpose(R_AB));

export const determinant = (a: Mat3): number => dot(a[0], cross(a[1], a[2]));

/** Inverse by cofactors. A singular matrix gives non-finite entries; callers check where it can happen. */
export const inverse = (a: Mat3): Mat3 => {
  const k = 1 / determinant(a);
  return transpose([
    scaleRow(k, cross(a[1], a[2])),
    scaleRow(k, cross(a[2], a[0])),
    scaleRow(k, cross(a[0], a[1])),
  ]);
};

const scaleRow = (s: number, v: Vec3): Vec3 => [s * v[0], s * v[1], s * v[2]];

const combine = (s: number, a: Mat3, t: number, b: Mat3): Mat3 => {
  const row = (i: 0 | 1 | 2): Vec3 => [
    s * a[i][0] + t * b[i][0],
    s * a[i][1] + t * b[i][1],
    s * a[i][2] + t * b[i][2],
  ];
  return [row(0), row(1), row(2)];
};

/** Rotation about x by an angle, rad. */
export const turnAboutX = (angle: number): Mat3 => [
  [1, 0, 0],
  [0, cos(angle), -sin(angle)],
  [0, sin(angle), cos(angle)],
];

/** Rotation about y by an angle, rad. */
export const turnAboutY = (angle: number): Mat3 => [
  [cos(angle), 0, sin(angle)],
  [0, 1, 0],
  [-sin(angle), 0, cos(angle)],
];

/** Rotation about z by an angle, rad. */
export const turnAboutZ = (angle: number): Mat3 => [
  [cos(angle), -sin(angle), 0],
  [sin(angle), cos(angle), 0],
  [0, 0, 1],
];
