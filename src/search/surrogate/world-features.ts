import { WORLD_FEATURES, writeWorldFeatures } from '../../regression/features.js';
import { scatteredLaunch, type WorldInputs } from '../../simulate/simulator.js';
import type { Deviations } from '../../simulate/worlds/deviations.js';

/** Number of adjoining parabolas that interpolate a world's features over the launch angle, each through three exact values. */
const PARABOLAS = 2;
const NODES = 2 * PARABOLAS + 1;

/** Least span of those angles, rad. */
const LEAST_SPAN = 1e-4;

const WORLD = WORLD_FEATURES.length;

/** Writes the features of a world, without the ball, for a line before the world's scatter, into `out` from `at` on. */
export type WriteWorld = (out: Float32Array, at: number, x: number, angle: number) => void;

/** Deviations, and the inputs of any shot in their world ↦ what writes the world's features. */
export type WorldFeatures = (deviations: Deviations, inputs: WorldInputs) => WriteWorld;

/**
 * Features of worlds, without the ball. From one laydown they depend on the layout only through the angle of its line, so they are
 * computed at five angles in each world and interpolated. Features of any other line are computed exactly.
 *
 * @param x       lateral position at the foul line of most lines, m
 * @param angles  launch angles of lines from there, rad: the parabolas lie between the least and the greatest
 */
export function worldFeatures(x: number, angles: Float64Array): WorldFeatures {
  const least = angles.reduce((a, b) => Math.min(a, b));
  const most = Math.max(
    least + LEAST_SPAN,
    angles.reduce((a, b) => Math.max(a, b)),
  );
  const known = new Map<Deviations, WriteWorld>();
  const workedOut = (deviations: Deviations, inputs: WorldInputs): WriteWorld => {
    const { body, release, surface, freshSurface } = inputs;
    const exactly: WriteWorld = (out, at, x, angle) => {
      const launch = scatteredLaunch({ x, angle }, deviations);
      writeWorldFeatures(out, at, body.radius, release, launch, surface, freshSurface);
    };
    const nodes = new Float32Array(NODES * WORLD);
    for (let k = 0; k < NODES; k++) exactly(nodes, WORLD * k, x, least + ((most - least) * k) / (NODES - 1));
    return (out, at, laydownX, angle) => {
      if (laydownX !== x || angle < least || angle > most) return exactly(out, at, laydownX, angle);
      const along = ((NODES - 1) * (angle - least)) / (most - least);
      const first = 2 * Math.min(PARABOLAS - 1, Math.floor(along / 2));
      const u = along - first; // 0, 1, 2 at the nodes
      const a = ((u - 1) * (u - 2)) / 2;
      const b = u * (2 - u);
      const c = (u * (u - 1)) / 2;
      const from = WORLD * first;
      for (let j = 0; j < WORLD; j++)
        out[at + j] = a * nodes[from + j] + b * nodes[from + WORLD + j] + c * nodes[from + 2 * WORLD + j];
    };
  };
  return (deviations, inputs) => {
    const write = known.get(deviations) ?? workedOut(deviations, inputs);
    known.set(deviations, write);
    return write;
  };
}
