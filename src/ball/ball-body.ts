import { IDENTITY, scaleMat } from '../mat3.js';
import { add, scale, type Vec3 } from '../vec3.js';
import { addMoments, type Moments, NO_MOMENTS } from './mass-properties.js';
import { type Part, partMoments } from './part.js';

/** An undrilled ball in the frame C of its core: z through the pin, x toward the marker. SI. */
export interface BallBody {
  readonly radius: number;
  readonly coverThickness: number;
  readonly coverDensity: number;
  readonly fillerDensity: number;
  readonly core: readonly Part[];
}

/** Moments about the centre of a uniform sphere (kg, kg·m, kg·m²): second moment 4πρR⁵/15 along each axis. */
export const sphereMoments = (radius: number, density: number): Moments => ({
  mass: (4 / 3) * Math.PI * radius ** 3 * density,
  first: [0, 0, 0],
  second: scaleMat((4 / 15) * Math.PI * radius ** 5 * density, IDENTITY),
});

/** Moments of the cover's shell and of the filler's sphere, core not counted. */
export const shellMoments = (body: Omit<BallBody, 'core'>): Moments => {
  const inner = body.radius - body.coverThickness;
  return addMoments(
    sphereMoments(body.radius, body.coverDensity),
    sphereMoments(inner, body.fillerDensity - body.coverDensity),
  );
};

export const coreMoments = (core: readonly Part[]): Moments =>
  core.reduce((sum, part) => addMoments(sum, partMoments(part)), NO_MOMENTS);

/** Moments of the whole undrilled ball about Bo, in C. */
export const bodyMoments = (body: BallBody): Moments =>
  addMoments(shellMoments(body), coreMoments(body.core));

/** Moments of the same matter after a move by `shift` (m). */
export function shiftMoments(m: Moments, shift: Vec3): Moments {
  const second = (i: 0 | 1 | 2, j: 0 | 1 | 2): number =>
    m.second[i][j] + m.first[i] * shift[j] + shift[i] * m.first[j] + m.mass * shift[i] * shift[j];
  const row = (i: 0 | 1 | 2): Vec3 => [second(i, 0), second(i, 1), second(i, 2)];
  return { mass: m.mass, first: add(m.first, scale(m.mass, shift)), second: [row(0), row(1), row(2)] };
}

/** Moments of the same matter stretched by `s` along the axes (mass grows with volume). */
export function stretchMoments(m: Moments, s: Vec3): Moments {
  const v = s[0] * s[1] * s[2];
  const row = (i: 0 | 1 | 2): Vec3 => [
    v * s[i] * s[0] * m.second[i][0],
    v * s[i] * s[1] * m.second[i][1],
    v * s[i] * s[2] * m.second[i][2],
  ];
  return {
    mass: v * m.mass,
    first: [v * s[0] * m.first[0], v * s[1] * m.first[1], v * s[2] * m.first[2]],
    second: [row(0), row(1), row(2)],
  };
}
