import { cos, sin } from './sin-cos.js';
/** A vector of three numbers; its name says the frame it is expressed in (`p_BoBcm_B`). */
export type Vec3 = readonly [number, number, number];

export const ZERO: Vec3 = [0, 0, 0];

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const sub = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (s: number, a: Vec3): Vec3 => [s * a[0], s * a[1], s * a[2]];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const norm = (a: Vec3): number => Math.sqrt(dot(a, a));

/** The vector scaled to length one. The zero vector has no direction and gives NaN. */
export const unit = (a: Vec3): Vec3 => scale(1 / norm(a), a);

/** `a + s·b`. */
export const addScaled = (a: Vec3, s: number, b: Vec3): Vec3 => [
  a[0] + s * b[0],
  a[1] + s * b[1],
  a[2] + s * b[2],
];

/** `u` turned about the unit vector `axis` by `angle` (rad), right-handed (Rodrigues' formula). */
export const rotateAbout = (u: Vec3, axis: Vec3, angle: number): Vec3 => {
  const c = cos(angle);
  const s = sin(angle);
  return addScaled(addScaled(scale(c, u), s, cross(axis, u)), (1 - c) * dot(axis, u), axis);
};
