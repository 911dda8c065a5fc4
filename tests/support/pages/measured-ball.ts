import type { Vec3 } from '../../../src/math/vec3.js';
import { type Drawn, middleOf } from './read-svg.js';

/** A ball measured off a printed picture: only what the SVG's text says is used. */
export function measuredBall(drawn: readonly Drawn[], side: 'grip' | 'pap') {
  const ball = drawn.filter(({ parts }) => parts.includes(`ball, ${side} side`));
  const outline = ball[0]!.points;
  const [cx, cy] = middleOf(outline);
  const radius = Math.abs(outline[1]![0] - outline[0]![0]) / 2;
  const lift = ([x, y]: readonly [number, number]): Vec3 => {
    const [u, v] = [(x - cx) / radius, (cy - y) / radius];
    return [u, v, Math.sqrt(Math.max(0, 1 - u * u - v * v))];
  };
  const part = (name: string): Drawn[] => ball.filter(({ parts }) => parts.includes(name));
  return {
    /** Where a mark is seen: x to the right, y up, z toward the eye; null on the far side. */
    mark: (name: string): Vec3 | null => {
      const [sign] = part(`mark ${name}`);
      return sign ? lift(middleOf(sign.points)) : null;
    },
    outlineOf: (name: string): Vec3[] => part(name)[0]?.points.map(lift) ?? [],
  };
}

/** A place read to 1/1000 pt of a radius of 60 pt or more, seen at 15° or more from the edge: 2e-5 / 0.26 rad. */
export const READING = 1e-4;
