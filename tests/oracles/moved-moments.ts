import type { Moments } from '../../src/ball/mass/mass-properties.js';
import { add, scale, type Vec3 } from '../../src/math/vec3.js';

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
