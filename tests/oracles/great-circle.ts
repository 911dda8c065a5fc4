import { geoDistance } from 'd3-geo';
import type { Vec3 } from '../../src/math/vec3.js';

/** Longitude and latitude (degrees) of a unit vector of B, with the grip centre at 0, 0. */
export const lonLat = ([x, y, z]: Vec3): [number, number] => [
  (Math.atan2(x, z) * 180) / Math.PI,
  (Math.atan2(y, Math.hypot(x, z)) * 180) / Math.PI,
];

/** Arc between two points (rad) by another program: d3-geo 3.1.2, haversine. */
export const d3Arc = (u: Vec3, v: Vec3): number => geoDistance(lonLat(u), lonLat(v));

/** Angle (rad) opposite side `a` of a triangle with arcs a, b, c: Todhunter, Spherical Trigonometry, art. 45. */
export const angleOfArcs = (a: number, b: number, c: number): number => {
  const s = (a + b + c) / 2;
  return 2 * Math.asin(Math.sqrt((Math.sin(s - b) * Math.sin(s - c)) / (Math.sin(b) * Math.sin(c))));
};
